"""Theme, type size and figure: as the device is set or as chosen; changing them changes nothing
else."""

import pytest

import touch
from command import assert_equal, fly_stored
from page import wait_for_output
from test_jump import at_rest, stage_image


def choose(page, what):
    """Chooses in the settings and closes them."""
    touch.tap(page, *page.centre("Units"))
    page.wait_until("the settings", lambda: what in page.rects())
    touch.tap(page, *page.centre(what))
    page.next_frames(4)
    if what in page.rects():
        touch.tap(page, *page.centre("Units"))
        page.wait_until("closed", lambda: what not in page.rects())


def light(page):
    return page.run("return document.documentElement.dataset.light")


def brightness(page):
    """Mean brightness of the whole picture, from 0 to 255."""
    picture = page.canvas_pixels().convert("L").resize((1, 1))
    return picture.getpixel((0, 0))


def background(page):
    """The page's background colour, and the theme colour for the system."""
    return page.run(
        "return [getComputedStyle(document.documentElement).getPropertyValue('--background'),"
        "        document.querySelector('meta[name=theme-color]').content]"
    )


@pytest.mark.parametrize("dark", [False, True], ids=["by day", "at night"])
def test_opens_as_the_device_is_set(new_page, dark):
    page = at_rest(new_page(dark=dark).open().wait_ready())
    assert light(page) == ("night" if dark else "day")
    assert (brightness(page) < 90) if dark else (brightness(page) > 180)
    own, theme_color = background(page)
    assert own.strip() == theme_color == ("#0F1B27" if dark else "#E6EEF4")


@pytest.mark.window(1024, 768)
def test_a_chosen_theme_is_applied_at_once_and_stored(page, tmp_path):
    before = at_rest(page).outputs()
    choose(page, "light:night")
    page.wait_until("a dark picture", lambda: brightness(page) < 90)
    assert light(page) == "night"
    assert page.outputs() == before
    page.open().wait_ready()
    assert light(page) == "night" and brightness(at_rest(page)) < 90
    choose(page, "light:device")
    page.wait_until("a light picture", lambda: brightness(page) > 180)
    assert page.outputs() == before


@pytest.mark.window(1366, 1024)
def test_sticks_are_drawn_at_once_and_stored(page):
    at_rest(page)
    body = stage_image(page).tobytes()
    before = page.outputs()
    choose(page, "figure:sticks")
    page.wait_until("another picture", lambda: stage_image(page).tobytes() != body)
    assert page.outputs() == before
    page.open().wait_ready()
    assert page.run("return localStorage.getItem('turns-aloft/figure')") == "sticks"
    assert stage_image(at_rest(page)).tobytes() != body
    choose(page, "figure:body")
    page.wait_until("the picture as it was", lambda: stage_image(page).tobytes() == body)


@pytest.mark.window(1024, 768)
def test_invalid_values_in_the_storage_are_ignored(page):
    page.run(
        "localStorage.setItem('turns-aloft/light', 'x'); localStorage.setItem('turns-aloft/type', 7)"
    )
    page.open().wait_ready()
    assert light(page) == "day"
    assert page.notice() == ""


@pytest.mark.window(1366, 1024)
def test_large_type_is_larger_and_works(page, tmp_path):
    at_rest(page)
    usual = page.rects()["play"]
    choose(page, "type:large")
    page.wait_until("a larger button", lambda: page.rects()["play"][3] >= 1.35 * usual[3])
    x, y, width, height = page.rects()["slider:takeoff_rate_rad_s"]
    before = page.output("turns")
    row = y + 0.7 * height
    touch.touch_drag(page, x + 0.5 * width, row, x + 0.6 * width, row)
    wait_for_output(page, "turns", lambda text: text != before)
    assert_equal(page.outputs(), fly_stored(page, tmp_path))
    page.open().wait_ready()
    assert page.rects()["play"][3] >= 1.35 * usual[3]
