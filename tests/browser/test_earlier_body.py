"""Data saved before the body was refined opens, with one notice that its turns may differ."""

import json
from pathlib import Path

import pytest

from files import drop_file
from command import VISIT, aloft, assert_equal, fly, stored_scenario
from page import wait_for_output
from test_jump import at_rest

KEPT_JUMPS = "turns-aloft/kept-jumps"
SAMPLES = Path(__file__).parents[1] / "version_1"
OF_ONE = (
    "This jump was saved with an earlier model of the body. "
    "Its turns are computed again and may be different."
)
SINCE_THE_VISIT = (
    "The model of the body has become more exact since your last visit. "
    "The turns of your jumps are computed again and may be different."
)


def sample(name):
    return (SAMPLES / name).read_text().strip()


def stored(page, name):
    return page.run("return localStorage.getItem(arguments[0])", name)


@pytest.mark.window(1024, 768)
def test_stored_data_gives_one_notice_and_is_stored_in_the_new_version(new_page):
    page = new_page().open().wait_ready()
    for name, file in [(VISIT, "visit.json"), (KEPT_JUMPS, "kept-jumps.json")]:
        page.run("localStorage.setItem(arguments[0], arguments[1])", name, sample(file))
    page.open().wait_ready()
    page.wait_until("a notice", page.notice)
    assert page.notice() == SINCE_THE_VISIT
    at_rest(page)
    assert json.loads(stored_scenario(page))["turns_aloft_scenario"] == 2
    assert json.loads(stored(page, KEPT_JUMPS))["turns_aloft_kept_jumps"] == 2

    page.open().wait_ready()
    at_rest(page)
    assert page.notice() == ""
    assert json.loads(stored_scenario(page))["scenario"]["name"] == "Triple on Monday"


@pytest.mark.window(1024, 768)
def test_a_file_gives_one_notice(page):
    at_rest(page)
    drop_file(page, "old.json", sample("scenario.aloft.json"))
    page.wait_until("a notice", page.notice)
    assert page.notice() == OF_ONE
    wait_for_output(page, "turns_owed", lambda text: text == "3")
    at_rest(page)
    assert_equal(page.outputs(), fly(SAMPLES / "scenario.aloft.json"))

    drop_file(page, "new.json", aloft("starts", "four-turns"))
    wait_for_output(page, "turns_owed", lambda text: text == "4")
    assert page.notice() == ""


@pytest.mark.window(1024, 768)
def test_a_link_gives_one_notice(new_page):
    link = "#" + sample("link.txt")
    page = new_page().open(link).wait_ready()
    page.wait_until("a notice", page.notice)
    assert page.notice() == OF_ONE
    assert_equal(page.outputs(), fly(link))

    page.open().wait_ready()
    at_rest(page)
    assert page.notice() == ""
