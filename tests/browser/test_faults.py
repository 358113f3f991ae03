"""Faults: the page keeps working, gives a notice where needed, and loses nothing."""

import random
import re

import pytest

import touch
from browser import resize
from files import drop_file
from command import assert_equal, fly_stored
from page import wait_for_output
from test_jump import at_rest

SOME_SIZES = [(768, 1024), (390, 844), (1366, 1024), (1024, 768)]


def drag(page, key, share):
    """Drags a slider from its middle by a share of its width."""
    before = page.outputs()
    # Waits until it no longer moves.
    page.centre(f"slider:{key}")
    x, y, width, height = page.rects()[f"slider:{key}"]
    middle, row = x + 0.5 * width, y + 0.7 * height
    touch.touch_drag(page, middle, row, middle + share * width, row)
    page.wait_until("another jump", lambda: page.outputs() != before)


def assert_works(page, folder):
    """A jump can be changed, and its readouts equal the command's."""
    drag(page, "jump_height_m", 0.1)
    assert_equal(at_rest(page).outputs(), fly_stored(page, folder))


def frames_drawn(page, seconds):
    """The number of draw passes during that time."""
    return page.driver.execute_async_script(
        """
        const [seconds, done] = arguments;
        const { prototype } = WebGL2RenderingContext;
        const { bindFramebuffer } = prototype;
        let calls = 0;
        prototype.bindFramebuffer = function (...what) {
          calls += 1;
          return bindFramebuffer.apply(this, what);
        };
        setTimeout(() => {
          prototype.bindFramebuffer = bindFramebuffer;
          done(calls);
        }, 1000 * seconds);
        """,
        seconds,
    )


def test_nothing_is_drawn_while_nothing_moves(page):
    at_rest(page)
    page.next_frames(10)
    assert frames_drawn(page, 3) == 0
    touch.tap(page, *page.centre("repeat"))
    touch.tap(page, *page.centre("play"))
    assert frames_drawn(page, 1) > 0


@pytest.mark.fresh
def test_the_jump_is_restored_after_a_lost_context(page, tmp_path):
    drag(page, "arm_tuck", 0.2)
    before = at_rest(page).outputs()
    touch.tap(page, *page.centre("repeat"))
    touch.tap(page, *page.centre("play"))
    page.run(
        """
        window.before = true;
        window.lose = document.getElementById("stage").getContext("webgl2")
          .getExtension("WEBGL_lose_context");
        lose.loseContext();
        """
    )
    page.wait_until("the interruption", lambda: page.state() == "interrupted")
    assert page.driver.find_element("id", "interrupted").is_displayed()
    # A touch meanwhile has no effect.
    touch.tap(page, 512, 384)
    assert page.state() == "interrupted"
    page.run("lose.restoreContext()")
    page.wait_until("a page that starts anew", lambda: page.run("return !window.before"))
    page.wait_ready()
    assert at_rest(page).outputs() == before
    assert_works(page, tmp_path)


@pytest.mark.fresh
def test_a_button_reloads_the_page_after_a_lost_context(page):
    drag(page, "arm_tuck", 0.2)
    before = at_rest(page).outputs()
    page.run(
        """
        window.before = true;
        document.getElementById("stage").getContext("webgl2")
          .getExtension("WEBGL_lose_context").loseContext();
        """
    )
    page.wait_until("the interruption", lambda: page.state() == "interrupted")
    page.driver.find_element("css selector", "#interrupted button").click()
    page.wait_until("a page that starts anew", lambda: page.run("return !window.before"))
    page.wait_ready()
    assert at_rest(page).outputs() == before


def test_a_file_of_fifty_megabytes_is_refused_at_once(page, tmp_path):
    before = at_rest(page).outputs()
    page.run(
        """
        const dataTransfer = new DataTransfer();
        dataTransfer.items.add(new File([new Uint8Array(50e6).fill(48)], "large.json"));
        document.getElementById("stage").dispatchEvent(
          new DragEvent("drop", { bubbles: true, cancelable: true, dataTransfer }));
        """
    )
    page.wait_until("a notice", page.notice)
    assert page.notice().startswith("Not opened: ") and "too large" in page.notice()
    assert page.outputs() == before
    assert_works(page, tmp_path)


