"""Flights about any axis: upside down, head over heels, without any angular momentum.

Every flight again by Pinocchio's momentum map, the joint motion by SciPy's rotation splines; the rigid
ones also by Euler's equations alone (Landau & Lifshitz, Mechanics, section 36).
"""

import numpy as np
import pytest
from scipy.integrate import solve_ivp

import flight
from pinocchio_body import PinocchioBody

TITLE = "Flights about any axis"
CASES = [
    "rigid, upside down",
    "rigid, head over heels",
    "bending round, no momentum",
    "arms round, no momentum",
    "somersault with a twist",
]
RIGID = [name for name in CASES if name.startswith("rigid")]
WITHOUT = [name for name in CASES if name.endswith("no momentum")]
TURNED_RAD = 1e-5
ENGINE = "Pinocchio, DOP853"


def integrated(export, rate_at, edges):
    """Orientations and turns about the momentum at the times of the samples, for a body that turns at
    `rate_at(t, wxyz)`, own axes."""
    h = np.array(export["start"]["angular_momentum_kg_m2_s"])
    axis = h / np.linalg.norm(h) if h.any() else np.array([0.0, 1.0, 0.0])
    times = [sample["t_s"] for sample in export["samples"]]

    def change(t, state):
        rate = rate_at(t, state[:4])
        world = flight.rotation(state[:4] / np.linalg.norm(state[:4])).apply(rate)
        return np.append(flight.quaternion_rate(state[:4], rate), world @ axis)

    state = np.append(export["start"]["orientation"], 0.0)
    edges = sorted({0.0, *(edge for edge in edges if edge < times[-1]), *times})
    found = {0.0: state}
    for begin, end in zip(edges, edges[1:]):
        piece = solve_ivp(change, (begin, end), state, method="DOP853", **flight.TOLERANCE)
        assert piece.success, piece.message
        state = piece.y[:, -1]
        found[end] = state
    return [found[t] for t in times]


def check_turned(checks, name, export, states, source):
    off = [
        flight.angle_between(flight.rotation(state[:4]), flight.rotation(sample["orientation"]))
        for state, sample in zip(states, export["samples"])
    ]
    net = flight.angle_between(
        flight.rotation(export["start"]["orientation"]), flight.rotation(states[-1][:4])
    )
    checks.apart(f"{name}: attitude, rad", net, net, max(off), TURNED_RAD, source, "rad")
    ours = [sample["about_momentum_rad"] for sample in export["samples"]]
    apart = max(abs(a - state[4]) for a, state in zip(ours, states))
    checks.apart(
        f"{name}: turned about the momentum, rad",
        ours[-1],
        states[-1][4],
        apart,
        TURNED_RAD,
        source,
        "rad",
    )
    return net


@pytest.mark.parametrize("name", CASES)
def test_pinocchio_flies_the_same(any_axis, checks, name):
    export = any_axis[name]
    body = PinocchioBody(export)
    h = np.array(export["start"]["angular_momentum_kg_m2_s"])
    nowhere = np.zeros(3)

    def rate_at(t, wxyz):
        return body.pelvis_motion(t, nowhere, wxyz, nowhere, h)[1]

    net = check_turned(
        checks, name, export, integrated(export, rate_at, body.motion.knots()), ENGINE
    )
    # By its limbs alone: without momentum it has turned all the same.
    if name in WITHOUT:
        assert not h.any() and net > 0.3


