"""Bodies from outside, as rows that the mechanics can build a body from: `bodies/rows.json`.

    venv/bin/python tests/outside/ensemble.py     # writes it anew

Each is a table like de Leva's: masses in % of the body's, lengths in mm, CM in % of the length from
the upper end, radii of gyration in % of the length about the front-back, left-right and long axis.
`tests/ensemble.rs` flies them; `test_ensemble.py` checks that the file is what this gives.

The five measured bodies are yeadon's solids put together into our segments: pelvis s0 and s1, waist
s2, chest s3 and s4, head with neck s5 to s7 (the package's own joints), upper arm a0 and a1, forearm
a2 and a3, hand a4 to a6, thigh j0 to j2, shank j3 and j4, foot j5 to j8. A foot lies in line with
the shank there; ours reaches as far from the ankle to the toes, and its heel and its sole stand where
our feet have them.
"""

import contextlib
import copy
import io
import json
from pathlib import Path

import numpy as np
import yeadon

BODIES = Path(__file__).parent / "bodies"
FILE = BODIES / "rows.json"
MEASURED = ["female1", "male1", "male2", "male3", "male4"]
DENSITIES = copy.deepcopy(yeadon.Human.segmental_densities)
DIGITS = 6

# How far the heel lies behind the ankle joint, over the length of the foot, as in `segments.rs`.
HEEL_BEHIND_ANKLE = 0.26

QUARTER = 0.5 * np.pi


def human(name, densities="Dempster"):
    """One of yeadon's sample bodies, standing straight, arms down, feet pointed."""
    # Scaling one body to its measured mass changes the densities of the whole class, so each
    # starts from those the package comes with. It prints how it mends an outline.
    yeadon.Human.segmental_densities = copy.deepcopy(DENSITIES)
    with contextlib.redirect_stdout(io.StringIO()):
        return yeadon.Human(str(BODIES / f"{name}.yaml"), density_set=densities)


def stature_m(body):
    """Heel to crown: heel below the ankle, ankle to hip, hip to acromion, acromion to crown."""
    lengths = body.meas
    return lengths["Ls5L"] + lengths["Ls8L"] + lengths["Lj5L"] + lengths["Lj6L"]


def long_kg_m2(body, **angles):
    """The package's own moment of inertia about the long axis in a posture."""
    body.set_CFG_dict({name: angles.get(name, 0.0) for name in body.CFGnames})
    return body.inertia[2, 2]


def solids_of(body):
    trunk, arm, leg = body._s, body._a_solids, body._j_solids
    return {
        "lower_trunk": trunk[0:2],
        "middle_trunk": trunk[2:3],
        "upper_trunk": trunk[3:5],
        "head": trunk[5:8],
        "upper_arm": arm[0:2],
        "forearm": arm[2:4],
        "hand": arm[4:7],
        "thigh": leg[0:3],
        "shank": leg[3:5],
        "foot": leg[5:9],
    }


UPWARDS = ["lower_trunk", "middle_trunk", "upper_trunk", "head"]


def segment(solids, upwards):
    """Mass (kg), length (m), CM from the upper end (m) and the moments (kg m²) about front-back,
    left-right and long axis of solids that stand on top of each other (upwards) or hang."""
    length = sum(solid.height for solid in solids)
    mass = sum(solid.mass for solid in solids)
    at, centres = 0.0, []
    for solid in solids:
        # A solid's own centre counts from its lower end.
        own = solid.rel_center_of_mass[2, 0]
        centres.append(at + (own if upwards else solid.height - own))
        at += solid.height
    centre = sum(s.mass * c for s, c in zip(solids, centres)) / mass
    moments = np.zeros(3)
    for solid, c in zip(solids, centres):
        own = np.diag(solid.rel_inertia)  # left-right, front-back, long
        across = solid.mass * (c - centre) ** 2
        moments += [own[1] + across, own[0] + across, own[2]]
    return mass, length, (length - centre if upwards else centre), moments


def row(mass_percent, length, centre, radii):
    return {
        "length_mm": 1000 * length,
        "mass_percent": mass_percent,
        "cm_percent": 100 * centre / length,
        "radii_percent": [100 * radius / length for radius in radii],
    }


def measured(name, densities="Dempster"):
    body = human(name, densities)
    rows = {}
    for part, solids in solids_of(body).items():
        mass, length, centre, moments = segment(solids, part in UPWARDS)
        radii = np.sqrt(moments / mass)
        if part == "hand":
            # Its length ends at the knuckles, as in de Leva's table.
            length = body.meas["La6L"]
        if part == "foot":
            # From the heel; the measured length counts from the ankle.
            length /= 1 - HEEL_BEHIND_ANKLE
            centre += HEEL_BEHIND_ANKLE * length
        rows[part] = row(100 * mass / body.mass, length, centre, radii)
    stature = stature_m(body)
    postures = {
        "arms_down_kg_m2": long_kg_m2(body),
        "arms_out_kg_m2": long_kg_m2(body, CA1adduction=-QUARTER, CB1abduction=QUARTER),
    }
    pelvis = body._s[0].stads[0]
    return {
        "name": name,
        "source": "yeadon 2.0.1 (Dembia, Moore & Hubbard 2014, F1000Research 3:223)",
        "stature_mm": 1000 * stature,
        "body_mass_kg": body.mass,
        "shoulder_per_stature": 0.5 * body._s[3].stads[1].width / stature,
        "hip_per_stature": 0.5 * (pelvis.thickness + pelvis.radius) / stature,
        "shoulder_above_hip_mm": 1000 * body.meas["Ls4L"],
        **postures,
        "rows": rows,
    }


