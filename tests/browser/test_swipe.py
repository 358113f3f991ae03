"""Swipes on the panel by real touches: upright ones scroll and change nothing, level ones set sliders."""

import random

import pytest

import touch
from page import wait_for_output
from test_jump import at_rest
from test_keyboard import control

REFERENCE = "slider:takeoff_rate_rad_s"
# Touch target and accessible name.
SLIDERS = {
    "slider:takeoff_rate_rad_s": "Take-off rate",
    "slider:arm_tuck": "Arm tuck",
    "slider:leg_tuck": "Leg tuck",
    "slider:jump_height_m": "Jump height",
}


def panel(page):
    """The part of the page below the questions: its left, top, right and bottom."""
    x, y, _, height = page.rects()["question:Jump"]
    last_x, _, width, _ = page.rects()["question:Compare"]
    return x, y + height + 8, last_x + width, page.run("return innerHeight") - 4


@pytest.mark.window(390, 844)
def test_upright_swipes_scroll_and_change_nothing(page):
    at_rest(page)
    before = page.outputs()
    chance = random.Random(44)
    left, top, right, bottom = panel(page)
    for swipe in range(16):
        was = page.still_rects()[REFERENCE][1]
        # Up first: the page opens at its top.
        down = -1 if swipe % 2 == 0 else 1
        far = chance.uniform(60, 140)
        x = chance.uniform(left + 1, right - 1)
        y = chance.uniform(top, bottom)
        touch.touch_drag(page, x, y, x + chance.uniform(-0.8, 0.8) * far, y + down * far)
        now = page.still_rects()[REFERENCE][1]
        assert down * (now - was) > 0.4 * far, (swipe, x, y, was, now)
    wait_for_output(page, "phase", lambda text: text == before["phase"])
    assert page.outputs() == before


@pytest.mark.window(390, 844)
def test_level_swipes_set_the_sliders(page):
    at_rest(page)
    chance = random.Random(45)
    for swipe in range(12):
        name = chance.choice(list(SLIDERS))
        _, top, _, bottom = panel(page)
        # Scrolls until all of its row is in sight.
        for _ in range(30):
            x, y, width, height = page.still_rects()[name]
            if top <= y and y + height <= bottom:
                break
            step = min(120, max(-120, (top + bottom - height) / 2 - y))
            touch.touch_drag(page, 200, (top + bottom) / 2, 200, (top + bottom) / 2 + step)
        x, y, width, height = page.still_rects()[name]
        before = control(page, SLIDERS[name])["text"]
        # To one half or the other by turns, and never to the same place twice.
        ends = (0.55, 0.65) if swipe % 2 == 0 else (0.25, 0.45)
        start, end = 0.9 - 0.7 * (swipe % 2 == 0), chance.uniform(*ends)
        row = y + chance.uniform(2, height - 2)
        slant = chance.uniform(-60, 60)
        touch.touch_drag(page, x + start * width, row, x + end * width, row + slant)
        page.wait_until(
            f"{name} set", lambda: control(page, SLIDERS[name])["text"] != before
        )
        assert abs(page.still_rects()[name][1] - y) <= 1, "stays where it is"
