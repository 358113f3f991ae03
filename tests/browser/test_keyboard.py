"""The page by keyboard: the HTML elements of the controls, as screen readers find them (WAI-ARIA)."""

import re

import pytest
from selenium.webdriver import ActionChains, Keys

import touch
from questions import QUESTIONS, ask
from command import assert_equal, fly_stored
from page import wait_for_output
from test_jump import at_rest

# Touch targets operated by other controls: the playhead by its slider, the point on the map by two
# sliders, a half-width by its buttons.
HAVE_ANOTHER = re.compile("charts|time line|map|half-width:.*")


def controls(page):
    """Every control: name, description, role, value as text, value, range, pressed state, rectangle."""
    return page.run(
        "return [...document.querySelectorAll('#controls > *')].map((element) => ({"
        "  name: element.ariaLabel, about: element.getAttribute('aria-description'),"
        "  role: {range: 'slider', text: 'field', button: 'button'}[element.type],"
        "  text: element.getAttribute('aria-valuetext'), value: element.value,"
        "  range: [element.min, element.max], pressed: element.ariaPressed,"
        "  rect: ['left', 'top', 'width', 'height'].map((side) => parseFloat(element.style[side]))"
        "}))"
    )


def control(page, name):
    [found] = [control for control in controls(page) if control["name"] == name]
    return found


def named(page, start):
    """The names of the controls that begin with `start`."""
    names = [control["name"] for control in controls(page)]
    return [name for name in names if name.startswith(start)]


def focused(page):
    return page.run("return document.activeElement.ariaLabel")


def press(page, *keys):
    for key in keys:
        page.driver.switch_to.active_element.send_keys(key)
    page.next_frames()


def tab(page, back=False):
    """Presses Tab, or Shift and Tab, wherever the focus is."""
    keys = ActionChains(page.driver)
    if back:
        keys.key_down(Keys.SHIFT).send_keys(Keys.TAB).key_up(Keys.SHIFT).perform()
    else:
        keys.send_keys(Keys.TAB).perform()


def tab_to(page, name):
    """Moves the focus to a control by Tab only, from where it is, on or back."""
    for _ in range(len(controls(page)) + 20):
        names = [control["name"] for control in controls(page)]
        now = focused(page)
        if now == name:
            return
        tab(page, now in names and name in names and names.index(now) > names.index(name))
    raise AssertionError(f"no way to {name!r} by Tab; at {focused(page)!r}")


def ring(page):
    """The width of the ring round the focused control, CSS pixels."""
    return page.run(
        "const style = getComputedStyle(document.activeElement);"
        "return document.activeElement.matches(':focus-visible') && style.outlineStyle === 'solid'"
        " ? parseFloat(style.outlineWidth) : 0"
    )


def click_picture(page):
    x, y, width, height = page.rects()["view Front"]
    canvas = page.driver.find_element("id", "stage")
    centre_x, centre_y = page.run("return [innerWidth / 2, innerHeight / 2]")
    beside = x - 60 - centre_x, y + height + 60 - centre_y
    ActionChains(page.driver).move_to_element_with_offset(
        canvas, *(round(part) for part in beside)
    ).click().perform()
    page.next_frames()


@pytest.mark.parametrize("begin", ["load", "click", "tap"])
@pytest.mark.window(1024, 768)
def test_tab_walks_everything_in_reading_order(page, begin):
    if begin == "click":
        click_picture(page)
    elif begin == "tap":
        x, y, width, height = page.rects()["view Front"]
        touch.tap(page, x - 60, y + height + 60)
    names = [control["name"] for control in controls(page)]
    assert len(names) > 40
    for name in names:
        tab(page)
        assert focused(page) == name
        assert ring(page) >= 2, name
    # And back.
    for name in names[-2::-1]:
        tab(page, back=True)
        assert focused(page) == name


@pytest.mark.looks
@pytest.mark.window(1024, 768)
def test_the_order_is_that_of_reading(page):
    names = [control["name"] for control in controls(page)]
    order = [
        "Share",
        "Uncertainty",
        "Why",
        "What is meant by Take-off rate",
        "Take-off rate as a number",
        "Take-off rate",
        "Jump height",
        "The jumper",
        "Front",
        "Play",
    ]
    places = [names.index(name) for name in order]
    assert places == sorted(places), [names[place] for place in places]


