"""Somebody on a turntable, by touch: pushed, led in the picture, wound back, saved and left.

That the numbers are right is held natively (`tests/panels/turntable.rs`, `tests/turntable`).
"""

import csv
import re

import pytest
from selenium.webdriver.common.keys import Keys

import sight
import touch
from files import wait_for_download
from test_faults import frames_drawn
from test_jump import at_rest
from test_keyboard import control, press, tab_to

NUMBER = re.compile(r"-?\d+(\.\d+)?")


def enter(page):
    at_rest(page)
    touch.tap(page, *page.centre("starts"))
    page.wait_until("the menu", lambda: "turntable" in page.rects())
    _, y, _, height = page.rects()["starts"]
    touch.tap(page, *sight.reveal(page, "turntable", top=y + height))
    page.wait_until("the turntable", lambda: "picture hands" in page.rects())


def number(page, key):
    """A readout, in its unit."""
    return float(NUMBER.match(page.output(f"turntable:{key}").replace("−", "-")).group())


def tap(page, name):
    touch.tap(page, *sight.in_column(page, name))
    page.next_frames()


def pause_or_go_on(page):
    touch.tap(page, *page.centre("turntable play"))


def paused(page):
    """Pauses, and waits until the readouts are those of what is shown."""
    pause_or_go_on(page)
    page.wait_until("readouts that are up to date", page.is_settled)


@pytest.mark.window(1024, 768)
def test_a_finger_in_the_picture_pulls_the_arms_in(page):
    enter(page)
    for _ in range(3):
        tap(page, "push right")
    paused(page)
    slow, far = number(page, "rate"), number(page, "hands")
    wide = number(page, "inertia")
    assert slow > 0
    pause_or_go_on(page)
    x, y, width, height = page.rects()["picture hands"]
    # The axis is in its middle.
    middle, level = x + width / 2, y + height / 2
    with touch.held(page, (x + width - 8, level), (middle + 2, level)):
        page.wait_until("the hands at the axis", lambda: number(page, "hands") < 0.5 * far)
    paused(page)
    assert number(page, "inertia") < 0.7 * wide
    assert number(page, "rate") > 1.2 * slow
    assert number(page, "work") > 0
    # One finger there has not moved the camera: the named view is still the chosen one.
    assert control(page, "Front")["pressed"] == "true"


@pytest.mark.window(1024, 768)
def test_a_flick_below_the_hips_pushes(page):
    enter(page)
    x, y, width, height = page.rects()["picture push"]
    level = y + height / 2
    touch.flick(page, x + 0.2 * width, level, x + 0.8 * width, level)
    page.wait_until("it turns", lambda: number(page, "rate") > 0)
    paused(page)
    assert "anticlockwise" in page.output("turntable:rate")


@pytest.mark.window(1024, 768)
def test_two_fingers_look_closer_and_lead_nothing(page):
    enter(page)
    before = number(page, "hands")
    x, y, width, height = page.rects()["picture hands"]
    touch.pinch(page, x + width / 2, y + height / 2, 60, 120)
    page.wait_until("a larger figure", lambda: page.still_rects()["picture hands"][2] > 1.2 * width)
    # The first finger comes down a moment before the second: what it led is near where it was.
    assert number(page, "hands") <= before


@pytest.mark.window(1024, 768)
def test_nothing_is_drawn_at_rest(page):
    enter(page)
    page.wait_until("readouts that are up to date", page.is_settled)
    page.still_rects()
    assert frames_drawn(page, 2) == 0
    tap(page, "push left")
    assert frames_drawn(page, 1) > 0
    paused(page)
    page.still_rects()
    assert frames_drawn(page, 2) == 0


@pytest.mark.window(768, 1024)
def test_a_run_is_wound_back_and_saved(page, downloads):
    enter(page)
    tap(page, "push right")
    page.wait_until("two seconds", lambda: number(page, "time") > 2)
    paused(page)
    end_s = number(page, "time")
    x, y, width, height = page.rects()["turntable time"]
    # Ten seconds are shown.
    touch.tap(page, x + 0.1 * width, y + height / 2)
    page.wait_until("an earlier time", lambda: page.is_settled() and number(page, "time") < end_s)
    assert number(page, "time") == pytest.approx(1, abs=0.05)
    touch.tap(page, *page.centre("turntable csv"))
    saved = wait_for_download(page, downloads)
    assert saved.suffix == ".csv"
    rows = list(csv.DictReader(saved.read_text("utf-8-sig").splitlines()))
    # Looking back loses nothing.
    assert float(rows[-1]["Time (s)"]) == pytest.approx(end_s, abs=0.03)
    assert float(rows[-1]["Angular momentum (kg m²/s)"]) > 0
    page.wait_until("how it was written", lambda: "decimal point" in page.notice())


