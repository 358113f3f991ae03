// Times of a posture in Pinocchio, by every routine that yields both quantities.
//
//     main TABLE ANSWERS BATCHES CALLS
//
// ANSWERS has the project's results for the postures of TABLE, row by row: nine numbers of the
// inertia, three of the momentum. Every routine must agree with them, or nothing is timed. Prints
// one line for each routine: set of postures, model, routine, median of the batches in ns.

#include "routines.hpp"

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <iostream>
#include <sstream>

// kg m² and kg m²/s, of bodies whose inertia is about 1 to 20 kg m².
constexpr double TOLERANCE = 1e-9;

struct Way {
  const char *name;
  Routine routine;
};

const Way WAYS[] = {
    {"ccrba", ccrba},
    {"computeCentroidalMap, times the rates", map_times_rates},
    {"crba, root's rows times the rates", mass_matrix},
    {"computeCentroidalMomentum + sum of inertias", momentum_and_sum},
    {"forwardKinematics + sums of inertias and momenta", kinematics_and_sums},
    {"forwardKinematics + lean sums", kinematics_and_lean_sums},
};

struct Posed {
  Eigen::VectorXd q, v;
};

std::vector<Answer> read_answers(const char *path, std::size_t count) {
  std::ifstream in(path);
  std::vector<Answer> answers(count);
  for (Answer &answer : answers) {
    for (double &number : answer.inertia_kg_m2.reshaped())
      in >> number;
    for (double &number : answer.momentum_kg_m2_s)
      in >> number;
  }
  if (!in)
    throw std::runtime_error(std::string(path) + " has too few answers");
  return answers;
}

double apart(const Answer &a, const Answer &b) {
  return std::max((a.inertia_kg_m2 - b.inertia_kg_m2).cwiseAbs().maxCoeff(),
                  (a.momentum_kg_m2_s - b.momentum_kg_m2_s).cwiseAbs().maxCoeff());
}

double median_ns(const Body &body, pinocchio::Data &data, Routine routine,
                 const std::vector<Posed> &postures, int batches, int calls) {
  using Clock = std::chrono::steady_clock;
  std::vector<double> ns;
  // volatile, so that the compiler cannot remove the computation.
  volatile double sink = 0.0;
  for (int batch = 0; batch < batches; ++batch) {
    double sum = 0.0;
    std::size_t next = 0;
    const auto start = Clock::now();
    for (int call = 0; call < calls; ++call) {
      const Posed &posed = postures[next];
      next = next + 1 == postures.size() ? 0 : next + 1;
      const Answer answer = routine(body, data, posed.q, posed.v);
      sum += answer.inertia_kg_m2.sum() + answer.momentum_kg_m2_s.sum();
    }
    const std::chrono::duration<double, std::nano> taken = Clock::now() - start;
    sink = sink + sum;
    ns.push_back(taken.count() / calls);
  }
  std::nth_element(ns.begin(), ns.begin() + batches / 2, ns.end());
  return ns[batches / 2];
}

void compare(const char *set, const char *name, const Body &body,
             const std::vector<Posture> &postures, const Answer *expected, int batches,
             int calls) {
  pinocchio::Data data(body.model);
  std::vector<Posed> posed;
  for (const Posture &posture : postures)
    posed.push_back({body.q(posture), body.v(posture)});
  for (const Way &way : WAYS) {
    if (way.routine == mass_matrix && body.root == Root::held)
      continue;
    for (std::size_t i = 0; i < posed.size(); ++i) {
      const double off = apart(way.routine(body, data, posed[i].q, posed[i].v), expected[i]);
      if (off < TOLERANCE)
        continue;
      std::ostringstream said;
      said << name << ", " << way.name << ": posture " << i << " of " << set << " is " << off
           << " apart from ours";
      throw std::runtime_error(said.str());
    }
    std::cout << set << '\t' << name << '\t' << way.name << '\t'
              << median_ns(body, data, way.routine, posed, batches, calls) << '\n';
  }
}

int main(int count, char **arguments) {
  if (count != 5) {
    std::cerr << "usage: main TABLE ANSWERS BATCHES CALLS\n";
    return 2;
  }
  try {
    const Table table(arguments[1]);
    const auto answers = read_answers(arguments[2], table.plan.size() + table.all.size());
    const int batches = std::atoi(arguments[3]), calls = std::atoi(arguments[4]);
    const Posture &still = table.plan.front();
    const auto both = [&](const char *name, Root root, Joints joints) {
      const Body body(table, root, joints, still);
      compare("plan", name, body, table.plan, answers.data(), batches, calls);
      if (joints == Joints::spherical)
        compare("all", name, body, table.all, answers.data() + table.plan.size(), batches, calls);
    };
    both("free pelvis, 15 spherical joints", Root::free, Joints::spherical);
    both("held pelvis, 15 spherical joints", Root::held, Joints::spherical);
    both("free pelvis, still joints merged", Root::free, Joints::merged);
    both("held pelvis, still joints merged", Root::held, Joints::merged);
    both("free pelvis, still joints merged, hinges", Root::free, Joints::hinges);
    both("held pelvis, still joints merged, hinges", Root::held, Joints::hinges);
  } catch (const std::exception &error) {
    std::cerr << error.what() << '\n';
    return 1;
  }
}
