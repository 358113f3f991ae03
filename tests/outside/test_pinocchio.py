"""Inertia, momentum and whole flights against Pinocchio."""

import copy
import json

import numpy as np
import pytest

import cases
import flight
from agreement import check_efforts, check_flight, check_start
from checks import Checks
from pinocchio_body import PinocchioBody

TITLE = "1. Flights computed again with Pinocchio"
SOURCE = "Pinocchio (Carpentier et al. 2019)"

# Of the largest value met in the flight.
SHARE = 1e-9


def check_samples(checks, name, body, export):
    """At 25 instants of a flight: what the body is and how it moves, from the joint motion alone.

    The rows show the largest inertia, momentum of the joint motion, and energy met.
    """
    h = np.array(export["start"]["angular_momentum_kg_m2_s"])
    ours, theirs = [], []
    for sample in export["samples"]:
        wxyz, rate = np.array(sample["orientation"]), np.array(sample["rate_rad_s"])
        theirs.append([*body.held(sample["t_s"]), *body.turning(sample["t_s"], wxyz, rate)])
        ours.append(
            [
                np.array(sample["inertia_kg_m2"]),
                np.array(sample["joint_momentum_kg_m2_s"]),
                np.array(sample["cm_in_pelvis_m"]),
                h,
                sample["energy_j"],
            ]
        )
    quantities = [
        "inertia about the CM, kg m²",
        "momentum of the joint motion, kg m²/s",
        "CM from the pelvis, m",
        "momentum map times velocity, kg m²/s",
        "energy, J",
    ]
    for quantity, mine, other in zip(quantities, zip(*ours), zip(*theirs)):
        mine, other = (np.array(values).reshape(len(values), -1) for values in (mine, other))
        size = np.abs(other).max()
        # Nothing moves in some plans; then nothing but zero will do.
        difference = np.abs(mine - other).max() / (size or 1.0)
        checks.apart(
            f"{name}: {quantity}", np.abs(mine).max(), size, difference, SHARE, SOURCE, "of it"
        )


def check_loads(checks, name, body, export):
    """What the motion takes at the joints, by rnea with a free flyer."""
    found = {
        "angular acceleration of the pelvis, rad/s²": [],
        "net joint torques, N m": [],
        "force on each hand, N": [],
    }
    for sample in export["samples"]:
        rate = flight.rotation(sample["orientation"]).inv().apply(sample["rate_rad_s"])
        *theirs, left_over = body.efforts(sample["t_s"], rate)
        assert left_over < 1e-6
        ours = (
            sample["pelvis_acceleration_rad_s2"],
            sample["joint_torques_n_m"],
            sample["hand_force_n"],
        )
        for kept, mine, other in zip(found.values(), ours, theirs):
            kept.append((mine, other))
    check_efforts(checks, name, found, f"{SOURCE}, rnea")


@pytest.mark.parametrize("name", cases.NAMED)
def test_named(aloft, checks, name):
    start, changes = cases.NAMED[name]
    check_all(aloft, checks, name, start, changes)


@pytest.mark.parametrize("number", range(cases.DRAWN))
def test_drawn(aloft, drawn, checks, number):
    check_all(aloft, checks, f"random {number + 1}", cases.STARTS[0], drawn[number])


def check_all(aloft, checks, name, start, changes):
    export, readout = aloft.export(start, **changes), aloft.fly(start, **changes)
    scenario = {**aloft.start(start), **changes}
    body = PinocchioBody(export)
    check_samples(checks, name, body, export)
    check_loads(checks, name, body, export)
    check_start(checks, name, body, export, scenario, SOURCE)
    check_flight(checks, name, flight.fly(body, export), export, readout, scenario, SOURCE)


@pytest.mark.parametrize("name", cases.LED)
def test_led_by_hand(aloft, checks, tmp_path, name):
    """Jumps whose arms and legs a hand has led, from the files that hold them."""
    start, changes, knots = cases.LED[name]
    scenario = {**aloft.start(start), **changes}
    keys = ("time_s", "arms", "legs")
    scenario["led"] = [dict(zip(keys, knot)) for knot in knots]
    file = tmp_path / "led.aloft.json"
    file.write_text(json.dumps({"turns_aloft_scenario": 3, "scenario": scenario}))
    export, readout = aloft.export(str(file)), aloft.fly(str(file))
    body = PinocchioBody(export)
    check_samples(checks, name, body, export)
    check_loads(checks, name, body, export)
    check_start(checks, name, body, export, scenario, SOURCE)
    check_flight(checks, name, flight.fly(body, export), export, readout, scenario, SOURCE)


