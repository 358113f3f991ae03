"""Why: the budget of turns and the steps equal the command's; changes are tried and undone."""

import json
import re

import pytest

import questions
import sight
import touch
from command import aloft, stored_scenario, turns_and_gain
from page import wait_for_output
from test_jump import at_rest
from test_session import choose_start

LOST = ["closing", "tightness", "opening", "tilt"]


def ask(page):
    at_rest(page)
    questions.ask(page, "Why")
    return page


def turns(text):
    """The number at the beginning of a text, in hundredths of a turn as shown."""
    digits = re.match(r"[-+−]?\d+\.\d\d", text)
    assert digits, text
    return int(digits[0].replace("−", "-").replace(".", ""))


def assert_budget(outputs, scenario):
    """The parts as shown add up, and equal the command's."""
    budget = json.loads(aloft("budget", scenario))
    assert outputs["sentence"] == budget["sentence"]
    lost = {cause: turns(outputs[f"lost_by_{cause}_turns"]) for cause in LOST}
    parts = turns(outputs["ideal_turns"]) - sum(lost.values()) + turns(outputs["pre_rotation_turns"])
    assert parts == turns(outputs["turns"])
    for cause, shown in lost.items():
        # Rounding of 0.5; for losses that are not named another 1, so that the sum is exact.
        most = 0.5 if cause == budget["largest_loss"] else 1.5
        assert abs(shown - 100 * budget[f"lost_by_{cause}_turns"]) <= most + 1e-6, cause
    assert abs(turns(outputs["ideal_turns"]) - 100 * budget["ideal_turns"]) < 2.5


def gain_text(step):
    gained = step["turns_gained"]
    if step["flown"] == "unavailable":
        return "not possible"
    if step["flown"] == "back":
        return f"back {'gives' if gained < 0 else 'takes'} {abs(gained):.3f}"
    size = f"{abs(gained):.3f}"
    sign = "" if size == "0.000" else "−" if gained < 0 else "+"
    return f"{sign}{size} turns"


def assert_steps(outputs, scenario):
    """The gain of each step equals the command's."""
    steps = json.loads(aloft("steps", scenario))["steps"]
    assert len(steps) == 7
    for step in steps:
        gained, *beyond = outputs[f"gain:{step['key']}"].split(". ")
        assert gained == gain_text(step), step["key"]
        assert bool(beyond) == bool(step["beyond_seen"]), step["key"]
    low, high = json.loads(aloft("steps", scenario))["landing_load_bw"]
    assert f"{low:.1f} to {high:.1f} now" in outputs["caution:steps"]
    for caution in {caution for step in steps for caution in step["cautions"]}:
        assert outputs["caution:steps"].count(caution) == 1


def assert_weights(outputs, scenario):
    """The results of slightly heavier weights equal the command's under each assumption."""
    weights = json.loads(aloft("steps", scenario))["weights"]
    for outcome in weights["outcomes"]:
        before = outcome["turns"] - outcome["turns_gained"]
        text = "{} turns ({})".format(*turns_and_gain(before, outcome["turns"]))
        assert outputs[f"weights:{outcome['hands_keep']}"] == text
    for known in [weights["observed"], *weights["cautions"]]:
        assert known in outputs["caution:weights"]


def assert_answers(page, scenario):
    outputs = page.outputs()
    assert_budget(outputs, scenario)
    assert_steps(outputs, scenario)
    assert_weights(outputs, scenario)


def kept_file(page, folder):
    file = folder / "kept.aloft.json"
    file.write_text(stored_scenario(page))
    return file


def reveal(page, name):
    """Scrolls the column under the questions until the target is visible; returns its centre."""
    left, below, _, height = page.rects()["question:Why"]
    return sight.reveal(page, name, top=below + height, at_x=left + 30)


@pytest.mark.window(1024, 768)
@pytest.mark.parametrize("start", ["half-a-turn-short", "five-turn-attempt", "crooked-takeoff"])
def test_the_answer_is_the_commands(page, tmp_path, start):
    at_rest(page)
    choose_start(page, start)
    page.wait_until("the jump kept", lambda: json.loads(stored_scenario(page)) == json.loads(aloft("starts", start)))
    ask(page)
    assert_answers(page, kept_file(page, tmp_path))


# At this size the sliders are beside the answer.
@pytest.mark.window(768, 1024)
def test_the_answer_follows_a_slider(page, tmp_path):
    before = ask(page).outputs()
    x, y, width, height = page.rects()["slider:arm_tuck"]
    middle = y + 0.75 * height
    touch.touch_drag(page, x + 0.6 * width, middle, x + 0.8 * width, middle)
    wait_for_output(page, "sentence", lambda text: text != before["sentence"])
    assert_answers(page, kept_file(page, tmp_path))


@pytest.mark.parametrize("size", [(390, 844)], ids=str)
def test_the_change_is_tried_and_undone(new_page, tmp_path, size):
    page = ask(new_page(size=size).open().wait_ready())
    outputs, kept = page.outputs(), stored_scenario(page)
    assert "go back" not in page.rects()
    change = json.loads(aloft("budget", "half-a-turn-short"))["one_change"]

    touch.tap(page, *reveal(page, "try it"))
    wait_for_output(page, "sentence", lambda text: text != outputs["sentence"])
    page.wait_until("the try kept", lambda: stored_scenario(page) != kept)
    expected = json.loads(kept)
    expected["scenario"][change["key"]] = change["to"]
    # What is noted of a starting point is not true of a changed one.
    expected["scenario"]["note"] = ""
    assert json.loads(stored_scenario(page)) == expected
    assert_answers(page, kept_file(page, tmp_path))

    touch.tap(page, *reveal(page, "go back"))
    wait_for_output(page, "sentence", lambda text: text == outputs["sentence"])
    assert page.outputs() == outputs
    page.wait_until("kept as before", lambda: stored_scenario(page) == kept)
    page.wait_until("nothing more to go back to", lambda: "go back" not in page.rects())
