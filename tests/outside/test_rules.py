"""The sport's published rule, and growth medians."""

import numpy as np
import pytest

import cases

TITLE = "5. Rules of the sport, and children's measures"

CALLS = (
    "ISU Communications 2324 (2020) and 2334 (2020/21), from the Technical Panel Handbook, Single "
    "Skating (2nd hand)"
)
TURNS = "descriptions of the six jumps (2nd hand); letters: ISU Communication 2168 (2018/19)"

# A jump that leaves room on both sides; what it has turned on the ice is set so as to hit a limit.
SHORT = {"jump": "toe_loop", "jump_turns": 2}
HAIR_DEG = 1e-7
# Fast enough for half a turn to a whole one too far, some of it turned on the ice.
RATE = 20.0


def called(aloft, missing_deg):
    """The call when this much is missing."""
    air = aloft.fly("half-a-turn-short", **SHORT, pre_rotation_turns=0.5)["air_turns"]
    ice = SHORT["jump_turns"] - air - missing_deg / 360.0
    return aloft.fly("half-a-turn-short", **SHORT, pre_rotation_turns=ice)


@pytest.mark.parametrize(
    ("missing_deg", "call", "fact"),
    [
        (0.0, "full", "nothing missing"),
        (60.0, "full", "a sixth of a turn, less than our own band for q"),
        (90.0 - HAIR_DEG, "q", "a quarter missing: q"),
        (90.0 + HAIR_DEG, "<", "more than a quarter: <"),
        (135.0, "<", "between a quarter and a half: <"),
        (180.0 - HAIR_DEG, "<", "less than a half: <"),
        (180.0 + HAIR_DEG, "<<", "a half or more: <<"),
        (200.0, "<<", "a half or more: <<"),
    ],
)
def test_the_call(aloft, checks, missing_deg, call, fact):
    readout = called(aloft, missing_deg)
    checks.near(
        f"{fact}: missing, degrees",
        readout["shortfall_deg"],
        missing_deg,
        HAIR_DEG / 10.0,
        "turns owed less turns flown and turned on the ice",
    )
    checks.same(f"{fact}: called", readout["call"], call, CALLS)


def backwards(aloft, readout, changes):
    """Angle between where the hips point at touch-down and straight backwards, positive turned
    further, degrees: from the attitude that the command exports."""
    w, x, y, z = aloft.export("half-a-turn-short", **changes)["samples"][-1]["orientation"]
    # The hips' right-left axis is their own Z; facing X it points along the world's Z.
    heading = np.degrees(np.arctan2(2 * (x * z + w * y), 1 - 2 * (x * x + y * y)))
    sign = 1 if readout["turning"] == "anticlockwise" else -1
    return (sign * (heading - 180.0)) % 360.0


@pytest.mark.parametrize(
    ("turns", "call", "over_deg"),
    [
        (2.25 - HAIR_DEG / 360.0, "full", None),
        (2.25 + HAIR_DEG / 360.0, "over-rotated", 90.0 + HAIR_DEG),
        (2.5, "over-rotated", 180.0),
        (3.01, "over-rotated", 363.6),
    ],
)
def test_too_far(aloft, checks, turns, call, over_deg):
    """A double that turned too far by more than a quarter turn is not called full."""
    air = aloft.fly("half-a-turn-short", **SHORT, pre_rotation_turns=0.5, takeoff_rate_rad_s=RATE)
    changes = {
        **SHORT,
        "takeoff_rate_rad_s": RATE,
        "pre_rotation_turns": turns - air["air_turns"],
    }
    readout = aloft.fly("half-a-turn-short", **changes)
    fact = f"{turns:.2f} turns of 2"
    source = "common practice, no source: the rule has no call for it"
    checks.same(f"{fact}: called", readout["call"], call, source)
    if over_deg is None:
        checks.same(f"{fact}: over-rotated", readout["over_rotated_deg"], None, source)
    else:
        checks.near(
            f"{fact}: over-rotated by, degrees",
            readout["over_rotated_deg"],
            over_deg,
            HAIR_DEG / 10.0,
            "turns flown and turned on the ice less turns owed",
        )
    checks.near(
        f"{fact}: landing faces, degrees past backwards",
        readout["landing_facing_deg"] % 360.0,
        backwards(aloft, readout, changes),
        1e-6,
        "the exported attitude at touch-down; all jumps of the sport land backwards",
    )


@pytest.mark.parametrize(
    ("jump", "letters", "extra"),
    [
        ("toe_loop", "T", 0.0),
        ("salchow", "S", 0.0),
        ("loop", "Lo", 0.0),
        ("flip", "F", 0.0),
        ("lutz", "Lz", 0.0),
        ("axel", "A", 0.5),
    ],
)
def test_turns_owed(aloft, checks, jump, letters, extra):
    for turns in range(1, 6):
        readout = aloft.fly("senior-triple", jump=jump, jump_turns=turns)
        checks.same(f"{turns}{letters}: as written", readout["jump"], f"{turns}{letters}", TURNS)
        checks.same(f"{turns}{letters}: turns owed", readout["turns_owed"], turns + extra, TURNS)


# CDC growth charts 2000, girls' medians at the exact age: cm, kg.
GIRLS = {
    "ten-year-old": (137.99, 32.89),
    "twelve-year-old": (151.19, 41.65),
    "fourteen-year-old": (160.39, 49.36),
}


def test_childrens_measures(aloft, checks):
    source = "CDC growth charts 2000 (Kuczmarski et al. 2002), girls, median at the exact age"
    for name in cases.STARTS:
        scenario = aloft.start(name)
        age = next((age for age in GIRLS if age in scenario["note"]), None)
        if age is None:
            continue
        stature_cm, mass_kg = GIRLS[age]
        who = f"{name}, {age}: "
        checks.near(who + "stature, cm", 100 * scenario["stature_m"], stature_cm, 0.1, source, "cm")
        checks.near(who + "mass, kg", scenario["body_mass_kg"], mass_kg, 0.1, source, "kg")
    assert len(checks.rows) >= 4, "at least two starting points are children"
