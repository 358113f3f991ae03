"""The exported body as a Pinocchio model: a free flyer with spherical joints.

Carpentier J, Saurel G, Buondonno G, et al. The Pinocchio C++ library. IEEE/SICE International
Symposium on System Integration 2019. Centroidal map: Orin D, Goswami A, Lee S-H. Centroidal
dynamics of a humanoid robot. Auton Robots 2013;35:161-176.
"""

import numpy as np
import pinocchio as pin

from flight import quaternion_rate
from motion import exported, turned

FEET = ["left_foot", "right_foot"]
HANDS = ["left_hand", "right_hand"]
STILL = np.array([1.0, 0.0, 0.0, 0.0])


class PinocchioBody:
    def __init__(self, export):
        self.motion = exported(export)
        model = pin.Model()
        joints = {}
        for segment in export["segments"]:
            root = segment["parent"] is None
            joint = pin.JointModelFreeFlyer() if root else pin.JointModelSpherical()
            parent = 0 if root else joints[segment["parent"]]
            place = pin.SE3(np.eye(3), np.array(segment["joint_m"]))
            joints[segment["name"]] = model.addJoint(parent, joint, place, segment["name"])
        for part in export["parts"]:
            inertia = pin.Inertia(
                part["mass_kg"], np.array(part["cm_m"]), np.diag(part["moments_kg_m2"])
            )
            model.appendBodyToJoint(joints[part["segment"]], inertia, pin.SE3.Identity())
        model.gravity.linear = np.array([0.0, -export["gravity_m_s2"], 0.0])
        self.model, self.data = model, model.createData()
        self.mass_kg = pin.computeTotalMass(model)
        self._names = [segment["name"] for segment in export["segments"][1:]]
        self._feet = [joints[foot] for foot in FEET]
        self._hands = [joints[hand] for hand in HANDS]
        self._sole = np.array(export["sole_m"]).T

    def _configuration(self, rotation, place, wxyz):
        # Pinocchio's quaternions are x, y, z, w. Joints come in the order in which they were added.
        w, *xyz = wxyz / np.linalg.norm(wxyz)
        return np.concatenate([place, xyz, [w], rotation[:, [1, 2, 3, 0]].ravel()])

    def _moving(self, t_s, place, wxyz):
        rotation, rate = self.motion.at(t_s)
        return self._configuration(rotation, place, wxyz), rate.ravel()

    def pelvis_motion(self, t_s, place, wxyz, linear, angular):
        """Velocity of the pelvis in the world and its rate in own axes, so that the body has this
        momentum, about its CM."""
        q, joint_rates = self._moving(t_s, place, wxyz)
        centroidal = pin.computeCentroidalMap(self.model, self.data, q)
        wanted = np.concatenate([linear, angular]) - centroidal[:, 6:] @ joint_rates
        base = np.linalg.solve(centroidal[:, :6], wanted)
        return self.data.oMi[1].rotation @ base[:3], base[3:]

    def cm_m(self, t_s, place, wxyz):
        q, _ = self._moving(t_s, place, wxyz)
        return pin.centerOfMass(self.model, self.data, q).copy()

    def lowest_m(self, t_s, place, wxyz):
        q, _ = self._moving(t_s, place, wxyz)
        pin.forwardKinematics(self.model, self.data, q)
        at = [self.data.oMi[foot] for foot in self._feet]
        return min((m.rotation @ self._sole + m.translation[:, None])[1].min() for m in at)

    def held(self, t_s):
        """With the pelvis held: inertia about the CM (kg m²), momentum of the joint motion about
        it (kg m²/s), CM from the pelvis (m)."""
        q, joint_rates = self._moving(t_s, np.zeros(3), STILL)
        v = np.concatenate([np.zeros(6), joint_rates])
        pin.ccrba(self.model, self.data, q, v)
        return (
            self.data.Ig.inertia.copy(),
            self.data.hg.angular.copy(),
            pin.centerOfMass(self.model, self.data, q).copy(),
        )

    def turning(self, t_s, wxyz, rate_world):
        """With the pelvis turning and the CM at rest: momentum about the CM in the world (the
        momentum map times the velocities) and kinetic energy (J)."""
        q, joint_rates = self._moving(t_s, np.zeros(3), wxyz)
        centroidal = pin.computeCentroidalMap(self.model, self.data, q)
        turn = self.data.oMi[1].rotation
        v = np.concatenate([np.zeros(3), turn.T @ rate_world, joint_rates])
        drift = (centroidal @ v)[:3] / self.mass_kg
        v[:3] = -(turn.T @ drift)
        energy = pin.computeKineticEnergy(self.model, self.data, q, v)
        return (centroidal @ v)[3:], energy

    def inertia(self, rotations):
        """Inertia about the CM in pelvis axes (kg m²) in a posture of our own: rotation vectors
        (rad) of the joints that are not straight, by segment."""
        q = pin.neutral(self.model)
        for segment, vector in rotations.items():
            joint = self.model.joints[1 + 1 + self._names.index(segment)]
            q[joint.idx_q : joint.idx_q + 4] = pin.Quaternion(pin.exp3(np.array(vector))).coeffs()
        pin.ccrba(self.model, self.data, q, np.zeros(self.model.nv))
        return self.data.Ig.inertia.copy()

    def efforts(self, t_s, rate):
        """While the pelvis turns at this rate (own axes) in free flight: its angular acceleration
        (rad/s², own axes), the net torques of all joints (N m, in the axes of their parents) and the
        force on each hand (N). The root's acceleration is the one at which it takes no wrench."""
        rotation, joint_rates = self.motion.at(t_s)
        q = self._configuration(rotation, np.zeros(3), STILL)
        v = np.concatenate([np.zeros(3), rate, joint_rates.ravel()])
        a = np.concatenate([np.zeros(6), self.motion.accelerations(t_s).ravel()])
        bias = pin.rnea(self.model, self.data, q, v, a)[:6].copy()
        mass = pin.crba(self.model, self.data, q)[:6, :6]
        a[:6] = -np.linalg.solve(mass, bias)
        torques = pin.rnea(self.model, self.data, q, v, a)
        force = [np.linalg.norm(self.data.f[hand].linear) for hand in self._hands]
        in_parents = turned(rotation, torques[6:].reshape(-1, 3))
        return a[3:6].copy(), in_parents, np.array(force), np.abs(torques[:6]).max()

    def forced_change(self, t_s, state):
        """Newton-Euler instead of conserved momentum: the change of place, attitude and velocity
        of the pelvis (own axes) when nothing but gravity acts on it while the joints follow their
        plan."""
        rotation, rate = self.motion.at(t_s)
        q = self._configuration(rotation, state[:3], state[3:7])
        v = np.concatenate([state[7:], rate.ravel()])
        a = np.concatenate([np.zeros(6), self.motion.accelerations(t_s).ravel()])
        force = pin.rnea(self.model, self.data, q, v, a)[:6].copy()
        mass = pin.crba(self.model, self.data, q)[:6, :6]
        # Neither of the two places the joints in the world.
        pin.forwardKinematics(self.model, self.data, q)
        turn = self.data.oMi[1].rotation
        return np.concatenate(
            [
                turn @ state[7:10],
                quaternion_rate(state[3:7], state[10:]),
                -np.linalg.solve(mass, force),
            ]
        )
