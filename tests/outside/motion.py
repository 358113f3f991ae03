"""The joint motion that an export prescribes, computed from its words alone.

A segment's rotation against its parent is `takeoff exp(s1 closing) exp(s2 opening)` with
minimum-jerk blends s1, s2 (Flash & Hogan 1985). Quaternions are w, x, y, z, one a row.
"""

import numpy as np
from scipy.spatial.transform import Rotation, RotationSpline

_NEXT, _LAST = [1, 2, 0], [2, 0, 1]


def cross(a, b):
    return a[..., _NEXT] * b[..., _LAST] - a[..., _LAST] * b[..., _NEXT]


def product(a, b):
    aw, av, bw, bv = a[..., :1], a[..., 1:], b[..., :1], b[..., 1:]
    scalar = aw * bw - (av * bv).sum(axis=-1, keepdims=True)
    return np.concatenate([scalar, aw * bv + bw * av + cross(av, bv)], axis=-1)


def exponential(vector):
    """The rotation by |vector| about it."""
    angle = np.sqrt((vector * vector).sum(axis=-1, keepdims=True))
    return np.concatenate(
        [np.cos(0.5 * angle), 0.5 * np.sinc(0.5 * angle / np.pi) * vector], axis=-1
    )


def turned_back(q, vector):
    """A vector in the axes that q turns away from."""
    w, u = q[..., :1], -q[..., 1:]
    twice = 2.0 * cross(u, vector)
    return vector + w * twice + cross(u, twice)


def turned(q, vector):
    """A vector in the axes that q turns to."""
    w, u = q[..., :1], q[..., 1:]
    twice = 2.0 * cross(u, vector)
    return vector + w * twice + cross(u, twice)


def blend(t_s, start_s, time_s):
    """Progress 10 x³ - 15 x⁴ + 6 x⁵ and its first two derivatives by time, element by element."""
    x = np.clip((t_s - start_s) / time_s, 0.0, 1.0)
    y = 1.0 - x
    return (
        x * x * x * (10.0 - x * (15.0 - 6.0 * x)),
        30.0 * x * x * y * y / time_s,
        60.0 * x * y * (y - x) / (time_s * time_s),
    )


class Motion:
    """All joints but the root's, in the order of the export."""

    def __init__(self, export):
        segments = export["segments"][1:]
        parts = [[segment[which] for segment in segments] for which in ("closing", "opening")]

        def column(key):
            return np.array([[part[key] for part in each] for each in parts])

        self._takeoff = np.array([segment["takeoff"] for segment in segments])
        self._way = column("rotation_vector_rad")
        self._start = column("start_s")[..., None]
        self._time = column("time_s")[..., None]

    def at(self, t_s):
        """Rotations (own axes to the parent's) and rates (own axes, rad/s)."""
        progress, speed, _ = blend(t_s, self._start, self._time)
        closed, opened = exponential(progress * self._way)
        closing, opening = speed * self._way
        rotation = product(self._takeoff, product(closed, opened))
        return rotation, turned_back(opened, closing) + opening

    def accelerations(self, t_s):
        """Change of the rates, rad/s²."""
        progress, speed, change = (b * self._way for b in blend(t_s, self._start, self._time))
        opened = exponential(progress[1])
        closing = turned_back(opened, speed[0])
        return turned_back(opened, change[0]) + change[1] - cross(speed[1], closing)

    def knots(self):
        """Times at which a blend begins or ends; in between the motion is smooth."""
        return sorted(set(self._start.flat) | set((self._start + self._time).flat))


class MeasuredMotion:
    """Joint motion through measured rotations: SciPy's splines with continuous rate and acceleration.
    Joints that never move have none."""

    def __init__(self, export):
        measured = export["measured"]
        self._times = np.array(measured["times_s"])
        rotations = np.array(measured["rotations"])
        self._first = rotations[0]
        self._splines = {
            joint: RotationSpline(
                self._times, Rotation.from_quat(rotations[:, joint], scalar_first=True)
            )
            for joint in range(rotations.shape[1])
            if np.ptp(rotations[:, joint], axis=0).any()
        }

    def _vectors(self, t_s, order):
        vectors = np.zeros((len(self._first), 3))
        for joint, spline in self._splines.items():
            vectors[joint] = spline(t_s, order)
        return vectors

    def at(self, t_s):
        rotation = self._first.copy()
        for joint, spline in self._splines.items():
            rotation[joint] = spline(t_s).as_quat(scalar_first=True)
        return rotation, self._vectors(t_s, 1)

    def accelerations(self, t_s):
        return self._vectors(t_s, 2)

    def tables(self, times):
        """Rotations, rates and accelerations at many times at once."""
        rotations = np.repeat(self._first[None], len(times), axis=0)
        rates, accelerations = np.zeros((2, len(times), len(self._first), 3))
        for joint, spline in self._splines.items():
            rotations[:, joint] = spline(times).as_quat(scalar_first=True)
            rates[:, joint], accelerations[:, joint] = spline(times, 1), spline(times, 2)
        return rotations, rates, accelerations

    def knots(self):
        return list(self._times)


