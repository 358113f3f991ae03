"""The session: files, reload, units, bad input, no graphics."""

import json

import pytest
from selenium.webdriver import ActionChains, Keys

import sight
import touch
from files import drop_file, set_file, wait_for_download
from command import VISIT, aloft, assert_equal, fly, fly_stored, stored_scenario, turns_and_gain
from page import wait_for_output
from test_jump import at_rest


def choose_start(page, name):
    touch.tap(page, *page.centre("starts"))
    page.wait_until("the list of starting points", lambda: f"start:{name}" in page.rects())
    _, y, _, height = page.rects()["starts"]
    touch.tap(page, *sight.reveal(page, f"start:{name}", top=y + height))


@pytest.mark.window(1024, 768)
def test_a_starting_point_opens_by_touch(page):
    at_rest(page)
    choose_start(page, "senior-triple")
    wait_for_output(page, "turns_owed", lambda text: text == "3")
    at_rest(page)
    assert_equal(page.outputs(), fly("senior-triple"))


@pytest.mark.window(1024, 768)
def test_a_saved_jump_opens_again(page, downloads):
    at_rest(page)
    choose_start(page, "four-turns")
    wait_for_output(page, "turns_owed", lambda text: text == "4")
    touch.tap(page, *page.centre("Share"))
    page.wait_until("the ways to share", lambda: "Save" in page.rects())
    touch.tap(page, *page.centre("Save"))
    saved = wait_for_download(page, downloads)
    assert saved.name == "four-turns.aloft.json"
    assert json.loads(saved.read_text()) == json.loads(aloft("starts", "four-turns"))

    choose_start(page, "child-single")
    wait_for_output(page, "turns_owed", lambda text: text == "1")
    set_file(page, "#scenario-file", saved)
    wait_for_output(page, "turns_owed", lambda text: text == "4")
    at_rest(page)
    assert_equal(page.outputs(), fly(saved))


@pytest.mark.window(1024, 768)
def test_a_dropped_jump_opens(page):
    at_rest(page)
    drop_file(page, "triple.json", aloft("starts", "senior-triple"))
    wait_for_output(page, "turns_owed", lambda text: text == "3")


NEWER = json.dumps({"turns_aloft_scenario": 99, "scenario": {}})


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("", "not a scenario"),
        ("{", "not a scenario"),
        ("[1, 2, 3]", "not a Turns Aloft scenario"),
        (NEWER, "version 99"),
        ("0" * 2_000_000, "too large"),
    ],
    ids=["empty", "torn", "list", "newer", "large"],
)
def test_a_bad_file_gives_a_notice_and_changes_nothing(page, text, says):
    at_rest(page)
    before = page.outputs()
    drop_file(page, "bad.json", text)
    page.wait_until("a notice", page.notice)
    assert page.notice().startswith("Not opened: ") and says in page.notice()
    assert page.notice().count(". ") == 0, "one sentence"
    assert page.outputs() == before


def test_a_file_with_nan_gives_a_notice_and_changes_nothing(page):
    at_rest(page)
    before = page.outputs()
    text = aloft("starts", "senior-triple").replace('"arm_tuck": 0.92', '"arm_tuck": NaN')
    assert "NaN" in text
    drop_file(page, "nan.json", text)
    page.wait_until("a notice", page.notice)
    assert page.outputs() == before


def test_a_value_out_of_range_in_a_file_is_named(page):
    at_rest(page)
    before = page.outputs()
    text = aloft("starts", "senior-triple").replace('"arm_tuck": 0.92', '"arm_tuck": 7')
    drop_file(page, "seven.json", text)
    page.wait_until("a notice", page.notice)
    assert "arm_tuck = 7" in page.notice() and "from 0 to 1" in page.notice()
    assert page.outputs() == before


def type_value(page, key, text):
    touch.tap(page, *page.centre(f"value:{key}"))
    page.next_frames(4)
    # Typing replaces the old number, which is selected.
    ActionChains(page.driver).send_keys(text).perform()
    page.next_frames(4)
    ActionChains(page.driver).send_keys(Keys.ENTER).perform()
    page.next_frames(4)


@pytest.mark.window(1024, 768)
def test_a_typed_number_is_flown(page, tmp_path):
    at_rest(page)
    type_value(page, "takeoff_rate_rad_s", "120")
    wait_for_output(page, "takeoff_rate_rad_s", lambda text: text == "120 rpm")
    assert_equal(page.outputs(), fly_stored(page, tmp_path))


@pytest.mark.window(1024, 768)
def test_weights_are_compared_under_each_assumption(page):
    at_rest(page)
    assert not [name for name in page.outputs() if name.startswith("turns_keeping:")]
    type_value(page, "hand_mass_kg", "0.25")
    bare = fly("half-a-turn-short")["turns"]
    for kept in ("rate", "energy", "angular_momentum"):
        settings = ("hand_mass_kg=0.25", f"hands_keep={kept}")
        turns = fly("half-a-turn-short", "--set", *settings)["turns"]
        text = "{} ({})".format(*turns_and_gain(bare, turns))
        wait_for_output(page, f"turns_keeping:{kept}", lambda shown, text=text: shown == text)


@pytest.mark.window(1024, 768)
def test_jump_and_units_survive_a_reload(page):
    at_rest(page)
    choose_start(page, "junior-double")
    wait_for_output(page, "peak_rate_rad_s", lambda text: text != "205 rpm")
    touch.tap(page, *page.centre("Units"))
    page.wait_until("the units", lambda: "rate unit:deg/s" in page.rects())
    touch.tap(page, *page.centre("rate unit:deg/s"))
    touch.tap(page, *page.centre("length unit:in"))
    touch.tap(page, 300, 300)
    at_rest(page)
    before = page.outputs()
    assert before["peak_rate_rad_s"].endswith("deg/s") and before["jump_height_m"].endswith(" in")

    page.open().wait_ready()
    at_rest(page)

    assert page.outputs() == before


def test_an_unreadable_visit_gives_a_notice_and_the_usual_start_opens(new_page):
    page = new_page().open().wait_ready()
    page.run("localStorage.setItem(arguments[0], '{]')", VISIT)
    page.open().wait_ready()
    at_rest(page)
    assert "could not be read" in page.notice()
    assert_equal(page.outputs(), fly("half-a-turn-short"))
    assert json.loads(stored_scenario(page)), "the stored visit is replaced by a readable one"


def test_without_graphics_there_is_a_message_and_the_readout(new_page):
    page = new_page(graphics=False).open().wait_ready()
    message = page.driver.find_element("id", "no-graphics")
    assert message.is_displayed() and "WebGL 2" in message.text
    readout = page.driver.find_element("id", "readout")
    assert readout.is_displayed() and "Turns in all" in readout.text
    assert_equal(page.outputs(), fly("half-a-turn-short"))
