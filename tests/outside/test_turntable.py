"""The turntable against MuJoCo: people on a hinge who move arms, legs and trunk at random, with friction."""

import numpy as np
import pytest

from mujoco_turntable import MujocoTurntable

TITLE = "7. Turntables computed again with MuJoCo"
SOURCE = "MuJoCo (Todorov et al. 2012), mj_inverse, hinge"

STANDS = ["platform", "platform_sitting", "chair", "ice"]
STEP_S = 0.005
SAMPLE_S = 0.05


def drawn(number):
    """A person on a stand, and a programme: positions at uneven times, some of them held."""
    random = np.random.default_rng(number)
    stand = STANDS[number % len(STANDS)]
    stature = random.uniform(1.4, 1.95)
    settings = {
        "stand": stand,
        "table": random.choice(["female", "male"]),
        "stature_m": stature,
        "body_mass_kg": random.uniform(11.5, 15.0) * stature**3,
        "hand_mass_kg": random.uniform(0.0, 4.0),
        "hips_forward_m": random.uniform(-0.15, 0.15),
        "bearing_inertia_kg_m2": 0.0 if stand == "ice" else random.uniform(0.02, 1.0),
        "friction_torque_n_m": random.uniform(0.0, 0.5),
        "friction_viscous_n_m_s": random.uniform(0.0, 0.05),
        "rate_rad_s": random.choice([-1.0, 1.0]) * random.uniform(3.0, 7.0),
    }
    rows, time = [], 0.0
    for _ in range(7):
        legs = 0.0 if stand == "platform" else random.uniform(0.0, 1.0)
        hands = random.uniform(0.2, 0.40) * stature
        rows.append((time, hands, legs, random.uniform(-0.5, 0.5)))
        # At first held, since a spline does not know that it begins from rest.
        if len(rows) == 1 or random.random() < 0.3:
            time = round(time + random.uniform(0.1, 0.4), 2)
            rows.append((time, *rows[-1][1:]))
        time = round(time + random.uniform(0.7, 1.0), 2)
    lines = [",".join(map(str, row)) for row in rows]
    return settings, "\n".join(["time_s,hand_distance_m,legs,twist_rad", *lines]) + "\n"


@pytest.mark.parametrize("number", range(20))
def test_drawn(aloft, checks, tmp_path, number):
    settings, programme = drawn(number)
    path = tmp_path / "programme.csv"
    path.write_text(programme)
    export = aloft.turntable_export(path, step=SAMPLE_S, **settings)
    samples = export["samples"]
    name = f"random programme {number + 1}, {settings['stand']}"
    turntable = MujocoTurntable(export)
    # The last sample is at the end, wherever that is.
    samples = samples[:-1]
    every = round(SAMPLE_S / STEP_S)
    times = samples[0]["t_s"] + STEP_S * np.arange(every * (len(samples) - 1) + 1)
    states, joints = turntable.run(times)
    assert abs(states[:, 1]).min() > 0.1, "it comes to rest: no matter of this test"
    found = {key: [] for key in ("rate_rad_s", "turned_rad", "work_j", "momentum", "inertia")}
    for sample, state, at in zip(samples, states[::every], joints[::every]):
        momentum, inertia = turntable.momentum(state, at)
        found["turned_rad"].append((sample["turned_rad"], state[0]))
        found["rate_rad_s"].append((sample["rate_rad_s"], state[1]))
        found["work_j"].append((sample["work_j"], state[2]))
        found["momentum"].append((sample["momentum_kg_m2_s"], momentum))
        found["inertia"].append((sample["inertia_kg_m2"], inertia))
    what = {
        "rate_rad_s": ("rate, rad/s", 1e-4),
        "turned_rad": ("angle turned, rad", 1e-6),
        "work_j": ("work of the muscles, J", 1e-4),
        "momentum": ("angular momentum, kg m²/s", 1e-6),
        "inertia": ("moment of inertia, kg m²", 1e-9),
    }
    for key, (said, limit) in what.items():
        ours, theirs = np.array(found[key]).T
        worst = np.abs(ours - theirs).argmax()
        apart = abs(ours - theirs)[worst]
        checks.apart(f"{name}: {said}", ours[worst], theirs[worst], apart, limit, SOURCE)
    # It has been busy: the rate has changed by far more than what friction takes.
    rates = np.abs(np.array(found["rate_rad_s"])[:, 0])
    checks.more(f"{name}: highest rate over lowest", rates.max() / rates.min(), 1.2, "no idle programme")
