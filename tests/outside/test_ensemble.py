"""The bodies that the range of the turns rests on: that the rows kept for them are what their sources
give, whole bodies included. What they make of the turns stands in `tests/ensemble.rs`."""

import json

import pytest

import ensemble

TITLE = "3b. Bodies from outside, cut into our segments"

KEPT = {body["name"]: body for body in json.loads(ensemble.FILE.read_text())}

YEADON = "yeadon 2.0.1 with its own sample body {}; Dembia, Moore & Hubbard 2014, F1000Research 3:223"
DUMAS = "Dumas & Wojtusch 2018, tables 1-10, as transcribed in ensemble.py"

MIDLINE = {"lower_trunk", "middle_trunk", "upper_trunk", "head"}


def numbers(body):
    """Every number of a body by its name."""
    found = {key: value for key, value in body.items() if isinstance(value, int | float)}
    for part, row in body["rows"].items():
        for key, value in row.items():
            values = value if isinstance(value, list) else [value]
            for i, one in enumerate(values):
                found[f"{part} {key} {i}"] = one
    return found


def furthest(body, kept):
    """The number that is further from the kept one than any other, as a share: and both."""
    made, kept = numbers(body), numbers(kept)
    assert made.keys() == kept.keys()
    name = max(made, key=lambda name: abs(made[name] - kept[name]) / abs(kept[name]))
    return name, made[name], kept[name]


@pytest.mark.parametrize("name", ensemble.MEASURED)
def test_measured(checks, name):
    body = ensemble.measured(name)
    what, made, kept = furthest(body, KEPT[name])
    source = YEADON.format(name)
    checks.share(f"{name}, all kept rows; furthest: {what}", kept, made, 1e-5, source)

    human = ensemble.human(name)
    segments = KEPT[name]["rows"].items()
    total = sum(row["mass_percent"] * (1 if part in MIDLINE else 2) for part, row in segments)
    checks.near(f"{name}: masses of all segments, %", total, 100.0, 0.001, source)
    lengths = human.meas
    arm = lengths["La4L"]
    ours = sum(KEPT[name]["rows"][part]["length_mm"] for part in ["upper_arm", "forearm"])
    checks.share(f"{name}: shoulder to wrist, mm", ours, 1000 * arm, 1e-5, source)


# The package cannot fit other densities to the measured mass that the fifth body comes with.
@pytest.mark.parametrize("name", ensemble.MEASURED[:4])
def test_other_densities(checks, name):
    """How much of a body's ratio of inertia rests on whose densities its solids are given."""
    down, out = {}, {}
    for densities in ["Dempster", "Chandler", "Clauser"]:
        human = ensemble.human(name, densities)
        down[densities] = ensemble.long_kg_m2(human)
        arms_out = {"CA1adduction": -ensemble.QUARTER, "CB1abduction": ensemble.QUARTER}
        out[densities] = ensemble.long_kg_m2(human, **arms_out)
    for densities in ["Chandler", "Clauser"]:
        checks.share(
            f"{name}: ratio of inertia, arms out to down, with the densities of {densities}",
            out[densities] / down[densities],
            out["Dempster"] / down["Dempster"],
            0.05,
            f"{YEADON.format(name)}; tolerance: a third of the half-width that the range carries",
        )


@pytest.mark.parametrize("sex", ["female", "male"])
def test_published(checks, sex):
    body, kept = ensemble.published(sex), KEPT[f"published_{sex}"]
    what, made, stored = furthest(body, kept)
    checks.share(f"{sex}, all kept rows; furthest: {what}", stored, made, 1e-5, DUMAS)
    rows = kept["rows"]
    total = sum(row["mass_percent"] * (1 if part in MIDLINE else 2) for part, row in rows.items())
    checks.near(f"{sex}: masses as printed, %", total, 100.0, 0.5, f"{DUMAS}; rounded to 0.1 % there")
    parts = ["lower_trunk", "middle_trunk", "upper_trunk", "head", "thigh", "shank"]
    height = sum(rows[part]["length_mm"] for part in parts)
    checks.within(
        f"{sex}: crown to ankle over stature (lengths and stature in part from memory)",
        height / kept["stature_mm"],
        0.95,
        0.985,
        "ankle height 0.039 of stature, Drillis & Contini 1966; a bent spine is longer than upright",
    )
