"""A turntable's export as a MuJoCo model: a platform on a hinge about the vertical, the pelvis welded to it, the
other segments on ball joints that move as the export says. The hinge's acceleration comes from the inverse
dynamics of the whole tree, which knows nothing of a momentum that stays.
"""

import xml.etree.ElementTree as ET

import mujoco
import numpy as np

from motion import MeasuredMotion
from mujoco_body import inertial, numbers

# What MuJoCo takes as the mass and the least inertia of a body that weighs nothing.
NOTHING = 1e-12


def _model(export):
    root = ET.Element("mujoco")
    # A platform may be as light as the model has it.
    ET.SubElement(root, "compiler", boundmass=repr(NOTHING), boundinertia=repr(NOTHING))
    ET.SubElement(root, "option", gravity="0 -9.81 0")
    world = ET.SubElement(root, "worldbody")
    platform = ET.SubElement(world, "body", name="platform")
    ET.SubElement(platform, "joint", name="hinge", type="hinge", axis="0 1 0")
    inertia = max(export["bearing"]["inertia_kg_m2"], NOTHING)
    inertial(
        platform, {"cm_m": [0.0] * 3, "mass_kg": NOTHING, "moments_kg_m2": [inertia] * 3}
    )
    bodies = {None: platform}
    tissue = {part["name"]: part for part in export["parts"]}
    for segment in export["segments"]:
        name, parent = segment["name"], segment["parent"]
        place = export["bearing"]["hips_m"] if parent is None else segment["joint_m"]
        body = ET.SubElement(bodies[parent], "body", name=name, pos=numbers(place))
        if parent is not None:
            ET.SubElement(body, "joint", name=name, type="ball")
        inertial(body, tissue.pop(name))
        bodies[name] = body
    for name, part in tissue.items():
        inertial(ET.SubElement(bodies[part["segment"]], "body", name=name), part)
    return mujoco.MjModel.from_xml_string(ET.tostring(root, encoding="unicode"))


class MujocoTurntable:
    def __init__(self, export):
        self.bearing = export["bearing"]
        self.motion = MeasuredMotion(export)
        self.model = _model(export)
        self.data = mujoco.MjData(self.model)
        joints = [self.model.joint(segment["name"]) for segment in export["segments"][1:]]
        self._q = np.array([joint.qposadr[0] + np.arange(4) for joint in joints])
        self._v = np.array([joint.dofadr[0] + np.arange(3) for joint in joints])
        self._matrix = np.zeros((self.model.nv, self.model.nv))

    def friction_n_m(self, rate):
        viscous = self.bearing["friction_viscous_n_m_s"] * rate
        return -self.bearing["friction_torque_n_m"] * np.sign(rate) - viscous

    def _inverse(self, state, joints, hinge_acceleration):
        rotation, rates, accelerations = joints
        data = self.data
        data.qpos[0], data.qvel[0], data.qacc[0] = state[0], state[1], hinge_acceleration
        data.qpos[self._q], data.qvel[self._v] = rotation, rates
        data.qacc[self._v] = accelerations
        mujoco.mj_inverse(self.model, data)
        return data.qfrc_inverse

    def change(self, state, joints):
        """Of angle, rate and the work of the joints, in a second."""
        needed = self._inverse(state, joints, 0.0)[0]
        mujoco.mj_fullM(self.model, self.data, self._matrix)
        acceleration = (self.friction_n_m(state[1]) - needed) / self._matrix[0, 0]
        torques = self._inverse(state, joints, acceleration)[self._v]
        # Gravity turns nothing about the vertical; the lift of the limbs is not counted.
        work = np.sum((torques + self._lifting()) * joints[1])
        return np.array([state[1], acceleration, work])

    def _lifting(self):
        """The generalised forces of gravity on the ball joints: all bodies at rest, nothing accelerated."""
        data = self.data
        data.qvel[:], data.qacc[:] = 0.0, 0.0
        mujoco.mj_inverse(self.model, data)
        return -data.qfrc_inverse[self._v]

    def momentum(self, state, joints):
        """Angular momentum about the hinge and the moment of inertia: the hinge's row of the joint-space
        inertia matrix."""
        self._inverse(state, joints, 0.0)
        mujoco.mj_fullM(self.model, self.data, self._matrix)
        rates = np.zeros(self.model.nv)
        rates[0], rates[self._v] = state[1], joints[1]
        return self._matrix[0] @ rates, self._matrix[0, 0]

    def run(self, times):
        """States (angle, rate, work of the joints) at these even times, by the classical Runge-Kutta method."""
        step = times[1] - times[0]
        halves = np.linspace(times[0], times[-1], 2 * len(times) - 1)
        joints = list(zip(*self.motion.tables(halves)))
        state = np.array([0.0, self.bearing["first_rate_rad_s"], 0.0])
        states = [state]
        for i in range(len(times) - 1):
            start, middle, end = joints[2 * i : 2 * i + 3]
            one = self.change(state, start)
            two = self.change(state + 0.5 * step * one, middle)
            three = self.change(state + 0.5 * step * two, middle)
            four = self.change(state + step * three, end)
            state = state + step / 6.0 * (one + 2.0 * (two + three) + four)
            states.append(state)
        return np.array(states), joints[::2]
