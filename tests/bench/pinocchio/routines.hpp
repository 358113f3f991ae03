// The routines by which Pinocchio yields the inertia about the CM and, with the pelvis fixed, the
// angular momentum of the joint motion about it. All in pelvis axes: the pelvis is at the origin.
#pragma once

#include "model.hpp"

#include <pinocchio/algorithm/centroidal.hpp>
#include <pinocchio/algorithm/crba.hpp>
#include <pinocchio/algorithm/kinematics.hpp>

struct Answer {
  Matrix3 inertia_kg_m2;
  Vector3 momentum_kg_m2_s;
};

using Routine = Answer (*)(const Body &, pinocchio::Data &, const Eigen::VectorXd &q,
                           const Eigen::VectorXd &v);

// Converts inertia and momentum of the moving bodies, both about the world's origin, to the CM.
inline Answer about_cm(const Body &body, pinocchio::Inertia whole, const Vector3 &linear,
                       const Vector3 &angular) {
  if (body.root == Root::held)
    whole += body.pelvis;
  return {whole.inertia().matrix(), angular - whole.lever().cross(linear)};
}

// The momentum is about the CM of the model's bodies, which do not include a fixed pelvis.
inline Answer of_map(const Body &body, const pinocchio::Data &data, const Vector3 &linear,
                     const Vector3 &angular) {
  if (body.root == Root::free)
    return {data.oYcrb[0].inertia().matrix(), angular};
  return about_cm(body, data.oYcrb[0], linear, angular + data.com[0].cross(linear));
}

inline Answer ccrba(const Body &body, pinocchio::Data &data, const Eigen::VectorXd &q,
                    const Eigen::VectorXd &v) {
  pinocchio::ccrba(body.model, data, q, v);
  return of_map(body, data, data.hg.linear(), data.hg.angular());
}

// The columns of the free pelvis, which is at rest, are not multiplied.
inline Answer map_times_rates(const Body &body, pinocchio::Data &data, const Eigen::VectorXd &q,
                              const Eigen::VectorXd &v) {
  pinocchio::computeCentroidalMap(body.model, data, q);
  const auto joints = body.root == Root::free ? v.size() - 6 : v.size();
  if (body.root == Root::free)
    return {data.oYcrb[0].inertia().matrix(),
            data.Ag.bottomRows<3>().rightCols(joints) * v.tail(joints)};
  const Eigen::Matrix<double, 6, 1> momentum = data.Ag * v;
  return of_map(body, data, momentum.head<3>(), momentum.tail<3>());
}

// The composite inertia of the root, and the rows of the joint-space inertia matrix that couple it
// to the joints.
inline Answer mass_matrix(const Body &body, pinocchio::Data &data, const Eigen::VectorXd &q,
                          const Eigen::VectorXd &v) {
  pinocchio::crba(body.model, data, q, pinocchio::Convention::LOCAL);
  const auto joints = v.size() - 6;
  const Eigen::Matrix<double, 6, 1> momentum =
      data.M.topRows<6>().rightCols(joints) * v.tail(joints);
  return about_cm(body, data.Ycrb[1], momentum.head<3>(), momentum.tail<3>());
}

// Pinocchio's own routine for the momentum, then the sum of the inertias in the world frame.
inline Answer momentum_and_sum(const Body &body, pinocchio::Data &data, const Eigen::VectorXd &q,
                               const Eigen::VectorXd &v) {
  const auto &h = pinocchio::computeCentroidalMomentum(body.model, data, q, v);
  pinocchio::Inertia whole = pinocchio::Inertia::Zero();
  for (int i = 1; i < body.model.njoints; ++i)
    whole += data.oMi[i].act(body.model.inertias[i]);
  return about_cm(body, whole, h.linear(), h.angular() + data.com[0].cross(h.linear()));
}

// Forward kinematics, then one pass in which Pinocchio's inertias and momenta are summed.
inline Answer kinematics_and_sums(const Body &body, pinocchio::Data &data,
                                  const Eigen::VectorXd &q, const Eigen::VectorXd &v) {
  pinocchio::forwardKinematics(body.model, data, q, v);
  pinocchio::Inertia whole = pinocchio::Inertia::Zero();
  pinocchio::Force momentum = pinocchio::Force::Zero();
  for (int i = 1; i < body.model.njoints; ++i) {
    whole += data.oMi[i].act(body.model.inertias[i]);
    momentum += data.oMi[i].act(body.model.inertias[i] * data.v[i]);
  }
  return about_cm(body, whole, momentum.linear(), momentum.angular());
}

// The same with sums about the origin, which avoid the division in every sum of two inertias: the
// fastest routine found.
inline Answer kinematics_and_lean_sums(const Body &body, pinocchio::Data &data,
                                       const Eigen::VectorXd &q, const Eigen::VectorXd &v) {
  using pinocchio::Symmetric3;
  pinocchio::forwardKinematics(body.model, data, q, v);
  const bool held = body.root == Root::held;
  Vector3 first_moment = Vector3::Zero(), linear = Vector3::Zero(), angular = Vector3::Zero();
  Symmetric3 about_origin = Symmetric3::Zero();
  const auto add = [&](double mass_kg, const Vector3 &c, const Symmetric3 &own) {
    first_moment += mass_kg * c;
    about_origin += own;
    about_origin -= Symmetric3::AlphaSkewSquare(mass_kg, c);
  };
  if (held)
    add(body.pelvis.mass(), body.pelvis.lever(), body.pelvis.inertia());
  for (int i = 1; i < body.model.njoints; ++i) {
    const pinocchio::SE3 &place = data.oMi[i];
    const pinocchio::Inertia &inertia = body.model.inertias[i];
    const Vector3 c = place.act(inertia.lever());
    add(inertia.mass(), c, inertia.inertia().rotate(place.rotation()));
    // A free pelvis is at rest.
    if (held || i > 1) {
      const pinocchio::Force h = inertia * data.v[i];
      const Vector3 along = place.rotation() * h.linear();
      linear += along;
      angular += place.rotation() * h.angular() + place.translation().cross(along);
    }
  }
  const Vector3 cm = first_moment / body.mass_kg;
  about_origin += Symmetric3::AlphaSkewSquare(body.mass_kg, cm);
  return {about_origin.matrix(), angular - cm.cross(linear)};
}
