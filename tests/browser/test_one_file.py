"""The page as one file, opened from the disk: no server, no network."""

import pytest

import one_file
import touch
from sight import reveal
from test_link import drag_rate


@pytest.fixture(scope="module")
def alone(dist, tmp_path_factory):
    path = tmp_path_factory.mktemp("stick") / "turns aloft.html"
    one_file.main(dist, path)
    return path


def test_it_is_small_and_names_nothing_outside(alone):
    text = alone.read_text(encoding="utf-8")
    assert alone.stat().st_size < 11_000_000
    # Whatever is loaded stands in it.
    head = text[: text.index("<body>")]
    assert 'src="' not in head and 'href="data:' in head and head.count("href=") == 1
    assert "connect-src data:;" in head and "default-src 'none'" in head


@pytest.mark.window(1024, 768)
def test_it_runs_from_the_disk_and_keeps_what_is_done(new_page, alone):
    page = new_page(alone.as_uri()).open().wait_ready()
    drag_rate(page)
    after = page.outputs()["turns"]
    page.wait_until("rest", page.is_settled)
    page.open().wait_ready()
    page.wait_until("the same jump", lambda: page.outputs().get("turns") == after)


@pytest.mark.window(1024, 768)
def test_a_lesson_is_in_it(new_page, alone):
    page = new_page(alone.as_uri()).open().wait_ready()
    touch.tap(page, *page.centre("starts"))
    touch.tap(page, *reveal(page, "lesson:higher-or-tighter"))
    page.wait_until("the lesson", lambda: "lesson:title" in page.outputs())


@pytest.mark.window(1024, 768)
def test_a_link_to_it_says_that_it_opens_here_only(new_page, alone):
    page = new_page(alone.as_uri()).open().wait_ready()
    touch.tap(page, *page.centre("Share"))
    touch.tap(page, *page.centre("Link"))
    page.wait_until("what can't work", lambda: "opened from a file" in page.notice())
