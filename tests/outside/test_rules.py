"""The sport's published rule, and growth medians."""

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
