"""Undo and redo: by touch at every size, by keyboard, after a reload, and in a field."""

import pytest
from selenium.webdriver import ActionChains, Keys

import touch
from page import wait_for_output
from test_jump import at_rest
from test_keyboard import control, controls, named, press, tab_to
from test_session import choose_start

SIZES = [(1366, 1024), (1024, 768), (768, 1024), (390, 844)]
HEIGHT = "jump_height_m"


def disabled(page, name):
    return page.run(
        "const all = [...document.querySelectorAll('#controls > button')];"
        "return all.find((button) => button.ariaLabel === arguments[0])"
        "?.getAttribute('aria-disabled') === 'true'",
        name,
    )


def set_height(page, key, text):
    """One step with the arrow keys on the slider."""
    tab_to(page, "Jump height")
    press(page, key)
    wait_for_output(page, HEIGHT, lambda shown: shown == text)


@pytest.mark.parametrize("size", SIZES, ids=str)
def test_both_buttons_are_in_sight_and_large_enough(new_page, size):
    page = new_page(size=size).open().wait_ready()
    at_rest(page)
    for name in ("undo", "redo"):
        x, y, width, height = page.rects()[name]
        assert width >= 44 and height >= 44
        assert x >= 0 and y >= 0 and x + width <= size[0] and y + height <= size[1]
    assert disabled(page, "Undo") and disabled(page, "Redo")


@pytest.mark.parametrize("size", SIZES, ids=str)
def test_an_opened_jump_is_undone_and_redone_by_touch(new_page, size):
    page = new_page(size=size).open().wait_ready()
    at_rest(page)
    before = page.outputs()
    choose_start(page, "senior-triple")
    wait_for_output(page, "turns_owed", lambda text: text == "3")
    at_rest(page)
    after = page.outputs()
    assert named(page, "Undo: ") == ["Undo: opened jump"]
    assert not disabled(page, "Undo: opened jump")

    touch.tap(page, *page.centre("undo"))
    page.wait_until("the jump before", lambda: page.outputs() == before)
    page.wait_until("to be redone", lambda: named(page, "Redo: ") == ["Redo: opened jump"])
    touch.tap(page, *page.centre("redo"))
    page.wait_until("the opened jump", lambda: page.outputs() == after)


@pytest.mark.window(1024, 768)
def test_a_drag_is_undone_in_one_step(page):
    at_rest(page)
    before = page.output(HEIGHT)
    x, y, width, height = page.rects()[f"slider:{HEIGHT}"]
    y += height - 15
    touch.touch_drag(page, x + 0.3 * width, y, x + 0.8 * width, y)
    wait_for_output(page, HEIGHT, lambda text: text != before)
    page.wait_until("named", lambda: named(page, "Undo: ") == ["Undo: jump height"])
    touch.tap(page, *page.centre("undo"))
    wait_for_output(page, HEIGHT, lambda text: text == before)
    page.wait_until("nothing left", lambda: control(page, "Undo"))


@pytest.mark.window(1024, 768)
@pytest.mark.parametrize(
    "again", [Keys.CONTROL + Keys.SHIFT + "z", Keys.CONTROL + "y"], ids=["shift-z", "y"]
)
def test_the_keys_undo_and_redo(page, again):
    at_rest(page)
    set_height(page, Keys.ARROW_RIGHT, "29 cm")
    set_height(page, Keys.ARROW_RIGHT, "30 cm")
    press(page, Keys.CONTROL + "z" + Keys.NULL)
    wait_for_output(page, HEIGHT, lambda text: text == "29 cm")
    press(page, Keys.CONTROL + "z" + Keys.NULL)
    wait_for_output(page, HEIGHT, lambda text: text == "28 cm")
    press(page, again + Keys.NULL)
    wait_for_output(page, HEIGHT, lambda text: text == "29 cm")


@pytest.mark.window(1024, 768)
def test_a_button_undoes_by_the_space_bar(page):
    at_rest(page)
    before = page.output(HEIGHT)
    # By touch: from a slider Tab would go round by the browser's own bars, and in Firefox the space
    # bar then presses nothing.
    x, y, width, height = page.rects()[f"slider:{HEIGHT}"]
    touch.touch_drag(page, x + 0.3 * width, y + height - 15, x + 0.8 * width, y + height - 15)
    wait_for_output(page, HEIGHT, lambda text: text != before)
    tab_to(page, "Undo: jump height")
    press(page, Keys.SPACE)
    wait_for_output(page, HEIGHT, lambda text: text == before)
    # The button stays, with the focus on it.
    page.wait_until("nothing left", lambda: [c for c in controls(page) if c["name"] == "Undo"])


@pytest.mark.window(1024, 768)
def test_steps_survive_a_reload(page):
    at_rest(page)
    set_height(page, Keys.ARROW_RIGHT, "29 cm")
    set_height(page, Keys.ARROW_RIGHT, "30 cm")
    touch.tap(page, *page.centre("undo"))
    wait_for_output(page, HEIGHT, lambda text: text == "29 cm")

    page.open().wait_ready()
    at_rest(page)
    assert page.output(HEIGHT) == "29 cm"
    touch.tap(page, *page.centre("redo"))
    wait_for_output(page, HEIGHT, lambda text: text == "30 cm")
    touch.tap(page, *page.centre("undo"))
    wait_for_output(page, HEIGHT, lambda text: text == "29 cm")
    touch.tap(page, *page.centre("undo"))
    wait_for_output(page, HEIGHT, lambda text: text == "28 cm")


@pytest.mark.window(1024, 768)
def test_keys_do_not_undo_while_a_number_is_typed_on_the_canvas(page):
    at_rest(page)
    set_height(page, Keys.ARROW_RIGHT, "29 cm")
    touch.tap(page, *page.centre("value:jump_height_m"))
    page.next_frames(4)
    ActionChains(page.driver).send_keys("3").perform()
    ActionChains(page.driver).key_down(Keys.CONTROL).send_keys("z").key_up(Keys.CONTROL).perform()
    page.next_frames(4)
    assert page.output(HEIGHT) == "29 cm"


@pytest.mark.window(1024, 768)
def test_keys_do_not_undo_in_a_field_of_the_page(page):
    at_rest(page)
    set_height(page, Keys.ARROW_RIGHT, "29 cm")
    tab_to(page, "Jump height as a number")
    press(page, Keys.CONTROL + "z" + Keys.NULL)
    page.next_frames(4)
    assert page.output(HEIGHT) == "29 cm"


@pytest.mark.window(1024, 768)
def test_the_names_are_german_on_a_german_page(page):
    at_rest(page)
    set_height(page, Keys.ARROW_RIGHT, "29 cm")
    touch.tap(page, *page.centre("Units"))
    page.wait_until("the languages", lambda: "language:de" in page.rects())
    touch.tap(page, *page.centre("language:de"))
    page.wait_until("in German", lambda: named(page, "Rückgängig: ") == ["Rückgängig: Sprunghöhe"])
    assert named(page, "Wiederherstellen") == ["Wiederherstellen"]
