"""Runs the command, and compares the page's readouts with it."""

import functools
import json
import math
import os
import re
import subprocess
from pathlib import Path

from server import REPOSITORY

# The page's name for the visit in the browser's storage.
VISIT = "turns-aloft/session"

RPM = 60 / math.tau
DEG = 180 / math.pi

# Quantities, and the units shown per SI unit, in the units of a first visit.
NUMBERS = {
    "turns": 1,
    "air_turns": 1,
    "pre_rotation_turns": 1,
    "turns_owed": 1,
    "hang_time_s": 1,
    "jump_height_m": 100,
    "takeoff_rate_rad_s": RPM,
    "peak_rate_rad_s": RPM,
    "mean_rate_rad_s": RPM,
    "touchdown_rate_rad_s": RPM,
    "inertia_takeoff_kg_m2": 1,
    "inertia_least_kg_m2": 1,
    "energy_takeoff_j": 1,
    "closing_work_j": 1,
    "opening_work_j": 1,
    "energy_touchdown_j": 1,
    "hand_force_peak_n": 1,
    "joint_power_peak_w": 1,
    "tilt_peak_rad": DEG,
    "tilt_touchdown_rad": DEG,
}

CALLS = {
    None: "no call for this",
    "over-rotated": "over-rotated",
    "full": "full rotation",
    "q": "on the quarter (q)",
    "<": "under-rotated (<)",
    "<<": "downgraded (<<)",
}


@functools.cache
def command():
    """Builds the command; returns its path."""
    build = ["cargo", "build", "--quiet", "--locked", "--no-default-features", "--bin", "aloft"]
    subprocess.run(build, cwd=REPOSITORY, check=True)
    return Path(os.environ.get("CARGO_TARGET_DIR", REPOSITORY / "target")) / "debug" / "aloft"


def aloft(*arguments):
    """Runs the command; returns what it prints."""
    done = subprocess.run(
        [command(), *map(str, arguments)], capture_output=True, text=True, check=True
    )
    return done.stdout


def fly(scenario, *options):
    return json.loads(aloft("fly", scenario, *options))


def stored_scenario(page):
    """The present jump as a scenario file, from the browser's storage."""
    stored = page.run("return localStorage.getItem(arguments[0])", VISIT)
    return json.loads(stored)["scenario"]


def fly_stored(page, folder, *options):
    file = folder / "present.aloft.json"
    file.write_text(stored_scenario(page))
    return fly(file, *options)


def shown(text):
    """The number at the beginning of a text, and half a unit of its last digit."""
    digits = re.match(r"-?\d+(?:\.(\d+))?", text)
    assert digits, text
    return float(digits[0]), 0.5 * 10 ** -len(digits[1] or "")


def assert_equal(outputs, flown):
    """Every readout on the page equals the command's to the digits shown."""
    for quantity, scale in NUMBERS.items():
        number, half_digit = shown(outputs[quantity])
        expected = flown[quantity] * scale
        assert abs(number - expected) <= half_digit * (1 + 1e-9), (quantity, outputs[quantity], expected)

    size = math.hypot(*flown["angular_momentum_kg_m2_s"])
    assert abs(shown(outputs["angular_momentum_kg_m2_s"])[0] - size) <= 0.05 * (1 + 1e-9)
    stop = flown["landing_angular_momentum_kg_m2_s"]
    assert abs(shown(outputs["landing_angular_momentum_kg_m2_s"])[0] - stop) <= 0.05 * (1 + 1e-9)
    low, high = flown["landing_torque_n_m"]
    assert outputs["landing_torque_n_m"] == f"{low:.0f} to {high:.0f} N m"
    low, high = flown["landing_load_bw"]
    assert outputs["landing_load_bw"] == f"{low:.1f} to {high:.1f} body weights"
    assert ("beyond_seen" in outputs) == bool(flown["beyond_seen"])
    for respect in flown["beyond_seen"]:
        if respect["key"] == "peak_rate_rad_s":
            assert f"peak rate {respect['value'] * RPM:.0f} rpm" in outputs["beyond_seen"]
    assert outputs["call"] == CALLS[flown["call"]]
    short = flown["shortfall_deg"]
    direction = "short" if short >= 0 else "too far"
    number, half_digit = shown(outputs["shortfall_deg"])
    assert outputs["shortfall_deg"].endswith(direction)
    assert abs(number - abs(short)) <= half_digit * (1 + 1e-9)