@pytest.mark.parametrize("change_s", [3600, -3600], ids=["an hour on", "an hour back"])
def test_a_change_of_the_clock_has_no_effect(page, tmp_path, change_s):
    # Date.now can jump either way; performance.now never goes back (W3C, High Resolution Time), but
    # continues while a device sleeps.
    at_rest(page)
    touch.tap(page, *page.centre("repeat"))
    touch.tap(page, *page.centre("play"))
    page.run(
        """
        const [changeS] = arguments;
        const performanceNow = performance.now.bind(performance), dateNow = Date.now.bind(Date);
        performance.now = () => performanceNow() + 1e3 * Math.max(changeS, 0);
        Date.now = () => dateNow() + 1e3 * changeS;
        """,
        change_s,
    )
    assert frames_drawn(page, 2) > 0
    # It plays to the end.
    touch.tap(page, *page.centre("repeat"))
    at_rest(page)
    assert page.state() == "ready"
    assert_works(page, tmp_path)


def test_a_hidden_page_waits_and_goes_on(page, tmp_path):
    at_rest(page)
    touch.tap(page, *page.centre("repeat"))
    touch.tap(page, *page.centre("play"))
    here = page.driver.current_window_handle
    page.driver.switch_to.new_window("tab")
    there = page.driver.current_window_handle
    page.driver.get("about:blank")
    page.driver.switch_to.window(there)
    page.driver.close()
    page.driver.switch_to.window(here)
    assert frames_drawn(page, 1) > 0
    touch.tap(page, *page.centre("repeat"))
    at_rest(page)
    assert_works(page, tmp_path)


def test_a_page_of_no_size_comes_back(page, tmp_path):
    before = at_rest(page).outputs()
    page.run("document.querySelector('main').style.setProperty('display', 'none')")
    page.next_frames(5)
    page.run("document.querySelector('main').style.removeProperty('display')")
    page.next_frames(5)
    assert page.outputs() == before
    assert_works(page, tmp_path)


def test_a_turned_device_keeps_everything(page, tmp_path):
    drag(page, "arm_tuck", 0.2)
    before = at_rest(page).outputs()
    for size in SOME_SIZES:
        resize(page.driver, size)
        page.wait_until("the new size", lambda: page.run("return [innerWidth, innerHeight]") == [*size])
        rect = page.wait_until(
            "the stage in it",
            lambda: (found := page.rects().get("play")) and found[0] + found[2] <= size[0] and found,
        )
        assert rect[1] + rect[3] <= size[1]
        assert page.outputs() == before
    assert_works(page, tmp_path)


def test_a_thousand_touches_anywhere_leave_a_jump_that_flies(page, tmp_path):
    at_rest(page)
    # A file dialog would cover the page.
    page.run(
        "document.getElementById('scenario-file')"
        ".addEventListener('click', (event) => event.preventDefault())"
    )
    # Fixed, so that runs are reproducible.
    chance = random.Random(20261126)
    # Chromium waits until the page has handled each touch, slow with software rendering: a tenth there.
    for _ in range(20 if page.driver.name == "firefox" else 2):
        touch.taps(page, [(chance.uniform(1, 1022), chance.uniform(1, 766)) for _ in range(50)])
    assert page.state() == "ready"
    page.open().wait_ready()
    # A range, if one of the touches has switched it on.
    shown = [float(number) for number in re.findall(r"[\d.]+", at_rest(page).output("turns"))]
    turns = fly_stored(page, tmp_path)["turns"]
    assert min(shown) - 0.005 <= turns <= max(shown) + 0.005


BLOCK_STORAGE = """
Object.defineProperty(window, "localStorage", {
  get() { throw new DOMException("blocked", "SecurityError"); }
});
"""


@pytest.mark.fresh
@pytest.mark.only("chromium", "blocks the storage by its developer tools")
def test_a_blocked_storage_gives_one_notice_and_a_reload_restores_the_jump(new_page):
    page = new_page()
    page.driver.execute_cdp_cmd("Page.addScriptToEvaluateOnNewDocument", {"source": BLOCK_STORAGE})
    at_rest(page.open().wait_ready())
    assert page.notice() == ""
    drag(page, "arm_tuck", 0.2)
    page.wait_until("a notice", page.notice)
    assert "keeps nothing" in page.notice()
    assert page.state() == "ready"
    outputs = page.outputs()
    page.driver.refresh()
    assert at_rest(page.wait_ready()).outputs() == outputs


def test_a_full_storage_gives_a_notice_and_the_page_works(page):
    at_rest(page)
    page.run(
        """
        let size = 1 << 22;
        for (let i = 0; size > 0; i += 1) {
          try { localStorage.setItem(`filled ${i}`, "x".repeat(size)); } catch { size >>= 1; }
        }
        """
    )
    drag(page, "arm_tuck", 0.2)
    page.wait_until("a notice", page.notice)
    assert "keeps nothing" in page.notice()
    assert page.state() == "ready"