@pytest.mark.window(1024, 768)
def test_what_a_menu_has_follows_its_button(page):
    tab_to(page, "Share")
    press(page, Keys.SPACE)
    page.wait_until("the menu", lambda: named(page, "Save it"))
    tab(page)
    assert focused(page) == named(page, "Save it")[0]


@pytest.mark.window(1024, 768)
def test_the_browser_keeps_its_own_keys(page):
    """On the canvas, which has the focus from the start, as anywhere else."""
    page.run(
        "window.kept = [];"
        "addEventListener('keydown', (event) => setTimeout(() =>"
        " window.kept.push([event.key, event.defaultPrevented])), true)"
    )
    for begin in [lambda: None, lambda: click_picture(page)]:
        begin()
        page.run("window.kept.length = 0")
        for key in ["F6", "r"]:
            page.run(
                "document.activeElement.dispatchEvent(new KeyboardEvent('keydown',"
                " {key: arguments[0], bubbles: true, cancelable: true}))",
                key,
            )
        page.next_frames()
        assert page.run("return window.kept") == [["F6", False], ["r", False]]


@pytest.mark.window(1024, 768)
def test_a_number_that_was_clicked_is_typed_and_left_by_tab(page):
    x, y, width, height = page.rects()["value:jump_height_m"]
    canvas = page.driver.find_element("id", "stage")
    centre_x, centre_y = page.run("return [innerWidth / 2, innerHeight / 2]")
    beside = x + width / 2 - centre_x, y + height / 2 - centre_y
    ActionChains(page.driver).move_to_element_with_offset(
        canvas, *(round(part) for part in beside)
    ).click().perform()
    page.next_frames(4)
    ActionChains(page.driver).send_keys("31").perform()
    page.next_frames(4)
    tab(page)
    wait_for_output(page, "jump_height_m", lambda text: text == "31 cm")
    assert focused(page) in [control["name"] for control in controls(page)]


@pytest.mark.window(1024, 768)
def test_a_slider_is_set_by_the_arrow_keys(page, tmp_path):
    before = page.output("turns")
    tab_to(page, "Arm tuck")
    press(page, *[Keys.ARROW_RIGHT] * 5)
    wait_for_output(page, "turns", lambda text: text != before)
    page.wait_until("five steps", lambda: control(page, "Arm tuck")["text"] == "65 %")
    at_rest(page)
    assert focused(page) == "Arm tuck"
    assert_equal(page.outputs(), fly_stored(page, tmp_path))


@pytest.mark.window(1024, 768)
def test_a_number_is_typed(page, tmp_path):
    name = "Jump height as a number"
    tab_to(page, name)
    press(page, Keys.CONTROL + "a", Keys.NULL + "31", Keys.ENTER)
    wait_for_output(page, "jump_height_m", lambda text: text == "31 cm")
    assert control(page, name)["value"] == "31 cm"
    assert control(page, "Jump height")["text"] == "31 cm"
    assert focused(page) == name
    assert_equal(page.outputs(), fly_stored(page, tmp_path))


@pytest.mark.window(1024, 768)
def test_text_that_is_not_a_number_gives_a_notice_and_changes_nothing(page):
    tab_to(page, "Jump height as a number")
    press(page, Keys.CONTROL + "a", Keys.NULL + "high", Keys.ENTER)
    page.wait_until("a notice", page.notice)
    assert page.output("jump_height_m") == "28 cm"
    assert control(page, "Jump height as a number")["value"] == "28 cm"


@pytest.mark.window(1024, 768)
def test_escape_cancels_typing(page):
    tab_to(page, "Jump height as a number")
    press(page, "1", Keys.ESCAPE)
    assert control(page, "Jump height as a number")["value"] == "28 cm"


@pytest.mark.window(1024, 768)
def test_a_kept_jump_is_renamed(page):
    tab_to(page, "Compare")
    press(page, Keys.SPACE)
    page.wait_until("the question", lambda: named(page, "Keep this jump"))
    before = named(page, "Compare with ")
    tab_to(page, "Keep this jump")
    press(page, Keys.SPACE)
    [kept] = page.wait_until("kept", lambda: set(named(page, "Compare with ")) - set(before))
    tab_to(page, kept)
    press(page, Keys.SPACE)
    [rename] = page.wait_until("to be renamed", lambda: named(page, "Rename: "))
    tab_to(page, rename)
    press(page, Keys.SPACE)
    page.wait_until("the field", lambda: focused(page) == "Name")
    press(page, Keys.CONTROL + "a", Keys.NULL + "Thursday", Keys.ENTER)
    page.wait_until("renamed", lambda: named(page, "Rename: Thursday"))
    # The focus is where the field was.
    assert focused(page) == "Open: Thursday"


