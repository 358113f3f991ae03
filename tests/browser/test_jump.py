"""The main job in the browser: the jump is drawn, the sliders re-fly it, the readout is right."""

import itertools

import pytest

import touch
from flown import assert_equal, fly, fly_kept
from page import wait_for_output

MAIN = ["takeoff_rate_rad_s", "arm_tuck", "leg_tuck", "hand_mass_kg", "jump_height_m"]


def at_rest(page):
    """The page once no flight is playing; the readout follows at rest."""
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

    # Over and over, so that a busy machine does not miss it.
    touch.tap(page, *page.centre("repeat"))
    touch.tap(page, *page.centre("play"))
    pictures = set()

    def moving():
        pictures.add(stage_image(page).tobytes())
        return len(pictures) >= 3

    page.wait_until("three different pictures while it plays", moving)


def test_the_page_opens_on_a_jump_that_flies(new_page):
    page = new_page(still=False, size=(390, 844)).open().wait_ready()
    assert page.output("phase") == "on the ice", "the readout follows at rest"
    at_rest(page)


@pytest.mark.looks
def test_the_first_jump_is_the_commands(page):
    at_rest(page)
    assert_equal(page.outputs(), fly("half-a-turn-short"))


@pytest.mark.window(1024, 768)
@pytest.mark.parametrize("key", MAIN)
def test_a_slider_dragged_by_touch_flies_the_jump_again(page, tmp_path, key):
    at_rest(page)
    before = page.outputs()
    x, y, width, height = page.rects()[f"slider:{key}"]
    assert height >= 44
    middle = y + 0.75 * height

    touch.touch_drag(page, x + 0.3 * width, middle, x + 0.45 * width, middle)

    wait_for_output(page, "turns", lambda text: text != before["turns"])
    assert_equal(page.outputs(), fly_kept(page, tmp_path))


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
    assert_equal(page.outputs(), fly_kept(page, tmp_path))


@pytest.mark.window(1024, 768)
def test_scrubbing_the_charts_moves_the_moment_shown(page):
    at_rest(page)
    x, y, width, height = page.rects()["charts"]
    seen = []
    for part in (0.02, 0.55):
        touch.touch_drag(page, x + 0.3 * width, y + 0.5 * height, x + part * width, y + 0.5 * height)
        seen.append(page.outputs())
    assert seen[0]["rate_now_rad_s"] == seen[0]["takeoff_rate_rad_s"]
    assert seen[1]["rate_now_rad_s"] == seen[1]["peak_rate_rad_s"]
    assert seen[0]["turns"] == seen[1]["turns"], "scrubbing changes nothing of the flight"


@pytest.mark.window(1024, 768)
def test_one_frame_on_is_a_sixtieth_of_a_second(page):
    at_rest(page)
    x, y, width, height = page.rects()["charts"]
    touch.tap(page, x + 0.5, y + 0.5 * height)
    start = page.outputs()["cm_height_now_m"]
    touch.tap(page, *page.centre("on"))
    wait_for_output(page, "cm_height_now_m", lambda text: text != start)
    # Rises by v t - g t2 / 2 with v = sqrt(2 g 0.28 m): 3.8 cm in a sixtieth of a second.
    rise = int(page.outputs()["cm_height_now_m"].split()[0]) - int(start.split()[0])
    assert rise in (3, 4, 5)


@pytest.mark.looks
@pytest.mark.parametrize("size", [(1366, 1024), (1024, 768), (768, 1024), (390, 844)], ids=str)
def test_everything_that_is_touched_is_large_enough_and_apart(new_page, size):
    page = new_page(size=size).open().wait_ready()
    rects = page.rects()
    buttons = {
        name: rect
        for name, rect in rects.items()
        if not name.startswith(("slider:", "value:", "charts", "time line"))
    }
    for name, (_, _, width, height) in rects.items():
        assert width >= 44 and height >= 44, (name, width, height)
    for (a, one), (b, other) in itertools.combinations(buttons.items(), 2):
        gap_x = max(one[0], other[0]) - min(one[0] + one[2], other[0] + other[2])
        gap_y = max(one[1], other[1]) - min(one[1] + one[3], other[1] + other[3])
        assert gap_x >= 0 or gap_y >= 0, (a, b)


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
