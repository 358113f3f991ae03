// The exported body as Pinocchio models: with all joints spherical, or only the freedoms that the
// plan moves.
#pragma once

#include <pinocchio/multibody.hpp>
#include <pinocchio/multibody/joint.hpp>

#include <fstream>
#include <stdexcept>
#include <string>
#include <vector>

using Vector3 = Eigen::Vector3d;
using Matrix3 = Eigen::Matrix3d;

struct Joint {
  std::string name;
  int parent;
  Vector3 place_m;
  bool moves, about_z;
};

struct Part {
  int joint;
  pinocchio::Inertia inertia;
};

// Rotation relative to the parent and rate in own axes, of every joint except the pelvis's.
struct Posture {
  std::vector<Eigen::Quaterniond> rotation;
  std::vector<Vector3> rate_rad_s;
};

// The table written by table.py.
struct Table {
  std::vector<Joint> joints;
  std::vector<Part> parts;
  std::vector<Posture> plan, all;

  explicit Table(const char *path) {
    std::ifstream in(path);
    const auto vector = [&in] {
      Vector3 v;
      in >> v.x() >> v.y() >> v.z();
      return v;
    };
    for (std::string word; in >> word;) {
      if (word == "joint") {
        Joint joint;
        in >> joint.name >> joint.parent;
        joint.place_m = vector();
        in >> joint.moves >> joint.about_z;
        joints.push_back(joint);
      } else if (word == "part") {
        Part part;
        double mass_kg;
        in >> part.joint >> mass_kg;
        const Vector3 cm_m = vector();
        part.inertia = pinocchio::Inertia(mass_kg, cm_m, vector().asDiagonal());
        parts.push_back(part);
      } else if (word == "posture") {
        in >> word;
        Posture posture;
        for (std::size_t i = 1; i < joints.size(); ++i) {
          double w, x, y, z;
          in >> w >> x >> y >> z;
          posture.rotation.emplace_back(w, x, y, z);
          posture.rate_rad_s.push_back(vector());
        }
        (word == "plan" ? plan : all).push_back(posture);
      }
    }
    if (!in.eof() || plan.empty() || all.empty())
      throw std::runtime_error(std::string(path) + " is not a table of table.py");
  }
};

enum class Root { free, held };
enum class Joints { spherical, merged, hinges };

// A Pinocchio model of the body. `q` and `v` convert a posture.
struct Body {
  pinocchio::Model model;
  Root root;
  // Inertia of all that is fixed to the pelvis, if the pelvis is the model's ground.
  pinocchio::Inertia pelvis = pinocchio::Inertia::Zero();
  double mass_kg = 0.0;

  // Joints::merged fixes the joints that the plan does not move, in the posture `still`;
  // Joints::hinges also makes those that only turn about z revolute joints.
  Body(const Table &table, Root root, Joints joints, const Posture &still) : root(root) {
    using pinocchio::SE3;
    std::vector<pinocchio::JointIndex> body{0};
    std::vector<SE3> place{SE3::Identity()};
    if (root == Root::free)
      body[0] = model.addJoint(0, pinocchio::JointModelFreeFlyer(), SE3::Identity(), "pelvis");
    for (std::size_t i = 1; i < table.joints.size(); ++i) {
      const Joint &joint = table.joints[i];
      const SE3 here = place[joint.parent] * SE3(Matrix3::Identity(), joint.place_m);
      const auto parent = body[joint.parent];
      if (joints != Joints::spherical && !joint.moves) {
        body.push_back(parent);
        place.push_back(here * SE3(still.rotation[i - 1].toRotationMatrix(), Vector3::Zero()));
        continue;
      }
      const bool hinge = joints == Joints::hinges && joint.about_z;
      body.push_back(hinge
          ? model.addJoint(parent, pinocchio::JointModelRUBZ(), here, joint.name)
          : model.addJoint(parent, pinocchio::JointModelSpherical(), here, joint.name));
      place.push_back(SE3::Identity());
      moving.push_back({i - 1, hinge});
    }
    for (const Part &part : table.parts) {
      mass_kg += part.inertia.mass();
      if (body[part.joint] == 0)
        pelvis += place[part.joint].act(part.inertia);
      else
        model.appendBodyToJoint(body[part.joint], part.inertia, place[part.joint]);
    }
  }

  Eigen::VectorXd q(const Posture &posture) const {
    std::vector<double> q;
    if (root == Root::free)
      q = {0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 1.0};
    for (const auto &[i, hinge] : moving) {
      const Eigen::Quaterniond &r = posture.rotation[i];
      if (hinge)
        q.insert(q.end(), {r.w() * r.w() - r.z() * r.z(), 2.0 * r.w() * r.z()});
      else
        q.insert(q.end(), {r.x(), r.y(), r.z(), r.w()});
    }
    return Eigen::Map<Eigen::VectorXd>(q.data(), q.size());
  }

  Eigen::VectorXd v(const Posture &posture) const {
    std::vector<double> v(root == Root::free ? 6 : 0, 0.0);
    for (const auto &[i, hinge] : moving) {
      const Vector3 &rate = posture.rate_rad_s[i];
      if (hinge)
        v.push_back(rate.z());
      else
        v.insert(v.end(), rate.data(), rate.data() + 3);
    }
    return Eigen::Map<Eigen::VectorXd>(v.data(), v.size());
  }

 private:
  struct Moving {
    std::size_t posture_index;
    bool hinge;
  };
  std::vector<Moving> moving;
};