@pytest.mark.parametrize("name", CASES)
def test_momentum_energy_and_loads(any_axis, checks, name):
    export = any_axis[name]
    body = PinocchioBody(export)
    h = np.array(export["start"]["angular_momentum_kg_m2_s"])
    worst = dict.fromkeys(["momentum", "energy", "acceleration", "torques"], 0.0)
    size = dict.fromkeys(worst, 0.0)

    def see(what, ours, theirs):
        worst[what] = max(worst[what], np.abs(np.array(ours) - theirs).max())
        size[what] = max(size[what], np.abs(theirs).max())

    for sample in export["samples"]:
        t, wxyz = sample["t_s"], np.array(sample["orientation"])
        world = np.array(sample["rate_rad_s"])
        momentum, energy = body.turning(t, wxyz, world)
        see("momentum", h, momentum)
        see("energy", sample["energy_j"], energy)
        own = flight.rotation(wxyz).inv().apply(world)
        acceleration, torques, _, left = body.efforts(t, own)
        assert left < 1e-9
        see("acceleration", sample["pelvis_acceleration_rad_s2"], acceleration)
        see("torques", sample["joint_torques_n_m"], torques)
    checks.apart(
        f"{name}: momentum from the motion, kg m²/s",
        np.linalg.norm(h),
        np.linalg.norm(h),
        worst["momentum"],
        1e-9,
        "Pinocchio",
        "kg m²/s",
    )
    for what, unit in [("energy", "J"), ("acceleration", "rad/s²"), ("torques", "N m")]:
        checks.apart(
            f"{name}: {what}", size[what], size[what], worst[what], 1e-7 * size[what], "Pinocchio", unit
        )


@pytest.mark.parametrize("name", RIGID)
def test_an_asymmetric_top(any_axis, checks, name):
    """Euler's equations I w' = (I w) x w, which know no attitude, and the quaternion that follows."""
    export = any_axis[name]
    inertia, _, _ = PinocchioBody(export).held(0.0)
    start = np.array(export["start"]["orientation"])
    h = np.array(export["start"]["angular_momentum_kg_m2_s"])
    end = export["samples"][-1]["t_s"]

    def change(_, rate):
        return np.linalg.solve(inertia, np.cross(inertia @ rate, rate))

    own = np.linalg.solve(inertia, flight.rotation(start).inv().apply(h))
    rates = solve_ivp(
        change, (0.0, end), own, method="DOP853", dense_output=True, **flight.TOLERANCE
    )
    states = integrated(export, lambda t, _: rates.sol(t), np.linspace(0.0, end, 50))
    check_turned(checks, f"{name}, Euler's equations", export, states, "SciPy, DOP853")


@pytest.mark.parametrize("name", WITHOUT)
def test_splines(any_axis, checks, name):
    """Rotations, rates and accelerations of the joints between the measured ones."""
    export = any_axis[name]
    body = PinocchioBody(export)
    source = "SciPy's RotationSpline"
    worst = [0.0, 0.0, 0.0]
    size = [0.0, 0.0, 0.0]
    for sample in export["samples"]:
        rotation, rate = body.motion.at(sample["t_s"])
        ours = flight.rotation(np.array(sample["joint_rotations"]))
        off = (ours.inv() * flight.rotation(rotation)).magnitude()
        rate_off = np.array(sample["joint_rates_rad_s"]) - rate
        change = body.motion.accelerations(sample["t_s"])
        change_off = np.array(sample["joint_accelerations_rad_s2"]) - change
        for i, (each, of) in enumerate(
            [(off, ours.magnitude()), (rate_off, rate), (change_off, change)]
        ):
            worst[i] = max(worst[i], np.abs(each).max())
            size[i] = max(size[i], np.abs(of).max())
    for i, (what, tolerance) in enumerate([("rotations", 1e-9), ("rates", 1e-6), ("changes", 1e-4)]):
        checks.apart(
            f"{name}: {what} of the joints", size[i], size[i], worst[i], tolerance, source, ""
        )


def test_a_difference_would_be_seen(any_axis):
    """A ten-thousandth more momentum, or a tenth of a gram more in one hand, is not the same flight."""
    export = any_axis["bending round, no momentum"]
    export = {**export, "parts": [dict(part) for part in export["parts"]]}
    export["parts"][9]["mass_kg"] *= 1.01
    body = PinocchioBody(export)
    nowhere = np.zeros(3)
    states = integrated(
        export, lambda t, q: body.pelvis_motion(t, nowhere, q, nowhere, nowhere)[1], body.motion.knots()
    )
    last = flight.rotation(export["samples"][-1]["orientation"])
    assert flight.angle_between(flight.rotation(states[-1][:4]), last) > 10 * TURNED_RAD