@pytest.mark.window(390, 844)
def test_by_keyboard_it_is_pushed_led_and_left(page):
    enter(page)
    tab_to(page, "Push to the right")
    press(page, Keys.ENTER)
    page.wait_until("it turns", lambda: number(page, "rate") > 0)
    before = number(page, "hands")
    tab_to(page, "Hands from the axis")
    press(page, *[Keys.ARROW_LEFT] * 5)
    page.wait_until("the hands nearer", lambda: number(page, "hands") < before)
    tab_to(page, "Leave the turntable")
    press(page, Keys.ENTER)
    page.wait_until("the jump", lambda: "question:Jump" in page.rects())
    at_rest(page)


# A chair that is pushed after a second and slows down evenly, as a phone held upright reads it: sixty readings a
# second for `until` seconds, each with the time at which it was taken.
MOTION = """
const [until] = arguments;
for (let i = 0; i < 60 * until; i += 1) {
  const t = i / 60;
  const rate = t < 1 ? 0 : Math.max(0, 180 - 15 * (t - 1));
  const event = new Event("devicemotion");
  const members = {
    timeStamp: 5000 + 1000 * t,
    rotationRate: { alpha: 0, beta: rate, gamma: 0 },
    accelerationIncludingGravity: { x: 0, y: 9.81, z: 0 },
  };
  for (const [name, value] of Object.entries(members)) Object.defineProperty(event, name, { value });
  window.dispatchEvent(event);
}
"""

# What a browser has that wants to be asked; it counts how often it was.
ASKED = """
const [answers] = arguments;
window.timesAsked = 0;
window.DeviceMotionEvent = {
  requestPermission: () => {
    const answer = answers[window.timesAsked];
    window.timesAsked += 1;
    return answer === "late"
      ? Promise.reject(new DOMException("only while touched", "NotAllowedError"))
      : Promise.resolve(answer);
  },
};
"""


def open_sensor(page):
    enter(page)
    touch.tap(page, *sight.in_column(page, "fold:A sensor on a real chair"))
    page.wait_until("its buttons", lambda: "use sensor" in page.rects())


@pytest.mark.window(390, 844)
def test_the_devices_sensor_is_recorded_and_turned_after(page):
    open_sensor(page)
    page.run(ASKED, ["granted"])
    tap(page, "use sensor")
    page.wait_until("a recording", lambda: "stop sensor" in page.rects())
    page.run(MOTION, 8)
    # 180 - 15 * 7 degrees a second, 12.5 rpm; it is read aloud as whole ones.
    page.wait_until("the live rate", lambda: re.search(r": 1[23] rpm", page.output("turntable:measured")))
    tap(page, "stop sensor")
    page.wait_until("the whole", lambda: "30 rpm" in page.output("turntable:measured"))
    # Nobody listens any more.
    before = page.output("turntable:measured")
    page.run(MOTION, 9)
    page.next_frames()
    assert page.output("turntable:measured") == before
    tap(page, "turn as measured")
    page.wait_until("it turns", lambda: number(page, "rate") > 0)
    assert "friction" in page.notice()
    paused(page)
    page.still_rects()
    assert frames_drawn(page, 1) == 0


@pytest.mark.window(1024, 768)
@pytest.mark.parametrize(
    ("prepare", "answers", "word"),
    [(ASKED, ["denied"], "allowed"), ("delete window.DeviceMotionEvent;", None, "no page")],
    ids=["refused", "missing"],
)
def test_without_a_sensor_one_sentence_says_so(page, prepare, answers, word):
    open_sensor(page)
    page.run(prepare, answers)
    tap(page, "use sensor")
    page.wait_until("the sentence", lambda: word in page.notice())
    assert "stop sensor" not in page.rects()


@pytest.mark.window(1024, 768)
def test_a_browser_that_asks_only_while_touched_is_asked_again(page):
    open_sensor(page)
    page.run(ASKED, ["late", "granted"])
    tap(page, "use sensor")
    page.wait_until("the sentence", lambda: "once more" in page.notice())
    page.run("document.body.click();")
    page.wait_until("a recording", lambda: "stop sensor" in page.rects())
    assert page.run("return timesAsked") == 2