@pytest.mark.parametrize("name", cases.STARTS)
def test_newton_and_euler(aloft, checks, name):
    """The same flights from forces: no momentum is presumed to be conserved."""
    export, readout = aloft.export(name), aloft.fly(name)
    body = PinocchioBody(export)
    start = export["start"]
    at_first = flight.launched(body, export)
    velocity, rate = body.pelvis_motion(
        0.0,
        at_first[:3],
        at_first[3:],
        body.mass_kg * np.array(start["cm_velocity_m_s"]),
        np.array(start["angular_momentum_kg_m2_s"]),
    )
    own_velocity = flight.rotation(at_first[3:]).inv().apply(velocity)
    flown = flight.Flight(
        body, export, np.concatenate([at_first, own_velocity, rate]), body.forced_change
    )
    source = "Newton-Euler, Pinocchio's rnea"
    check_flight(checks, f"{name}, from forces", flown, export, readout, aloft.start(name), source)


def test_rates_are_those_of_the_rotations(aloft, checks):
    """The rates of the joint motion are the central differences of its rotations."""
    body = PinocchioBody(aloft.export("crooked-takeoff", open_lead_s=0.4, close_time_s=0.4))
    step, source = 1e-5, "central differences"
    worst_rate = worst_change = size_rate = size_change = 0.0
    for t in np.linspace(0.03, 0.49, 40):
        (before, slow), (after, fast) = body.motion.at(t - step), body.motion.at(t + step)
        _, rate = body.motion.at(t)
        turn = [
            (flight.rotation(a).inv() * flight.rotation(b)).as_rotvec()
            for a, b in zip(before, after)
        ]
        change = body.motion.accelerations(t)
        worst_rate = max(worst_rate, np.abs(np.array(turn) / (2 * step) - rate).max())
        worst_change = max(worst_change, np.abs((fast - slow) / (2 * step) - change).max())
        size_rate = max(size_rate, np.abs(rate).max())
        size_change = max(size_change, np.abs(change).max())
    checks.apart("joint rates, rad/s", size_rate, size_rate, worst_rate, 1e-6, source, "rad/s")
    checks.apart(
        "joint accelerations, rad/s²", size_change, size_change, worst_change, 1e-4, source
    )


@pytest.mark.parametrize(
    "spoil",
    [
        lambda export: export["parts"][9].update(mass_kg=export["parts"][9]["mass_kg"] + 1e-6),
        lambda export: export["segments"][7]["joint_m"].__setitem__(2, 0.2),
        lambda export: export["segments"][5]["closing"].update(time_s=0.19),
    ],
    ids=["a milligram more in a hand", "another shoulder", "a slower elbow"],
)
def test_a_difference_would_be_seen(aloft, spoil):
    """The twin that breaks it: a body or motion that is not quite ours does not agree."""
    export = aloft.export("four-turns")
    other = copy.deepcopy(export)
    spoil(other)
    seen = Checks("")
    check_samples(seen, "spoilt", PinocchioBody(other), export)
    assert seen.failed()


def test_a_difference_in_flight_would_be_seen(aloft):
    """A take-off with a ten-thousandth more momentum turns visibly further, and a body 0.1 mm
    lower comes down earlier."""
    export, readout = aloft.export("four-turns"), aloft.fly("four-turns")
    other = copy.deepcopy(export)
    other["start"]["angular_momentum_kg_m2_s"][1] *= 1.0001
    other["start"]["cm_height_m"] -= 1e-4
    seen = Checks("")
    body = PinocchioBody(other)
    scenario = aloft.start("four-turns")
    check_flight(seen, "spoilt", flight.fly(body, other), export, readout, scenario, "")
    kinds = {row.what for row in seen.failed()}
    assert kinds >= {"spoilt: air turns", "spoilt: touch-down, s"}
