"""A flight computed again, whatever engine knows the body.

The unknowns are the place and attitude of the pelvis. The engine says how it moves so that the
whole body has the linear momentum of the parabola and the angular momentum of the take-off;
an explicit Runge-Kutta method of eighth order (SciPy's DOP853: Hairer, Norsett & Wanner, Solving
Ordinary Differential Equations I) integrates it between the knots of the joint motion.
"""

import numpy as np
from scipy.integrate import solve_ivp
from scipy.spatial.transform import Rotation

TOLERANCE = {"rtol": 1e-11, "atol": 1e-12}

# The first contact is looked for at steps no longer than this, s.
LONGEST_STEP_S = 0.02


def rotation(wxyz):
    return Rotation.from_quat(wxyz, scalar_first=True)


def quaternion_rate(wxyz, rate):
    """Change of a quaternion (own axes to the world's) for a rate in own axes."""
    w, v = wxyz[0], wxyz[1:]
    return 0.5 * np.concatenate([[-v @ rate], w * rate + np.cross(v, rate)])


def angle_between(a, b):
    return (a.inv() * b).magnitude()


class Flight:
    """From take-off to the first moment at which a sole comes back to the level of the ice."""

    def __init__(self, engine, export, state, change, place=lambda state: (state[:3], state[3:7])):
        self._place = place
        knots = engine.motion.knots()
        speed, gravity = export["start"]["cm_velocity_m_s"][1], export["gravity_m_s2"]
        limit = 3.0 * speed / gravity + 0.5
        edges = [0.0, *(t for t in knots if 0.0 < t < limit), limit]

        def height(t, state):
            return engine.lowest_m(t, *place(state))

        height.terminal, height.direction = True, -1
        self._pieces = []
        for begin, end in zip(edges, edges[1:]):
            piece = solve_ivp(
                change,
                (begin, end),
                state,
                method="DOP853",
                dense_output=True,
                events=height,
                max_step=LONGEST_STEP_S,
                **TOLERANCE,
            )
            assert piece.success, piece.message
            self._pieces.append((begin, piece.sol))
            state = piece.y[:, -1]
            if piece.status == 1:
                self.touchdown_s = float(piece.t_events[0][0])
                break
        else:
            raise AssertionError("it never comes down")

    def state(self, t_s):
        solution = next(sol for begin, sol in reversed(self._pieces) if begin <= t_s)
        return solution(t_s)

    def orientation(self, t_s):
        """Pelvis axes to the world's."""
        return rotation(self._place(self.state(t_s))[1])

    def turned_rad(self, t_s):
        """Unwrapped heading of the pelvis's right-left axis since take-off, anticlockwise."""
        times = np.linspace(0.0, t_s, max(2, int(t_s / 0.002)))
        w, x, y, z = np.array([self._place(self.state(t))[1] for t in times]).T
        right = 2.0 * np.array([x * z + w * y, y * z - w * x, 0.5 - x * x - y * y]).T
        heading = np.unwrap(np.arctan2(right[:, 0], right[:, 2]))
        return heading[-1] - heading[0]


def fly(engine, export):
    """The flight by conservation of momentum, as the engine's own momentum map has it."""
    start = export["start"]
    mass = engine.mass_kg
    momentum = np.array(start["angular_momentum_kg_m2_s"])
    velocity = np.array(start["cm_velocity_m_s"])
    down = np.array([0.0, -export["gravity_m_s2"], 0.0])

    def change(t, state):
        wanted = mass * (velocity + t * down)
        moved, rate = engine.pelvis_motion(t, state[:3], state[3:7], wanted, momentum)
        return np.concatenate([moved, quaternion_rate(state[3:7], rate)])

    return Flight(engine, export, launched(engine, export), change)


def launched(engine, export):
    """Place and attitude of the pelvis at take-off."""
    start = export["start"]
    attitude = np.array(start["orientation"])
    cm = np.array([0.0, start["cm_height_m"], 0.0])
    return np.concatenate([cm - engine.cm_m(0.0, np.zeros(3), attitude), attitude])
