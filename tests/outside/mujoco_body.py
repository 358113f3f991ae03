"""The exported body as a MuJoCo model: a free body with ball joints, everything that it carries
welded on as a body of its own. Only its kinematics, its joint-space inertia matrix, its subtree
momentum and its inverse dynamics are asked for; no time stepping, no gravity, no contact.

Todorov E, Erez T, Tassa Y. MuJoCo: a physics engine for model-based control. IROS 2012.
"""

import xml.etree.ElementTree as ET

import mujoco
import numpy as np

from motion import Motion, turned

FEET = ["left_foot", "right_foot"]
STILL = np.array([1.0, 0.0, 0.0, 0.0])


def numbers(values):
    return " ".join(repr(float(value)) for value in values)


def inertial(body, part):
    ET.SubElement(
        body,
        "inertial",
        pos=numbers(part["cm_m"]),
        mass=repr(part["mass_kg"]),
        diaginertia=numbers(part["moments_kg_m2"]),
    )


def _model(export):
    root = ET.Element("mujoco")
    ET.SubElement(root, "option", gravity="0 0 0")
    bodies = {None: ET.SubElement(root, "worldbody")}
    tissue = {part["name"]: part for part in export["parts"]}
    for segment in export["segments"]:
        name, parent = segment["name"], segment["parent"]
        body = ET.SubElement(bodies[parent], "body", name=name, pos=numbers(segment["joint_m"]))
        joint = {"type": "free"} if parent is None else {"type": "ball"}
        ET.SubElement(body, "joint", name=name, **joint)
        inertial(body, tissue.pop(name))
        bodies[name] = body
    for name, part in tissue.items():
        inertial(ET.SubElement(bodies[part["segment"]], "body", name=name), part)
    return mujoco.MjModel.from_xml_string(ET.tostring(root, encoding="unicode"))


class MujocoBody:
    def __init__(self, export):
        self.motion = Motion(export)
        self.model = _model(export)
        self.data = mujoco.MjData(self.model)
        self.mass_kg = float(mujoco.mj_getTotalmass(self.model))
        # MuJoCo orders joints by the tree, depth first.
        joints = [self.model.joint(segment["name"]) for segment in export["segments"][1:]]
        self._q = np.array([joint.qposadr[0] + np.arange(4) for joint in joints])
        self._v = np.array([joint.dofadr[0] + np.arange(3) for joint in joints])
        self._feet = [self.model.body(foot).id for foot in FEET]
        self._sole = np.array(export["sole_m"]).T
        self._matrix = np.zeros((self.model.nv, self.model.nv))

    def _place(self, t_s, place, wxyz):
        rotation, rate = self.motion.at(t_s)
        self.data.qpos[:3] = place
        self.data.qpos[3:7] = wxyz / np.linalg.norm(wxyz)
        self.data.qpos[self._q] = rotation
        mujoco.mj_kinematics(self.model, self.data)
        mujoco.mj_comPos(self.model, self.data)
        return rate

    def pelvis_motion(self, t_s, place, wxyz, linear, angular):
        """Velocity of the pelvis in the world and its rate in own axes, so that the body has this
        momentum, about its CM.

        The first six rows of the joint-space inertia matrix times the velocities are the momentum
        of the whole body: linear in the world, angular about the pelvis's origin in own axes.
        """
        velocities = np.zeros(self.model.nv)
        velocities[self._v] = self._place(t_s, place, wxyz)
        mujoco.mj_makeM(self.model, self.data)
        mujoco.mj_fullM(self.model, self.data, self._matrix)
        turn = self.data.xmat[1].reshape(3, 3)
        arm = self.data.subtree_com[1] - self.data.xpos[1]
        about_pelvis = turn.T @ (angular + np.cross(arm, linear))
        wanted = np.concatenate([linear, about_pelvis]) - self._matrix[:6] @ velocities
        base = np.linalg.solve(self._matrix[:6, :6], wanted)
        return base[:3], base[3:]

    def momentum(self, t_s, place, wxyz, velocity, rate):
        """Linear and angular momentum (about the CM) in the world, summed over the bodies."""
        joint_rates = self._place(t_s, place, wxyz)
        self.data.qvel[:3], self.data.qvel[3:6] = velocity, rate
        self.data.qvel[self._v] = joint_rates
        mujoco.mj_comVel(self.model, self.data)
        mujoco.mj_subtreeVel(self.model, self.data)
        return (
            self.mass_kg * self.data.subtree_linvel[1],
            self.data.subtree_angmom[1].copy(),
        )

    def efforts(self, t_s, rate):
        """While the pelvis turns at this rate (own axes) in free flight: its angular acceleration
        (rad/s², own axes) and the net torques of all joints (N m, in the axes of their parents), by
        mj_inverse. The root's acceleration is the one at which it takes no wrench."""
        self.data.qvel[:3], self.data.qvel[3:6] = 0.0, rate
        self.data.qvel[self._v] = self._place(t_s, np.zeros(3), STILL)
        self.data.qacc[:] = 0.0
        self.data.qacc[self._v] = self.motion.accelerations(t_s)
        mujoco.mj_inverse(self.model, self.data)
        bias = self.data.qfrc_inverse[:6].copy()
        mujoco.mj_fullM(self.model, self.data, self._matrix)
        self.data.qacc[:6] = -np.linalg.solve(self._matrix[:6, :6], bias)
        mujoco.mj_inverse(self.model, self.data)
        rotation, _ = self.motion.at(t_s)
        torques = turned(rotation, self.data.qfrc_inverse[self._v])
        left_over = np.abs(self.data.qfrc_inverse[:6]).max()
        return self.data.qacc[3:6].copy(), torques, left_over

    def cm_m(self, t_s, place, wxyz):
        self._place(t_s, place, wxyz)
        return self.data.subtree_com[1].copy()

    def lowest_m(self, t_s, place, wxyz):
        self._place(t_s, place, wxyz)
        return min(
            (self.data.xmat[foot].reshape(3, 3) @ self._sole)[1].min() + self.data.xpos[foot][1]
            for foot in self._feet
        )
