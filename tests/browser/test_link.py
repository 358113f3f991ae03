"""Links: the scenario is in the address, and opens exactly or not at all."""

import json

import pytest

import touch
from command import aloft, assert_equal, fly, fly_stored, stored_scenario
from page import wait_for_output


def fragment(page):
    return page.run("return location.hash")


def share(page):
    """Makes the link of the present jump; returns it."""
    touch.tap(page, *page.centre("Share"))
    page.wait_until("the ways to share", lambda: "Link" in page.rects())
    touch.tap(page, *page.centre("Link"))
    page.wait_until("a notice", lambda: "link" in page.notice())
    return fragment(page)


def inputs(page):
    return json.loads(stored_scenario(page))["scenario"]


def drag_rate(page):
    before = page.output("turns")
    x, y, width, height = page.rects()["slider:takeoff_rate_rad_s"]
    touch.touch_drag(page, x + 0.3 * width, y + 0.7 * height, x + 0.57 * width, y + 0.7 * height)
    wait_for_output(page, "turns", lambda text: text != before)


@pytest.mark.window(1024, 768)
def test_a_link_opens_the_same_jump_elsewhere(page, new_page, tmp_path):
    drag_rate(page)
    link = share(page)
    elsewhere = new_page().open(link).wait_ready()
    assert elsewhere.outputs() == page.outputs()
    file = tmp_path / "opened.aloft.json"
    file.write_text(stored_scenario(elsewhere))
    assert link == aloft("link", file).strip()
    opened, sent = inputs(elsewhere), inputs(page)
    # The name tells what was changed: whoever opens the link has not seen it from the beginning.
    assert sent.pop("name") == "Half a turn short"
    assert opened.pop("name").startswith("Half a turn short, take-off rate ")
    assert opened == sent
    assert opened["note"] == ""
    assert_equal(elsewhere.outputs(), fly_stored(page, tmp_path))
    # The link is removed, so that a reload opens the visitor's own changes.
    assert fragment(elsewhere) == ""


@pytest.mark.window(1024, 768)
def test_changing_the_jump_removes_the_link(page):
    assert share(page) != ""
    drag_rate(page)
    page.wait_until("an address without the link", lambda: fragment(page) == "")


@pytest.mark.parametrize(
    ("break_it", "word"),
    [
        (lambda link: link[:-9] + link[-8:], "damaged"),
        (lambda link: link[: len(link) // 2], "damaged"),
        (lambda link: link[:-1] + "9", "newer"),
    ],
    ids=["a character lost", "cut short", "of a later version"],
)
def test_a_bad_link_gives_a_notice_and_opens_the_usual_start(new_page, break_it, word):
    link = aloft("link", "four-turns").strip()
    page = new_page().open(break_it(link)).wait_ready()
    assert page.notice().startswith("Not opened: this link")
    assert word in page.notice()
    assert_equal(page.outputs(), fly("half-a-turn-short"))


@pytest.mark.window(1024, 768)
def test_a_bad_link_opens_the_jump_of_the_last_visit(page):
    drag_rate(page)
    before = page.outputs()
    page.driver.get("about:blank")
    page.open("#jump.rubbish").wait_ready()
    assert "damaged" in page.notice()
    assert page.outputs() == before


@pytest.mark.window(1024, 768)
def test_a_link_pasted_into_the_open_page_is_opened(page):
    page.run("location.hash = arguments[0]", aloft("link", "four-turns").strip())
    four = fly("four-turns")
    wait_for_output(page, "turns", lambda text: text == f"{four['turns']:.2f}")
    assert_equal(page.outputs(), four)


def test_other_fragments_are_ignored(new_page):
    page = new_page().open("#somewhere").wait_ready()
    assert page.notice() == ""
    assert_equal(page.outputs(), fly("half-a-turn-short"))
