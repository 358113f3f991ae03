"""The main function in the browser: the jump is drawn, sliders fly it again, the readout is right."""

import pytest

import touch
from command import assert_equal, fly, fly_stored
from page import wait_for_output


def at_rest(page):
    """Waits until no flight is playing."""
    wait_for_output(page, "phase", lambda text: text == "landed")
    return page


def stage_image(page):
    """The 3D picture, without the panels and the buttons on it."""
    x, y, _, height = page.rects()["view Front"]
    _, below, *_ = page.rects()["play"]
    return page.canvas_pixels().crop((0, int(y + height), int(x), int(below) - 8))


@pytest.mark.sharp
def test_the_jump_is_drawn_and_moves(page):
    at_rest(page)
    landed = stage_image(page)
    colours = landed.getcolors(maxcolors=1 << 24)
    commonest = max(count for count, _ in colours)
    assert len(colours) > 200, "a picture has more colours than a blank"
    assert commonest < 0.5 * landed.width * landed.height, "the picture is not one colour"

    # Repeated, so that a busy machine does not miss the movement.
    touch.tap(page, *page.centre("repeat"))
    touch.tap(page, *page.centre("play"))
    pictures = set()

    def moving():
        pictures.add(stage_image(page).tobytes())
        return len(pictures) >= 3

    page.wait_until("three different pictures while it plays", moving)


def test_the_page_opens_on_a_jump_that_flies(new_page):
    page = new_page(still=False, size=(390, 844)).open().wait_ready()
    at_rest(page)


@pytest.mark.window(1024, 768)
def test_the_readouts_follow_while_the_jump_plays(page):
    at_rest(page)
    touch.tap(page, *page.centre("repeat"))
    touch.tap(page, *page.centre("speed 1/10"))
    touch.tap(page, *page.centre("play"))
    written = set()

    def follows():
        assert not page.is_settled()
        written.add(tuple(page.outputs().items()))
        return len(written) >= 3

    page.wait_until("three different readouts while it plays", follows)


@pytest.mark.window(1024, 768)
def test_the_readouts_follow_a_finger_that_lies_on_a_slider(page):
    at_rest(page)
    x, y, width, height = page.rects()["slider:jump_height_m"]
    middle = y + 0.5 * height
    start, end, elsewhere = [(x + part * width, middle) for part in (0.3, 0.4, 0.8)]
    touch.touch_drag(page, *start, *end)
    there = wait_for_output(page, "jump_height_m", lambda text: text != "28 cm")
    touch.touch_drag(page, *end, *elsewhere)
    wait_for_output(page, "jump_height_m", lambda text: text != there)
    with touch.held(page, start, end):
        page.wait_until("its height", lambda: page.output("jump_height_m") == there)
        slider = "return document.querySelector('#controls > [aria-label=\"Jump height\"]')"
        text = f"{slider}.getAttribute('aria-valuetext')"
        page.wait_until("the slider's own text", lambda: page.run(text) == there)
        assert not page.is_settled(), "the finger is still there"
    wait_for_output(page, "jump_height_m", lambda text: text == there)


@pytest.mark.looks
def test_the_first_jump_is_the_commands(page):
    at_rest(page)
    assert_equal(page.outputs(), fly("half-a-turn-short"))


@pytest.mark.window(1024, 768)
def test_a_slider_dragged_by_touch_flies_the_jump_again(page, tmp_path):
    at_rest(page)
    before = page.outputs()
    x, y, width, height = page.rects()["slider:takeoff_rate_rad_s"]
    assert height >= 44
    middle = y + 0.75 * height

    touch.touch_drag(page, x + 0.3 * width, middle, x + 0.45 * width, middle)

    wait_for_output(page, "turns", lambda text: text != before["turns"])
    assert_equal(page.outputs(), fly_stored(page, tmp_path))


@pytest.mark.window(1024, 768)
def test_a_double_tap_puts_a_slider_back(page):
    at_rest(page)
    before = page.outputs()
    x, y, width, height = page.rects()["slider:arm_tuck"]
    middle = y + 0.75 * height
    touch.touch_drag(page, x + 0.5 * width, middle, x + 0.9 * width, middle)
    wait_for_output(page, "turns", lambda text: text != before["turns"])

    touch.double_tap(page, x + 0.3 * width, middle)
    wait_for_output(page, "turns", lambda text: text == before["turns"])
    assert page.outputs() == before


@pytest.mark.window(1024, 768)
def test_a_slider_follows_the_finger_while_the_jump_plays(page, tmp_path):
    at_rest(page)
    touch.tap(page, *page.centre("repeat"))
    touch.tap(page, *page.centre("speed 1/10"))
    touch.tap(page, *page.centre("play"))
    x, y, width, height = page.rects()["slider:jump_height_m"]
    middle = y + 0.75 * height
    touch.touch_drag(page, x + 0.3 * width, middle, x + 0.4 * width, middle)
    touch.tap(page, *page.centre("play"))
    wait_for_output(page, "jump_height_m", lambda text: text != "28 cm")
    assert_equal(page.outputs(), fly_stored(page, tmp_path))


@pytest.mark.sharp
@pytest.mark.window(1024, 768)
def test_orbit_and_pinch_turn_and_enlarge_the_picture(page):
    at_rest(page)
    before = stage_image(page).tobytes()
    touch.touch_drag(page, 200, 300, 320, 300)
    page.wait_until("another picture", lambda: stage_image(page).tobytes() != before)
    before = stage_image(page).tobytes()
    touch.pinch(page, 250, 300, 60, 200)
    page.wait_until("another picture", lambda: stage_image(page).tobytes() != before)
    assert page.outputs()["turns"] == "1.53"
