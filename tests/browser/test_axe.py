"""The page's real controls and texts, checked by axe-core (Deque; rules after WCAG 2): nothing of its serious kinds."""

import os
from pathlib import Path

import pytest

import touch
from questions import QUESTIONS, ask
from sight import reveal
from test_lesson import enter, tap

SERIOUS = {"serious", "critical"}


def faults(page):
    """What axe finds of its serious kinds: rule, and the first element."""
    if not page.run("return 'axe' in window"):
        page.run(Path(os.environ["AXE"]).read_text(encoding="utf-8"))
    found = page.driver.execute_async_script(
        "const done = arguments[0];"
        "axe.run(document, { resultTypes: ['violations'] })"
        ".then((result) => done(result.violations), (reason) => done(String(reason)));"
    )
    assert isinstance(found, list), found
    return [
        (one["id"], one["impact"], one["nodes"][0]["html"]) for one in found if one["impact"] in SERIOUS
    ]


@pytest.mark.window(1024, 768)
@pytest.mark.parametrize("language", ["en", "de"])
def test_the_jump_and_every_answer(new_page, language):
    page = new_page(languages=f"{language},en").open().wait_ready()
    for question in QUESTIONS:
        ask(page, question)
        assert faults(page) == [], question


@pytest.mark.window(1024, 768)
def test_what_is_done_by_hand_and_measured(page):
    for name in ["turntable", "slow flight", "measure watch", "five-turn try"]:
        touch.tap(page, *page.centre("starts"))
        page.wait_until("the menu", lambda: name in page.rects())
        _, y, _, height = page.rects()["starts"]
        touch.tap(page, *reveal(page, name, top=y + height))
        page.next_frames(10)
        assert faults(page) == [], name


@pytest.mark.window(1024, 768)
def test_a_lesson_at_each_stage(page):
    enter(page, "higher-or-tighter")
    assert faults(page) == []
    tap(page, "lesson begin")
    assert faults(page) == []
    tap(page, "lesson back")
    tap(page, "lesson class")
    for _ in range(3):
        tap(page, "lesson on")
        page.next_frames(10)
        assert faults(page) == []


@pytest.mark.fresh
@pytest.mark.window(1024, 768)
def test_the_page_that_cannot_draw(new_page):
    page = new_page(graphics=False).open()
    page.wait_until("the text in its place", lambda: page.state() == "ready")
    assert faults(page) == []
