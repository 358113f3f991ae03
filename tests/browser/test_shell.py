"""The page around the app: loading from any folder, landmarks, and messages of failures."""

import re
import shutil

import pytest

from server import serving, serving_slowly
from test_offline import wait_cached

SIZES = [(1366, 1024), (1024, 768), (768, 1024), (390, 844)]


@pytest.mark.looks
def test_title_and_landmarks(page):
    assert page.driver.title == "Turns Aloft"

    main = page.driver.find_element("css selector", "main")
    assert main.aria_role == "main"
    heading = main.find_element("css selector", "h1")
    assert (heading.aria_role, heading.accessible_name) == ("heading", "Turns Aloft")
    readout = page.driver.find_element("id", "readout")
    assert (readout.aria_role, readout.accessible_name) == ("region", "Readout")
    assert page.driver.find_element("id", "notice").aria_role == "status"


@pytest.mark.looks
def test_loading_text_disappears_and_no_error_is_shown(page):
    assert not page.driver.find_element("id", "loading").is_displayed()
    assert not page.driver.find_element("id", "no-graphics").is_displayed()
    assert page.notice() == ""


@pytest.mark.looks
@pytest.mark.parametrize("size", SIZES, ids=lambda size: f"{size[0]}x{size[1]}")
def test_canvas_fills_the_window(new_page, size):
    page = new_page(size=size).open().wait_ready()

    assert page.run("return [innerWidth, innerHeight]") == list(size)
    rect = page.driver.find_element("id", "stage").rect
    assert (rect["x"], rect["y"], rect["width"], rect["height"]) == (0, 0, *size)
    assert page.run(
        "return [document.documentElement.scrollWidth, document.documentElement.scrollHeight]"
    ) == list(size)


def test_the_canvas_has_the_screens_own_pixels(new_page):
    page = new_page(size=(390, 844), scale=2).open().wait_ready()

    assert page.run("return devicePixelRatio") == 2
    assert page.canvas_pixels().size == (780, 1688)


@pytest.mark.looks
def test_browser_leaves_touches_on_the_canvas_to_the_app(page):
    canvas = page.driver.find_element("id", "stage")
    assert canvas.value_of_css_property("touch-action") == "none"


@pytest.mark.fresh
def test_everything_comes_from_the_page_itself_and_the_module_once(page):
    resources = page.run(
        "return performance.getEntriesByType('resource').map(({name, transferSize}) =>"
        " ({name, transferSize}))"
    )
    assert all(resource["name"].startswith(page.address) for resource in resources)
    modules = [r for r in resources if r["name"].endswith(".wasm") and r["transferSize"] > 0]
    assert len(modules) == 1


def test_works_from_a_sub_path(new_page, dist, tmp_path):
    (tmp_path / "some" / "where").mkdir(parents=True)
    (tmp_path / "some" / "where" / "page").symlink_to(dist)
    with serving(tmp_path) as address:
        new_page(address + "some/where/page/").open().wait_ready()


@pytest.mark.looks
def test_progress_bar_knows_the_modules_real_size(page, dist):
    [module] = dist.glob("*.wasm")
    bar = page.driver.find_element("id", "loading-progress")
    assert int(bar.get_attribute("data-bytes")) == module.stat().st_size


def test_loading_shows_its_progress(new_page, dist):
    [module] = dist.glob("*.wasm")
    size = module.stat().st_size
    with serving_slowly(dist) as (address, hurry):
        page = new_page(address).open()

        def bar():
            return page.run(
                "const bar = document.getElementById('loading-progress');"
                "return bar?.hasAttribute('value') && [bar.value, bar.max]"
            )

        value, most = page.wait_until("progress", bar)
        assert 0 < value < most == size
        text = page.driver.find_element("id", "loading-text").text
        assert re.fullmatch(rf"Loading the simulator: [\d.]+ of {size / 1e6:.1f} MB", text)

        hurry.set()
        page.wait_ready()
        assert not page.driver.find_element("id", "loading").is_displayed()
        # The worker still fetches files; stopping the server before would cause errors.
        wait_cached(page)


@pytest.mark.only("chromium", "another driver's scripts have errors of a realm of their own")
def test_a_trap_gives_a_notice(page):
    def report(error):
        page.run(f"dispatchEvent(new ErrorEvent('error', {{ error: {error} }}))")

    report("new Error('not the simulator')")
    assert page.notice() == ""
    report("new WebAssembly.RuntimeError('unreachable')")
    assert page.notice() == (
        "The simulator stopped because of an error. Reload the page to go on."
    )


def test_a_missing_module_gives_a_message(new_page, dist, tmp_path):
    broken = tmp_path / "broken"
    shutil.copytree(dist, broken, ignore=shutil.ignore_patterns("*.wasm"))
    with serving(broken) as address:
        page = new_page(address, expected_errors=["404", "start.js"]).open()
        page.wait_until("failed", lambda: page.state() == "failed")

        assert page.driver.find_element("id", "loading-text").text == (
            "The simulator could not be started; check the connection, then reload the page."
        )