# Dumas R, Wojtusch J. Estimation of the body segment inertial parameters for the rigid body
# biomechanical models used in motion analysis. Handbook of Human Motion, Springer 2018, tables 1-10,
# after Dumas, Cheze & Verriest 2007, J Biomech 40:543-553; of 46 women and 31 men. Read in two public
# codes (masses and CMs figure by figure the same in both, radii in one). FROM MEMORY, not read: stature
# and mass of those people, and the lengths of abdomen, upper arm, thigh and (in part) pelvis. Length
# (mm), mass (%), CM (% from the upper end; of the head from the lower), radii (%) about the front-back,
# left-right and long axis.
DUMAS = {
    "female": {
        "head": (243, 6.7, 55.9, (30, 31, 24)),
        "upper_trunk": (322, 26.3, 54.2, (38, 34, 32)),
        "middle_trunk": (125, 4.1, 41.0, (65, 52, 78)),
        "lower_trunk": (103, 14.7, 22.8, (95, 82, 105)),
        "upper_arm": (243, 2.3, 50.0, (30, 30, 15)),
        "forearm": (247, 1.4, 41.1, (27, 25, 14)),
        "hand": (71, 0.5, 76.8, (64, 59, 43)),
        "thigh": (379, 14.6, 37.7, (31, 32, 19)),
        "shank": (388, 4.5, 40.4, (28, 28, 10)),
        "foot": (117, 1.0, 38.2, (50, 50, 24)),
    },
    "male": {
        "head": (278, 6.7, 53.4, (28, 30, 21)),
        "upper_trunk": (334, 30.4, 55.5, (42, 36, 33)),
        "middle_trunk": (151, 2.9, 36.1, (54, 40, 66)),
        "lower_trunk": (93, 14.2, 28.2, (102, 96, 106)),
        "upper_arm": (271, 2.4, 48.2, (29, 30, 13)),
        "forearm": (283, 1.7, 41.7, (28, 28, 11)),
        "hand": (80, 0.6, 83.9, (61, 56, 38)),
        "thigh": (432, 12.3, 42.9, (29, 30, 15)),
        "shank": (433, 4.8, 41.0, (28, 28, 10)),
        "foot": (139, 1.2, 50.2, (48, 49, 22)),
    },
}
PEOPLE = {"female": (1612, 63.9), "male": (1770, 80.5)}

# What that set lacks: the height of the shoulders over the hips and the length of the whole foot, as
# shares of stature, from de Leva's tables; half the breadth of shoulders and hips, as our bodies have it.
SHOULDER_ABOVE_HIP = {"female": 497.9 / 1735, "male": 515.5 / 1741}
FOOT = {"female": 228.3 / 1735, "male": 258.1 / 1741}
SHOULDER = 0.5 * 0.259 * 0.845
HIP = 0.5 * 0.191 * 0.72 * 0.71


def published(sex):
    """The CMs' offsets from the long axes and the products of inertia are left out: our rows have
    none."""
    stature_mm, body_mass_kg = PEOPLE[sex]
    rows = {}
    for part, (length_mm, mass, cm, radii) in DUMAS[sex].items():
        length = length_mm / 1000
        centre, radii = cm / 100 * length, [radius / 100 * length for radius in radii]
        if part == "head":
            centre = length - centre
        if part == "foot":
            # Measured from the ankle to the ball; ours goes from the heel to the toes.
            length = FOOT[sex] * stature_mm / 1000
            centre += HEEL_BEHIND_ANKLE * length
        rows[part] = row(mass, length, centre, radii)
    return {
        "name": f"published_{sex}",
        "source": "Dumas & Wojtusch 2018, Handbook of Human Motion, tables 1-10",
        "stature_mm": stature_mm,
        "body_mass_kg": body_mass_kg,
        "shoulder_per_stature": SHOULDER,
        "hip_per_stature": HIP,
        "shoulder_above_hip_mm": SHOULDER_ABOVE_HIP[sex] * stature_mm,
        "rows": rows,
    }


def rounded(value):
    """To so many digits as no result depends on the others."""
    match value:
        case dict():
            return {key: rounded(one) for key, one in value.items()}
        case list():
            return [rounded(one) for one in value]
        case str():
            return value
    return float(f"{value:.{DIGITS}g}")


def made():
    return [*map(measured, MEASURED), *map(published, DUMAS)]


if __name__ == "__main__":
    FILE.write_text(json.dumps([rounded(body) for body in made()], indent=1) + "\n")
