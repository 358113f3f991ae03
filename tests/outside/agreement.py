"""How a flight computed elsewhere is compared with ours."""

import numpy as np

import flight

TURNS = 1e-4
ORIENTATION_RAD = 1e-4
TOUCHDOWN_S = 1e-6
EFFORTS = 1e-6


def check_flight(checks, name, flown, export, readout, scenario, source):
    sign = export["turning"]
    turns = sign * flown.turned_rad(flown.touchdown_s) / (2.0 * np.pi)
    checks.near(f"{name}: air turns", readout["air_turns"], turns, TURNS, source)
    landed = export["samples"][-1]
    attitude = flown.orientation(flown.touchdown_s)
    apart = flight.angle_between(flight.rotation(landed["orientation"]), attitude)
    right = attitude.as_matrix()[1, 2]
    checks.apart(
        f"{name}: attitude at touch-down (sine of the hips' tilt)",
        flight.rotation(landed["orientation"]).as_matrix()[1, 2],
        right,
        apart,
        ORIENTATION_RAD,
        source,
        "rad",
    )
    checks.near(
        f"{name}: touch-down, s",
        export["touchdown_s"],
        flown.touchdown_s,
        TOUCHDOWN_S,
        source,
        "s",
    )
    if "opening" not in export["segments"][0]:
        return
    # The opening that was flown with is the one that is timed back from this touch-down.
    checks.near(
        f"{name}: beginning of the opening, s",
        export["segments"][0]["opening"]["start_s"],
        max(0.0, flown.touchdown_s - scenario["open_lead_s"]),
        TOUCHDOWN_S,
        "touch-down found there, less the lead of the scenario",
        "s",
    )


def check_efforts(checks, name, samples, source):
    """Of every sample ours and theirs: angular acceleration of the pelvis, torques of all joints and
    whatever else; the rows show the largest met, and the difference in parts of it."""
    for quantity, pairs in samples.items():
        mine, other = (np.array(values, dtype=float) for values in zip(*pairs))
        size = np.abs(other).max()
        apart = np.abs(mine - other).max() / (size or 1.0)
        checks.apart(
            f"{name}: {quantity}", np.abs(mine).max(), size, apart, EFFORTS, source, "of it"
        )


def check_start(checks, name, body, export, scenario, source):
    """The take-off is the one that the scenario asks for."""
    start = export["start"]
    wxyz = np.array(start["orientation"])
    turn = flight.rotation(wxyz)
    inertia, _, _ = body.held(0.0)
    h = np.array(start["angular_momentum_kg_m2_s"])
    rate = turn.apply(np.linalg.solve(inertia, turn.inv().apply(h)))
    bare = scenario["hand_mass_kg"] == 0.0
    if bare or scenario["hands_keep"] == "rate":
        checks.share(
            f"{name}: take-off rate about the vertical, rad/s",
            export["turning"] * rate[1],
            scenario["takeoff_rate_rad_s"],
            1e-9,
            f"the scenario, by the inertia of {source}",
        )
    long_axis = turn.apply(np.linalg.eigh(inertia)[1][:, 0])
    checks.near(
        f"{name}: lean, rad",
        np.arccos(min(1.0, abs(long_axis[1]))),
        abs(scenario["lean_rad"]),
        1e-6,
        f"the scenario, by the least principal axis of {source}",
        "rad",
    )
    place = np.array([0.0, start["cm_height_m"], 0.0]) - body.cm_m(0.0, np.zeros(3), wxyz)
    checks.near(
        f"{name}: lowest point at take-off, m",
        body.lowest_m(0.0, place, wxyz),
        0.0,
        1e-9,
        f"the ice, by the kinematics of {source}",
        "m",
    )
    speed = np.sqrt(2.0 * export["gravity_m_s2"] * scenario["jump_height_m"])
    checks.share(
        f"{name}: take-off speed, m/s",
        start["cm_velocity_m_s"][1],
        speed,
        1e-12,
        "sqrt(2 g h), g = 9.806 65 m/s²",
    )
