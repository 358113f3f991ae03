"""Which flights are computed again: all starting points, special cases, random scenarios."""

import random

# How many scenarios are drawn, and how many of them the slower, second engine flies too.
DRAWN = 200
DRAWN_FOR_SECOND = 40
SEED = 20_250_117

STARTS = [
    "half-a-turn-short",
    "child-single",
    "junior-double",
    "senior-triple",
    "four-turns",
    "five-turn-attempt",
    "floor-turn",
    "trampoline",
    "weighted-hands",
    "crooked-takeoff",
]

# Name: starting point and what is changed of it.
SPECIAL = {
    "leaning in as far as can be": ("crooked-takeoff", {"lean_rad": 0.35}),
    "leaning out as far as can be": ("crooked-takeoff", {"lean_rad": -0.35}),
    "one arm never comes in": ("senior-triple", {"arm_asymmetry": 1.0}),
    "one arm late and half out": ("four-turns", {"arm_asymmetry": 0.5, "arm_lag_s": 0.3}),
    "2.5 kg a hand, same rate": ("four-turns", {"hand_mass_kg": 2.5, "hands_keep": "rate"}),
    "2.5 kg a hand, same momentum": (
        "four-turns",
        {"hand_mass_kg": 2.5, "hands_keep": "angular_momentum"},
    ),
    "2.5 kg a hand, same energy": ("four-turns", {"hand_mass_kg": 2.5, "hands_keep": "energy"}),
    "heavy boots": ("junior-double", {"boot_mass_kg": 2.5}),
    "opening before closing is over": (
        "senior-triple",
        {"close_time_s": 0.5, "open_lead_s": 0.4, "open_time_s": 0.5},
    ),
    "opening from the first instant": (
        "child-single",
        {"jump_height_m": 0.1, "open_lead_s": 0.6, "open_time_s": 0.8, "close_time_s": 0.8},
    ),
    "legs barely tucked": ("half-a-turn-short", {"leg_tuck": 0.1, "takeoff_openness": 1.0}),
    "nothing tucked": ("half-a-turn-short", {"leg_tuck": 0.0, "arm_tuck": 0.0}),
    "abrupt": ("five-turn-attempt", {"close_time_s": 0.05, "open_time_s": 0.05}),
    "never opening": ("trampoline", {"open_lead_s": 0.0}),
    "fast, high and crooked": (
        "trampoline",
        {
            "takeoff_rate_rad_s": 25.0,
            "jump_height_m": 2.5,
            "lean_rad": 0.35,
            "arm_asymmetry": 0.6,
            "arm_lag_s": 0.3,
        },
    ),
}

# Name: starting point, what is changed of it, and the knots (time in s, arms, legs).
LED = {
    "led in, held, let out": ("senior-triple", {}, [(0.03, 1, 1), (0.46, 0, 0)]),
    "led in and out and in again": (
        "four-turns",
        {"turning": "clockwise"},
        [(0.0, 0.8, 1), (0.15, 0.2, 0.7), (0.25, 1, 1), (0.5, 0, 0)],
    ),
    "arms and legs led apart, one arm late, leaning": (
        "crooked-takeoff",
        {"arm_lag_s": 0.1, "arm_asymmetry": 0.3, "close_time_s": 0.12},
        [(0.05, 0, 1), (0.1, 0.6, 0.9), (0.13, 1, 0.5), (0.3, 0.1, 1), (0.42, 0.4, 0)],
    ),
    "never led, leaning": ("crooked-takeoff", {}, [(0, 0, 0)]),
}

NAMED = {
    **{name: (name, {}) for name in STARTS},
    **{f"{name}, clockwise": (name, {"turning": "clockwise"}) for name in STARTS},
    **SPECIAL,
    **{
        f"{name}, clockwise": (start, {**changes, "turning": "clockwise"})
        for name, (start, changes) in SPECIAL.items()
    },
}

WORDS = ["table", "ground", "turning", "hands_keep", "jump"]


def drawn(aloft):
    """Random admissible scenarios: every number uniform over the range that the command states, or
    in one of five cases at one of its ends; every word one of those that it states."""
    start = STARTS[0]
    ranges = aloft.ranges(start)
    words = {key: aloft.words(start, key) for key in WORDS}
    chance = random.Random(SEED)

    def number(low, high):
        return chance.choice([low, high]) if chance.random() < 0.2 else chance.uniform(low, high)

    return [
        {
            **{key: number(*ends) for key, ends in ranges.items()},
            **{key: chance.choice(values) for key, values in words.items()},
        }
        for _ in range(DRAWN)
    ]
