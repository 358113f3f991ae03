"""Goal: the proposals equal the command's, and are tried and undone by touch."""

import json
import re

import pytest

import sight
import touch
from questions import ask
from command import RPM, aloft, assert_equal, fly, fly_stored, stored_scenario
from page import wait_for_output

START = "half-a-turn-short"

# Units shown per SI unit, on a first visit.
SCALES = {
    "jump_height_m": 100,
    "takeoff_rate_rad_s": RPM,
    "arm_tuck": 100,
    "leg_tuck": 100,
    "close_delay_s": 1,
    "close_time_s": 1,
    "open_lead_s": 1,
}

VERDICTS = {
    "within_reach": "this jumper can reach it",
    "within_measured": "seen in people",
    "at_edge": "at the limit of what was measured in people",
    "not_known": "not known for a jumper of this size",
    "beyond_measured": "more than ever seen in people",
    "cannot_alone": "not enough alone",
}


def reach(*options):
    return json.loads(aloft("reach", START, *options))


def assert_answers(outputs, answer):
    """Value and verdict of each lever equal the command's, to the digits shown."""
    for lever in answer["levers"]:
        text = outputs[f"goal:{lever['key']}"]
        assert VERDICTS[lever["verdict"]] in text, (lever, text)
        number, half_digit = re.search(r"-?\d+(?:\.(\d+))?", text), 0
        if lever["proposal"]:
            shown, expected = float(number[0]), lever["proposal"]["value"] * SCALES[lever["key"]]
            half_digit = 0.5 * 10 ** -len(number[1] or "")
        else:
            shown, expected = float(re.search(r"(\d+\.\d+) turns at most", text)[1]), lever["proof"]["most_turns"]
            half_digit = 0.005
        assert abs(shown - expected) <= half_digit * (1 + 1e-9), (lever, text)


def assert_weights(outputs, answer):
    """The weights needed under every assumption, and the cautions, equal the command's."""
    weights = answer["weights"]
    for needed in weights["outcomes"]:
        text = outputs[f"weights:{needed['hands_keep']}"]
        if needed["proof"]:
            assert text.startswith(f"not enough: {needed['proof']['most_turns']:.2f} turns at most"), text
        else:
            assert text == f"{needed['hand_mass_kg']:.2f} kg in each hand"
    for known in [weights["observed"], *weights["cautions"]]:
        assert known in outputs["caution:weights"]


def in_sight(page, name):
    """Scrolls the column until the named target is visible; returns its centre."""
    return sight.reveal(page, name, top=300, at_x=page.rects()["question:Goal"][0] + 40)


@pytest.mark.window(1024, 768)
def test_the_answers_are_the_commands(page):
    ask(page, "Goal")
    assert_answers(page.outputs(), reach())
    assert_weights(page.outputs(), reach())
    assert "apply:hand_mass_kg" not in page.rects()
    assert page.output("goal:target") == "2.000"


@pytest.mark.window(1024, 768)
def test_the_goal_is_changed(page):
    ask(page, "Goal")
    touch.tap(page, *page.centre("Not called"))
    wait_for_output(page, "goal:target", lambda text: text == f"{2 - 75 / 360 + 0.001:.3f}")
    page.wait_until("arms that can", lambda: "not enough" not in page.output("goal:arm_tuck"))
    assert_answers(page.outputs(), reach("--turns", 2 - 75 / 360 + 0.001))
    touch.tap(page, *page.centre("+:target"))
    wait_for_output(page, "goal:target", lambda text: text == "2.000")


@pytest.mark.window(1024, 768)
def test_a_proposal_is_tried_and_undone(page, tmp_path):
    before = page.outputs()
    scenario = stored_scenario(page)
    ask(page, "Goal")
    touch.tap(page, *in_sight(page, "apply:takeoff_rate_rad_s"))
    wait_for_output(page, "turns", lambda text: text == "2.00")
    flown = fly_stored(page, tmp_path)
    assert abs(flown["turns"] - 2) < 1e-3
    assert_equal(page.outputs(), flown)

    touch.tap(page, *in_sight(page, "go back"))
    wait_for_output(page, "turns", lambda text: text == before["turns"])
    page.wait_until("kept as before", lambda: stored_scenario(page) == scenario)
    assert_equal(page.outputs(), fly(START))


@pytest.mark.window(1024, 768)
def test_a_joint_change_is_tried(page, tmp_path):
    ask(page, "Goal")
    touch.tap(page, *in_sight(page, "apply:joint"))
    wait_for_output(page, "turns", lambda text: text == "2.00")
    assert abs(fly_stored(page, tmp_path)["turns"] - 2) < 1e-3


@pytest.mark.window(1024, 768)
def test_own_limits_decide_the_verdict_and_survive_a_reload(page):
    ask(page, "Goal")
    # No rates of girls of this size have been measured.
    assert VERDICTS["not_known"] in page.output("goal:takeoff_rate_rad_s")
    touch.tap(page, *in_sight(page, "fold:This jumper's limits"))
    page.wait_until("the limits", lambda: "limits:takeoff_rate_rad_s" in page.rects())
    touch.tap(page, *in_sight(page, "limits:takeoff_rate_rad_s"))
    page.wait_until("both ends", lambda: "+:most:takeoff_rate_rad_s" in page.rects())
    # Raises the limit until it is sufficient.
    for _ in range(20):
        touch.tap(page, *in_sight(page, "+:most:takeoff_rate_rad_s"))
        page.wait_until("answered", lambda: "goal:combination" in page.outputs())
        if VERDICTS["within_reach"] in page.output("goal:takeoff_rate_rad_s"):
            break
    wait_for_output(page, "goal:takeoff_rate_rad_s", lambda text: VERDICTS["within_reach"] in text)
    before = page.outputs()
    page.open().wait_ready()
    wait_for_output(page, "goal:combination", lambda text: text)
    assert page.outputs() == before
