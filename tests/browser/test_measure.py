"""A real attempt is measured on the page: in the invented film that comes with it, by touch; marks survive a
reload; what is no film is said.

What is true of the film is in tests/films/attempt.json: `tests/films/attempt.rs` made both.
"""

import json
import re
from pathlib import Path

import pytest

import sight
import touch
from files import set_file, wait_for_download
from test_jump import at_rest
from test_session import choose_start

TRUTH = json.loads((Path(__file__).parents[1] / "films/attempt.json").read_text())
FRAMES = TRUTH["frames"]
IN_AIR = [frame["in_air"] for frame in FRAMES]
FIRST, LAST = IN_AIR.index(True), len(IN_AIR) - 1 - IN_AIR[::-1].index(True)

# The film as it lies on the page: left, top, and CSS pixels for each of its own.
FILM = """
const room = document.querySelector("#film video").getBoundingClientRect();
const video = document.querySelector("#film video");
return [room.left, room.top, room.width / video.videoWidth];
"""

TURNS = re.compile(r"(\d+\.\d+) to (\d+\.\d+)")


def settled(page):
    """The readouts, once they are up to date."""
    page.wait_until("readouts that are up to date", page.is_settled)
    return page.outputs()


def asked(page):
    """What is to be marked, as the readouts say it."""
    return settled(page)["measuring:asked"]


def frame(page):
    """The frame in sight, from 0."""
    return int(settled(page)["measuring:frame"].split()[0]) - 1


def facing_deg(page):
    return float(settled(page)["measuring:facing"].rstrip("°").replace("−", "-"))


# What the page calls the points, and what the truth does.
POINTS = {"Top of the head": "head_px", "Lower foot": "feet_px"}


class Measuring:
    """Somebody's hands, counted."""

    def __init__(self, page):
        self.page = page
        self.touches = 0

    def tap(self, name):
        # Scrolling is no touch that marks anything: it isn't counted.
        touch.tap(self.page, *sight.reveal(self.page, name))
        self.touches += 1
        self.page.next_frames()

    def mark(self):
        self.tap("mark")

    def frame(self):
        return frame(self.page)

    def go_to(self, frame):
        """To the frame by the time line, and the rest one by one."""
        x, y, width, height = self.page.rects()["film time"]
        # The knob's middle stays inside the line.
        at = x + 14 + (width - 28) * frame / (len(FRAMES) - 1)
        touch.tap(self.page, at, y + height / 2)
        self.touches += 1
        self.page.next_frames()
        while (now := self.frame()) != frame:
            self.tap("film on" if now < frame else "film back")

    def touch_film(self, place_px):
        left, top, scale = self.page.run(FILM)
        touch.tap(self.page, left + scale * place_px[0], top + scale * place_px[1])
        self.touches += 1
        self.page.next_frames()

    def turn_to(self, facing_rad):
        """Swipes over the film until the figure faces so: the film's width is a whole turn."""
        degrees = (facing_rad * 180 / 3.141592653589793 - facing_deg(self.page) + 180) % 360 - 180
        if abs(degrees) < 3:
            return
        left, top, scale = self.page.run(FILM)
        width, height = 640 * scale, 360 * scale
        middle, y = left + width / 2, top + height / 2
        half = degrees / 360 * width / 2
        touch.touch_drag(self.page, middle - half, y, middle + half, y)
        self.touches += 1
        self.page.next_frames()


def open_invented_film(page):
    at_rest(page)
    # Of another jump than the film's: nothing is turned as it should be beforehand.
    choose_start(page, "junior-double")
    touch.tap(page, *page.centre("starts"))
    page.wait_until("the menu", lambda: "measure film" in page.rects())
    # The menu is as it was left: further down.
    _, y, _, height = page.rects()["starts"]
    touch.tap(page, *sight.reveal(page, "measure film", top=y + height))
    page.wait_until("the choice of a film", lambda: "example film" in page.rects())
    touch.tap(page, *page.centre("example film"))
    page.wait_until("the film", lambda: "film time" in page.rects())
    page.wait_until("its first picture", lambda: page.run("return document.querySelector('#film video')?.readyState") >= 2)


