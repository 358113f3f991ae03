"""Uncertainty: the range on the page equals the command's, and follows the inputs."""

import json

import pytest

import touch
from command import VISIT, call_text, fly, fly_stored, shown
from page import wait_for_output
from test_jump import at_rest
from test_session import choose_start

FOLD = "fold:Uncertainty of the inputs"
INPUTS = ["jump_height", "takeoff_rate", "close_time", "inertia_ratio"]


def shortfall_text(degrees):
    return f"{abs(degrees):.0f}° {'short' if degrees >= 0 else 'too far'}"


def assert_range(outputs, ranged):
    """The readouts with a range equal the command's to the digits shown."""
    low, high = ranged["turns_low"], ranged["turns_high"]
    for text, end in zip(outputs["turns"].split(" to "), (low, high), strict=True):
        # Turns and missing degrees agree.
        assert abs(shown(text)[0] - end) <= 0.01
    for name in INPUTS:
        quantity = f"turns_change_with_{name}"
        assert outputs[quantity] == f"± {abs(ranged[quantity]):.2f} turns"
    least, most = (360 * (ranged["turns_owed"] - turns) for turns in (high, low))
    if least < 0 <= most:
        assert outputs["shortfall_deg"] == f"{shortfall_text(least)} to {shortfall_text(most)}"
    calls = ranged["calls_possible"]
    if len(calls) == 1:
        assert outputs["call"] == call_text(calls[0], most)
    else:
        assert outputs["call"] == f"may be {', '.join(calls[:-1])} or {calls[-1]}"


def ask(page):
    """Shows the range."""
    at_rest(page)
    touch.tap(page, *page.centre("uncertainty"))
    wait_for_output(page, "turns", lambda text: " to " in text)
    return page


def open_inputs(page):
    touch.tap(page, *page.centre(FOLD))
    page.wait_until("the half-widths", lambda: "half-width:jump_height_m" in page.rects())


@pytest.mark.window(1024, 768)
@pytest.mark.parametrize("start", ["half-a-turn-short", "child-single", "five-turn-attempt"])
def test_the_range_is_the_commands(page, start):
    at_rest(page)
    choose_start(page, start)
    owed = fly(start)["turns_owed"]
    wait_for_output(page, "turns_owed", lambda text: float(text) == owed)
    ask(page)
    assert_range(page.outputs(), fly(start, "--range"))


@pytest.mark.window(1024, 768)
def test_hiding_the_range_restores_the_page(page):
    at_rest(page)
    outputs, rects = page.outputs(), page.rects()
    ask(page)
    assert FOLD in page.rects()
    touch.tap(page, *page.centre("uncertainty"))
    wait_for_output(page, "turns", lambda text: text == outputs["turns"])
    assert (page.outputs(), page.rects()) == (outputs, rects)


@pytest.mark.window(1024, 768)
def test_the_range_follows_a_slider(page, tmp_path):
    before = ask(page).outputs()["turns"]
    x, y, width, height = page.rects()["slider:takeoff_rate_rad_s"]
    middle = y + 0.75 * height
    touch.touch_drag(page, x + 0.3 * width, middle, x + 0.5 * width, middle)
    wait_for_output(page, "turns", lambda text: text != before)
    assert_range(page.outputs(), fly_stored(page, tmp_path, "--range"))


@pytest.mark.window(1024, 768)
def test_a_wider_input_widens_the_range(page):
    usual = ask(page).outputs()
    assert_range(usual, fly("half-a-turn-short", "--range"))
    open_inputs(page)
    for _ in range(4):
        touch.tap(page, *page.centre("+:jump_height_m"))
    # The usual 2 cm, and four steps of 0.5 cm.
    wide = fly("half-a-turn-short", "--half-width", "jump_height_m=0.04")
    wait_for_output(page, "turns", lambda text: text != usual["turns"])
    page.wait_until("four steps", lambda: page.outputs()["turns"].startswith(f"{wide['turns_low']:.2f}"))
    assert_range(page.outputs(), wide)

    touch.tap(page, *page.centre("−:jump_height_m"))
    narrower = fly("half-a-turn-short", "--half-width", "jump_height_m=0.035")
    quantity = "turns_change_with_jump_height"
    wait_for_output(page, quantity, lambda text: f"{narrower[quantity]:.2f}" in text)
    assert_range(page.outputs(), narrower)


@pytest.mark.window(1024, 768)
def test_the_range_survives_a_reload(page):
    ask(page)
    open_inputs(page)
    touch.tap(page, *page.centre("+:jump_height_m"))
    own = fly("half-a-turn-short", "--half-width", "jump_height_m=0.025")
    quantity = "turns_change_with_jump_height"
    wait_for_output(page, quantity, lambda text: f"{own[quantity]:.2f}" in text)
    before = page.outputs()

    page.open().wait_ready()
    at_rest(page)

    assert page.outputs() == before
    assert_range(before, own)


def test_a_visit_stored_before_there_was_a_range_opens(page):
    at_rest(page)
    outputs = page.outputs()
    kept = json.loads(page.run("return localStorage.getItem(arguments[0])", VISIT))
    del kept["how_sure"]
    page.run("localStorage.setItem(arguments[0], arguments[1])", VISIT, json.dumps(kept))
    page.open().wait_ready()
    at_rest(page)
    assert page.notice() == ""
    assert page.outputs() == outputs
