"""Published observations of skating jumps: ranges and directions."""

import numpy as np

TITLE = "6. Published skating data"

KING_2004 = "King et al. 2004, Sports Biomech 3:109 (abstract)"
KING_1994 = "King, Arnold & Smith 1994, J Appl Biomech 10:51 (abstract)"
QUADRUPLE = "the first author of King et al. 2004 in the press (2003): 0.5 to 0.7 s, about 0.46 m"
OFF_ICE_AXEL = "ten women, off-ice double Axel, European College of Sport Science abstract 985"
YOUNG = "Myklebust & Kjellstadli, European College of Sport Science abstract 2536"

# The same jump with one turn more each, all landed.
LADDER = ["child-single", "junior-double", "senior-triple", "four-turns"]


def turns_per_s(rate_rad_s):
    return rate_rad_s / (2.0 * np.pi)


def test_turns_are_added_by_rate_not_by_time(aloft, checks):
    """Between starting points: the ratio of the rates is larger than that of the times."""
    flown = [aloft.fly(name) for name in LADDER]
    for name, fewer, more in zip(LADDER, flown, flown[1:]):
        rate = more["mean_rate_rad_s"] / fewer["mean_rate_rad_s"]
        time = more["hang_time_s"] / fewer["hang_time_s"]
        checks.more(f"one turn more than {name}: growth of the rate", rate, time, KING_1994)
    triple, quadruple = flown[2:]
    grown = quadruple["hang_time_s"] / triple["hang_time_s"]
    checks.within(
        "quadruple over triple, time in the air: slightly longer", grown, 1.0, 1.15, KING_2004
    )
    checks.more(
        "quadruple and triple, take-off speed: slightly higher",
        quadruple["touchdown_speed_m_s"],
        triple["touchdown_speed_m_s"],
        KING_2004,
    )


def test_rate_buys_more_than_height(aloft, checks):
    """For one jumper: a tenth more rate against a tenth more height."""
    for name in LADDER:
        scenario, turns = aloft.start(name), aloft.fly(name)["air_turns"]

        def gain(key):
            return aloft.fly(name, **{key: 1.1 * scenario[key]})["air_turns"] / turns

        checks.more(
            f"{name}: a tenth more rate against a tenth more height",
            gain("takeoff_rate_rad_s"),
            gain("jump_height_m"),
            f"{KING_1994}; half-pipe: doi 10.1177/17479541261439267 (abstract)",
        )


def test_quadruple(aloft, checks):
    scenario, flown = aloft.start("four-turns"), aloft.fly("four-turns")
    checks.within("quadruple: height, m", scenario["jump_height_m"], 0.40, 0.60, QUADRUPLE)
    checks.within("quadruple: time in the air, s", flown["hang_time_s"], 0.50, 0.75, QUADRUPLE)
    checks.within(
        "quadruple: mean rate in the air, rev/s (8.0 is four turns in 0.5 s)",
        turns_per_s(flown["mean_rate_rad_s"]),
        4.5,
        8.0,
        QUADRUPLE,
    )


def test_off_ice_axel(aloft, checks):
    """Successful 38.3, unsuccessful 32.2 cm: the same take-off, only lower, is short of turns."""
    low, high = (
        aloft.fly("floor-turn", jump="axel", stature_m=1.574, body_mass_kg=49.7, jump_height_m=h)
        for h in (0.322, 0.383)
    )
    checks.more("double Axel off the ice: turns", high["turns"], low["turns"], OFF_ICE_AXEL)
    for height_m, flown in ((0.322, low), (0.383, high)):
        checks.near(
            f"double Axel off the ice, {height_m} m: time, s",
            flown["hang_time_s"],
            np.sqrt(8.0 * height_m / 9.81),
            0.03,
            f"{OFF_ICE_AXEL}; time from height, legs bend",
            "s",
        )


def test_hips_close_no_faster_than_measured(aloft, checks):
    """Peak hip adduction at take-off of a double Axel 349 ± 45 deg/s; two deviations above it is
    the most that a landed starting point may ask of its hips."""
    for name in LADDER:
        for segment in aloft.export(name)["segments"]:
            if segment["name"].endswith("thigh"):
                way = np.degrees(np.linalg.norm(segment["closing"]["rotation_vector_rad"]))
                # The peak of a minimum-jerk blend is 15/8 of its mean.
                peak = 15.0 / 8.0 * way / segment["closing"]["time_s"]
                checks.within(f"{name}, {segment['name']}: peak, deg/s", peak, 0, 439, OFF_ICE_AXEL)


def test_young_skaters(aloft, checks):
    """Two-foot jumps of girls of 10 to 16 years: 29.1 ± 4.8 cm."""
    for name in ("half-a-turn-short", "child-single", "junior-double"):
        height_cm = 100.0 * aloft.start(name)["jump_height_m"]
        checks.near(
            f"{name}: height within two deviations, cm", height_cm, 29.1, 9.6, YOUNG, "cm"
        )


def test_momentum_does_not_depend_on_the_name(aloft, checks):
    source = "Yamaguchi & Sakurai 2025, Front Sports Act Living 7:1597598 (abstract)"
    size = {
        jump: np.linalg.norm(aloft.fly("junior-double", jump=jump)["angular_momentum_kg_m2_s"])
        for jump in ("toe_loop", "salchow", "loop", "flip", "lutz", "axel")
    }
    for jump, h in size.items():
        what = f"double {jump.replace('_', ' ')}: angular momentum, kg m²/s"
        checks.share(what, h, size["toe_loop"], 1e-12, f"about the same for all six: {source}")


def test_more_turns_more_turning_on_the_ice(aloft, checks):
    source = "Shi, Ozaki & Honda 2020, 13th ISEA conference (abstract)"
    before = [aloft.start(name)["pre_rotation_turns"] for name in LADDER]
    for name, fewer, more in zip(LADDER[1:], before, before[1:]):
        checks.more(f"{name}: turned on the ice, turns", more, fewer, source)


def test_longer_flights_land_harder(aloft, checks):
    source = "ski jumps, Bessone et al. 2019, Sensors 19:2011 (abstract): load grows with time"
    loads = [aloft.fly(name)["landing_load_bw"] for name in LADDER]
    for name, lighter, heavier in zip(LADDER[1:], loads, loads[1:]):
        checks.more(f"{name}: highest estimate, body weights", heavier[1], lighter[1], source)
