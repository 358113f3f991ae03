"""Whole flights against a second engine of a different build, MuJoCo."""

import numpy as np
import pytest

import cases
import flight
from agreement import check_efforts, check_flight
from mujoco_body import MujocoBody

TITLE = "2. Flights computed again with MuJoCo"
SOURCE = "MuJoCo (Todorov et al. 2012)"


@pytest.mark.parametrize("name", cases.NAMED)
def test_named(aloft, checks, name):
    start, changes = cases.NAMED[name]
    check_all(aloft, checks, name, start, changes)


@pytest.mark.parametrize("number", range(cases.DRAWN_FOR_SECOND))
def test_drawn(aloft, drawn, checks, number):
    check_all(aloft, checks, f"random {number + 1}", cases.STARTS[0], drawn[number])


def check_all(aloft, checks, name, start, changes):
    export, readout = aloft.export(start, **changes), aloft.fly(start, **changes)
    scenario = {**aloft.start(start), **changes}
    body = MujocoBody(export)
    check_flight(checks, name, flight.fly(body, export), export, readout, scenario, SOURCE)
    check_momentum(checks, name, body, export)
    check_loads(checks, name, body, export)


def check_momentum(checks, name, body, export):
    """Momentum about the CM summed over the bodies while they move as our flight says: the
    take-off's at all times. The linear velocity of the pelvis does not matter to it."""
    h = np.array(export["start"]["angular_momentum_kg_m2_s"])
    worst = 0.0
    for sample in export["samples"]:
        wxyz = np.array(sample["orientation"])
        rate = flight.rotation(wxyz).inv().apply(sample["rate_rad_s"])
        _, found = body.momentum(sample["t_s"], np.zeros(3), wxyz, np.zeros(3), rate)
        worst = max(worst, np.abs(found - h).max() / np.abs(h).max())
    checks.apart(
        f"{name}: angular momentum in flight, kg m²/s",
        h[1],
        h[1],
        worst,
        1e-9,
        f"{SOURCE}, subtree_angmom",
        "of it",
    )


def check_loads(checks, name, body, export):
    """What the motion takes at the joints, by mj_inverse with a free root."""
    found = {
        "angular acceleration of the pelvis, rad/s²": [],
        "net joint torques, N m": [],
    }
    for sample in export["samples"]:
        rate = flight.rotation(sample["orientation"]).inv().apply(sample["rate_rad_s"])
        *theirs, left_over = body.efforts(sample["t_s"], rate)
        assert left_over < 1e-6
        ours = sample["pelvis_acceleration_rad_s2"], sample["joint_torques_n_m"]
        for kept, mine, other in zip(found.values(), ours, theirs):
            kept.append((mine, other))
    check_efforts(checks, name, found, f"{SOURCE}, mj_inverse")
