"""A jump that nobody has been seen to do says so beside its turns."""

import pytest

import touch
from asked import QUESTIONS
from page import wait_for_output
from test_session import choose_start


@pytest.mark.parametrize("size", [(1366, 1024), (1024, 768), (768, 1024), (390, 844)], ids=str)
def test_a_jump_that_nobody_has_been_seen_to_do_says_so_on_every_page(new_page, size):
    page = new_page(size=size).open().wait_ready()
    assert "beyond seen" not in page.rects()
    choose_start(page, "five-turn-attempt")
    wait_for_output(page, "beyond_seen", lambda text: text.startswith("peak rate "))
    for question in QUESTIONS:
        touch.tap(page, *page.centre(f"question:{question}"))
        page.wait_until("the question", lambda: "beyond seen" in page.rects())
        x, y, width, height = page.rects()["beyond seen"]
        assert height >= 44 and x >= 0 and x + width <= size[0], question
        assert y >= 0, question

    def below():
        """Where stands what the meaning pushes down: the questions, or in two columns the range."""
        return [page.rects().get(name) for name in ("question:Compare", "how sure")]

    closed = below()
    touch.tap(page, *page.centre("beyond seen"))
    page.wait_until("what it means", lambda: below() != closed)