@pytest.mark.window(1024, 768)
def test_the_jump_is_moved_on_the_map(page, tmp_path):
    tab_to(page, "Map")
    press(page, Keys.SPACE)
    page.wait_until("the map", lambda: named(page, "On the map: "))
    before = page.output("turns")
    tab_to(page, named(page, "On the map: ")[0])
    press(page, *[Keys.ARROW_RIGHT] * 3)
    wait_for_output(page, "turns", lambda text: text != before)
    assert_equal(page.outputs(), fly_stored(page, tmp_path))


@pytest.mark.looks
@pytest.mark.window(1024, 768)
def test_every_explanation_is_a_description(page):
    asked = [c for c in controls(page) if c["name"].startswith("What is meant by ")]
    assert len(asked) > 20
    assert all(c["about"] and c["about"].endswith(".") for c in asked), asked


@pytest.mark.window(1024, 768)
def test_a_button_is_pressed_by_the_space_bar(page):
    tab_to(page, "Above")
    assert control(page, "Above")["pressed"] is None
    press(page, Keys.SPACE)
    page.wait_until("pressed", lambda: control(page, "Above")["pressed"] == "true")
    assert focused(page) == "Above"


@pytest.mark.looks
def test_the_canvas_is_not_in_the_tab_order(page):
    assert page.run("return document.getElementById('stage').tabIndex") == -1


@pytest.mark.window(1024, 768)
def test_a_focused_control_is_scrolled_into_view(page):
    name = "Take-off, closing, opening"
    assert control(page, name)["rect"][1] > 768
    tab_to(page, name)
    page.wait_until("in sight", lambda: 300 < control(page, name)["rect"][1] < 740)


@pytest.mark.looks
@pytest.mark.window(1024, 768)
def test_a_slider_has_its_range_and_value_in_the_units_shown(page):
    height = control(page, "Jump height")
    assert height["role"] == "slider"
    assert height["text"] == page.output("jump_height_m") == "28 cm"
    assert [float(end) for end in height["range"]] == [10, 250]


@pytest.mark.looks
@pytest.mark.window(1024, 768)
def test_the_result_is_announced_in_a_sentence(page):
    result = "return document.getElementById('result').textContent"
    outputs = page.outputs()
    assert page.run(result) == (
        f"{outputs['turns']} turns of {outputs['turns_owed']}: "
        f"{outputs['shortfall_deg']}, {outputs['call']}."
    )
    assert page.run("return document.getElementById('result').role") == "status"
    live = "return [...document.querySelectorAll('#readout output')].map((o) => o.ariaLive)"
    assert set(page.run(live)) == {"off"}


@pytest.mark.looks
@pytest.mark.window(1024, 768)
def test_the_picture_has_a_text_alternative(page):
    picture = "return document.getElementById('stage').ariaLabel"
    hang_time, turns = page.output("hang_time_s"), page.output("turns")
    assert page.run(picture) == (
        f"The figure, landed, {hang_time} after take-off, {turns} turns so far."
    )


@pytest.mark.parametrize("size", [(1024, 768)], ids=str)
@pytest.mark.parametrize("question", QUESTIONS)
def test_every_touch_target_has_an_element_at_its_place(new_page, size, question):
    page = new_page(size=size).open().wait_ready()
    at_rest(page)
    ask(page, question)
    elements = controls(page)
    for control in elements:
        assert control["name"].strip(), control
        if control["role"] == "slider":
            assert control["text"], control
    names = [control["name"] for control in elements]
    assert len(set(names)) == len(names), names

    places = [control["rect"] for control in elements]
    for name, rect in page.rects().items():
        if not HAVE_ANOTHER.fullmatch(name):
            near = [all(abs(a - b) <= 1 for a, b in zip(rect, place)) for place in places]
            assert any(near), (name, rect)
