"""A jump is flown slowly by hand on the page: by touch, by keyboard, and what becomes of it."""

import pytest
from selenium.webdriver import Keys

import touch
from page import wait_for_output
from sight import reveal
from test_compare import frames_asked_for
from test_jump import at_rest
from test_keyboard import focused, named, press, tab_to

# The slowest pace: there is time for everything, however slowly the machine draws.
SLOWEST = "Speed 1/16"


def begin(page):
    at_rest(page)
    touch.tap(page, *page.centre("starts"))
    page.wait_until("the menu", lambda: "slow flight" in page.rects())
    touch.tap(page, *page.centre("slow flight"))
    page.wait_until("the pad", lambda: "pad" in page.rects())
    # A finger on the pad doesn't scroll, and on a phone there is little beside it.
    tab_to(page, SLOWEST)
    press(page, Keys.SPACE)


def turns(page):
    return float(wait_for_output(page, "slow:turns", lambda text: text != ""))


def fly(page, hold):
    """Takes off, lets `hold` hold the jump in, and returns the turns at the landing."""
    tab_to(page, "Leave the ground")
    press(page, Keys.SPACE)
    page.wait_until("the flight", lambda: "stop" in page.rects())
    hold()
    page.wait_until("the landing", lambda: "take this jump" in page.rects())
    return turns(page)


def is_in(percent):
    """Whether arms and legs are as far in as that, by the readout of how far in they are."""
    return lambda page: int(page.outputs().get("slow:in_now", "0").split()[0]) >= percent


def holding(page, place):
    """A finger that holds all in at a place, until all is in, and a moment longer."""

    def hold():
        with touch.held(page, place, place):
            page.wait_until("all in", lambda: is_in(95)(page))
            page.next_frames(20)

    return hold


@pytest.mark.window(1024, 768)
def test_a_finger_flies_it_and_the_jump_is_taken_and_undone(page):
    begin(page)
    alone = fly(page, lambda: None)
    touch.tap(page, *reveal(page, "again"))
    page.wait_until("before the take-off", lambda: "take off" in page.rects())
    x, y, width, height = page.rects()["pad"]
    flown = fly(page, holding(page, (x + width / 2, y + height / 2)))
    assert flown > alone + 0.1, (flown, alone)

    touch.tap(page, *reveal(page, "take this jump"))
    shown = wait_for_output(page, "turns", lambda text: text != "")
    assert float(shown) == flown
    touch.tap(page, *page.centre("undo"))
    planned = wait_for_output(page, "turns", lambda text: text != shown)
    assert float(planned) != flown


@pytest.mark.window(390, 844)
def test_a_finger_on_the_picture_flies_it_on_a_phone(page):
    begin(page)
    alone = fly(page, lambda: None)
    touch.tap(page, *reveal(page, "again"))
    page.wait_until("before the take-off", lambda: "take off" in page.rects())
    # Left of the views, in the middle of the picture.
    flown = fly(page, holding(page, (195, 200)))
    assert flown > alone + 0.1, (flown, alone)


@pytest.mark.window(1024, 768)
def test_by_keyboard_it_is_flown_and_landed(page):
    at_rest(page)
    tab_to(page, "Fly it by hand")
    press(page, Keys.SPACE)
    page.wait_until("the pad", lambda: named(page, "How far in"))
    tab_to(page, "Leave the ground")
    press(page, Keys.SPACE)
    # The focus goes on to the pad: who leads by keys needs no other.
    page.wait_until("the pad in focus", lambda: focused(page) == "How far in")
    press(page, Keys.END)
    page.wait_until("nearly all in", lambda: is_in(50)(page))
    press(page, Keys.HOME)
    page.wait_until("the landing", lambda: named(page, "Take this jump"))
    flown = turns(page)
    tab_to(page, "Take this jump")
    press(page, Keys.SPACE)
    shown = wait_for_output(page, "turns", lambda text: text != "")
    assert float(shown) == flown


@pytest.mark.window(1024, 768)
def test_nothing_is_drawn_before_the_take_off_and_after_the_landing(page):
    """With reduced motion, as every page of the tests."""
    page.run(
        """
        window.drawn = 0;
        window.nextFrame = window.requestAnimationFrame.bind(window);
        window.requestAnimationFrame = (draw) => { window.drawn += 1; return nextFrame(draw); };
        """
    )
    begin(page)
    page.wait_until("a rest before the take-off", lambda: frames_asked_for(page) == 0)
    tab_to(page, "Leave the ground")
    press(page, Keys.SPACE)
    page.wait_until("a flight", lambda: frames_asked_for(page) > 0)
    page.wait_until("the landing", lambda: "take this jump" in page.rects())
    page.wait_until("a rest after the landing", lambda: frames_asked_for(page) == 0)