@pytest.mark.parametrize("size", [(1024, 768), (768, 1024)], ids=str)
def test_the_invented_film_is_measured_in_24_touches(new_page, size):
    # The canvas cancels every touch, and Chromium says so of one that comes while it still handles the one before.
    page = new_page(size=size, expected_errors=["Ignored attempt to cancel a touchstart"]).open().wait_ready()
    open_invented_film(page)
    hands = Measuring(page)
    hands.go_to(FIRST - 1)
    hands.mark()
    hands.go_to(LAST)
    hands.mark()
    answered_after = None
    while (mark := asked(page)) != "All marks are there.":
        truth = FRAMES[frame(page)]
        if mark in POINTS:
            hands.touch_film(truth[POINTS[mark]])
        elif mark == "Which way the hips face":
            hands.turn_to(truth["facing_rad"])
            hands.mark()
            if asked(page) != mark:
                answered_after = hands.touches
        else:
            hands.tap("skip mark")
    assert answered_after <= 24, f"{answered_after} touches"
    page.wait_until("the answer", lambda: "measuring:air_turns" in page.outputs())
    low, high = map(float, TURNS.match(page.output("measuring:air_turns")).groups())
    assert low < TRUTH["air_turns"] < high and high - low < 0.4, (low, high, TRUTH["air_turns"])
    hands.tap("ask why")
    page.wait_until("the jump", lambda: "question:Why" in page.rects())
    assert page.run("return document.getElementById('film').hidden")


def test_the_film_is_looked_at_closer_and_slower(new_page):
    page = new_page().open().wait_ready()
    open_invented_film(page)
    left, _, scale = page.run(FILM)
    touch.tap(page, *page.centre("look closer"))
    page.wait_until("twice as large", lambda: page.run(FILM)[2] == pytest.approx(2 * scale))
    # The middle of the film is in the middle of the room.
    middle = left + 320 * scale
    assert page.run(FILM)[0] + 640 * scale == pytest.approx(middle, abs=1)
    for _ in range(2):
        touch.tap(page, *page.centre("look closer"))
    page.wait_until("all of it", lambda: page.run(FILM)[2] == pytest.approx(scale))

    for speed, rate in [("speed 1/4", 0.25), ("speed 1/10", 0.1)]:
        touch.tap(page, *page.centre(speed))
        touch.tap(page, *page.centre("film play"))
        page.wait_until("playing", lambda: page.run("return document.querySelector('#film video').playbackRate") == rate)
        touch.tap(page, *page.centre("film play"))
        page.wait_until("paused", lambda: page.run("return document.querySelector('#film video').paused"))


def test_marks_survive_a_reload_and_are_saved(new_page, downloads):
    page = new_page().open().wait_ready()
    open_invented_film(page)
    hands = Measuring(page)
    hands.go_to(FIRST - 1)
    hands.mark()
    page.wait_until("the mark kept", lambda: "last_on_ice_s" in page.run("return localStorage.getItem('turns-aloft/session')"))
    hands.tap("save attempt")
    saved = json.loads(wait_for_download(page, downloads).read_text())
    assert saved["film"]["contacts"]["last_on_ice_s"] == pytest.approx((FIRST - 1) / TRUTH["rate"], abs=1e-3)
    page.open().wait_ready()
    page.wait_until("the marks again", lambda: "open film" in page.rects())


@pytest.mark.parametrize("name", ["empty.mp4", "text.mp4"])
def test_what_is_no_film_is_said(new_page, tmp_path, name):
    page = new_page().open().wait_ready()
    at_rest(page)
    path = tmp_path / name
    path.write_bytes(b"" if name == "empty.mp4" else b"no film at all\n" * 100)
    set_file(page, "#film-file", path)
    page.wait_until("the sentence", lambda: page.notice())
    assert page.state() == "ready"
    assert "example film" not in page.rects() or "film time" not in page.rects()