class LedMotion:
    """Joint motion that was led by hand: `tight exp((1 - s) (w opening - (1 - w) closing))`, s the sum of all
    steps' ways times their blends, w one blend more. Rates from the quaternions' own derivatives."""

    def __init__(self, export):
        led = [segment["led"] for segment in export["segments"][1:]]
        self._tight = np.array([joint["tight"] for joint in led])
        self._closing = np.array([joint["closing_rad"] for joint in led])
        self._opening = np.array([joint["opening_rad"] for joint in led])
        self._time = led[0]["movement_s"]
        self._over = [joint["over_start_s"] for joint in led]
        self._start = np.array([[step["start_s"] for step in joint["steps"]] for joint in led])
        self._way = np.array([[step["way"] for step in joint["steps"]] for joint in led])

    def _quaternions(self, t_s):
        """exp(u) and its first two derivatives."""
        s = [(self._way * part).sum(axis=1) for part in blend(t_s, self._start, self._time)]
        starts = np.array([np.inf if over is None else over for over in self._over])
        w = blend(t_s, np.minimum(starts, 1e9), self._time)
        out = [1.0 - s[0], -s[1], -s[2]]
        across = self._closing + self._opening
        to = [part[:, None] * across for part in w]
        to[0] = to[0] - self._closing
        o = [part[:, None] for part in out]
        u = o[0] * to[0]
        v = o[1] * to[0] + o[0] * to[1]
        a = o[2] * to[0] + 2.0 * o[1] * to[1] + o[0] * to[2]
        # Cosine and sine over the angle, of half the angle, and what they are derived by its square.
        z = (u * u).sum(axis=1, keepdims=True)
        z1 = 2.0 * (u * v).sum(axis=1, keepdims=True)
        z2 = 2.0 * (v * v + u * a).sum(axis=1, keepdims=True)
        small = z < 1e-4
        safe = np.where(small, 1.0, z)
        f = np.cos(0.5 * np.sqrt(z))
        g = 0.5 * np.sinc(0.5 * np.sqrt(z) / np.pi)
        g1 = np.where(small, -1.0 / 48.0 + z / 1920.0, (f / 4.0 - g / 2.0) / safe)
        g2 = np.where(small, 1.0 / 1920.0, -(g / 16.0 + 1.5 * g1) / safe)
        f1, f2 = -g / 4.0, -g1 / 4.0
        return (
            np.concatenate([f, g * u], axis=1),
            np.concatenate([f1 * z1, g1 * z1 * u + g * v], axis=1),
            np.concatenate(
                [
                    f2 * z1 * z1 + f1 * z2,
                    (g2 * z1 * z1 + g1 * z2) * u + 2.0 * g1 * z1 * v + g * a,
                ],
                axis=1,
            ),
        )

    def at(self, t_s):
        q, q1, _ = self._quaternions(t_s)
        back = q * [1.0, -1.0, -1.0, -1.0]
        return product(self._tight, q), 2.0 * product(back, q1)[:, 1:]

    def accelerations(self, t_s):
        q, _, q2 = self._quaternions(t_s)
        return 2.0 * product(q * [1.0, -1.0, -1.0, -1.0], q2)[:, 1:]

    def knots(self):
        over = {start for start in self._over if start is not None}
        starts = set(self._start.flat) | over
        return sorted(starts | {start + self._time for start in starts})


def exported(export):
    """The joint motion of an export."""
    if "measured" in export:
        return MeasuredMotion(export)
    return LedMotion(export) if "led" in export["segments"][1] else Motion(export)
