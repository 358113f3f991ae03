"""Two attempts: kept, compared, restored after a reload, shared; by touch."""

import json
import re

import pytest

import touch
from files import drop_file, set_file, wait_for_download
from command import aloft, fly, stored_scenario
from page import wait_for_output
from test_jump import at_rest, stage_image
from test_link import fragment, share
from test_session import choose_start

STORED = "turns-aloft/kept-jumps"


def question(page, name):
    touch.tap(page, *page.centre(f"question:{name}"))
    page.wait_until(name, lambda: ("reference:none" in page.rects()) == (name == "Compare"))


def into_sight(page, name):
    """Scrolls the column until the centre of a target is visible; returns the centre."""
    left, top, width, _ = page.rects()["question:Jump"]
    height = page.run("return window.innerHeight")
    low, high = top + 60, height - 40
    x = left + width / 2
    for _ in range(40):
        at = page.centre(name)
        if low <= at[1] <= high:
            return at
        middle = (low + high) / 2
        way = max(-0.35 * (high - low), min(0.35 * (high - low), middle - at[1]))
        touch.touch_drag(page, x, middle, x, middle + way)
        page.wait_until(f"{name} rests", lambda: _rests(page, name))
    raise AssertionError(f"{name} never came into sight")


def _rests(page, name):
    before = page.centre(name)
    page.next_frames(3)
    return page.centre(name) == before


def tap(page, name):
    page.wait_until(name, lambda: name in page.rects())
    touch.tap(page, *into_sight(page, name))


def kept(page):
    """Names and turns of the kept jumps, in order."""
    lines = [
        (int(quantity.split(":")[1]), text)
        for quantity, text in page.outputs().items()
        if quantity.startswith("kept:")
    ]
    return [re.fullmatch(r"(.*): (\d+\.\d\d) turns, .*", text).groups() for _, text in sorted(lines)]


def names(page):
    return [name for name, _ in kept(page)]


def wait_for_names(page, expected):
    page.wait_until(f"the jumps {expected}", lambda: names(page) == expected)


def keep(page):
    """Keeps the present jump, by the button in the bar."""
    touch.tap(page, *page.centre("keep"))


def keep_two(page):
    """Keeps two jumps; the second is the present one."""
    at_rest(page)
    question(page, "Compare")
    keep(page)
    wait_for_names(page, ["Half a turn short"])
    choose_start(page, "four-turns")
    wait_for_output(page, "turns_owed", lambda text: text == "4")
    at_rest(page)
    keep(page)
    wait_for_names(page, ["Half a turn short", "Four turns"])


def assert_compared(outputs, compared):
    """The table on the page equals the command's to the digits shown, and the numbers shown add up."""
    from_text, to_text, whole = re.fullmatch(
        r"(\S+) to (\S+): (\S+)", outputs["compare:turns"]
    ).groups()
    assert [from_text, to_text] == [f"{turns:.2f}" for turns in compared["turns"]]
    hundredths = lambda text: round(100 * float(text.replace("−", "-")))
    assert hundredths(whole) == hundredths(to_text) - hundredths(from_text)
    shown = {
        quantity.removeprefix("compare:"): hundredths(re.search(r": (\S+) turns$", text)[1])
        for quantity, text in outputs.items()
        if quantity.startswith("compare:") and quantity not in ("compare:turns", "compare:sentence")
    }
    worth = {one["key"]: 100 * one["turns"] for one in compared["differences"]}
    assert shown.keys() == worth.keys()
    for key, part in shown.items():
        assert abs(part - worth[key]) <= 1 + 1e-9, key
    assert sum(shown.values()) == hundredths(whole)


def set_reference(page, name):
    tap(page, name)
    wait_for_output(page, "compare:turns", bool)


@pytest.mark.window(1024, 768)
def test_two_kept_jumps_are_compared_as_by_the_command(page):
    keep_two(page)
    assert kept(page)[0][1] == f"{fly('half-a-turn-short')['turns']:.2f}"
    assert kept(page)[1][1] == f"{fly('four-turns')['turns']:.2f}"
    set_reference(page, "kept:1")
    compared = json.loads(aloft("compare", "half-a-turn-short", "four-turns"))
    assert len(compared["differences"]) > 3
    assert_compared(page.outputs(), compared)
    sentence = page.output("compare:sentence")
    assert "more than “Half a turn short”" in sentence


@pytest.mark.window(1024, 768)
def test_the_comparison_follows_a_slider(page, tmp_path):
    at_rest(page)
    question(page, "Compare")
    set_reference(page, "reference:as opened")
    assert "are the same" in page.output("compare:sentence")
    question(page, "Jump")
    x, y, width, height = page.rects()["slider:takeoff_rate_rad_s"]
    before = page.output("turns")
    touch.touch_drag(page, x + 0.3 * width, y + 0.7 * height, x + 0.5 * width, y + 0.7 * height)
    wait_for_output(page, "turns", lambda text: text != before)
    question(page, "Compare")
    wait_for_output(page, "compare:sentence", lambda text: "from take-off rate" in text)
    file = tmp_path / "present.aloft.json"
    file.write_text(stored_scenario(page))
    assert_compared(page.outputs(), json.loads(aloft("compare", "half-a-turn-short", file)))


@pytest.mark.window(1024, 768)
def test_kept_jumps_and_the_reference_survive_a_reload(page):
    keep_two(page)
    set_reference(page, "kept:1")
    before = page.outputs()
    page.open().wait_ready()
    at_rest(page)
    page.wait_until("the same answer", lambda: page.outputs() == before)


@pytest.mark.window(1024, 768)
def test_all_kept_jumps_go_through_one_file(page, new_page, downloads):
    keep_two(page)
    tap(page, "save all")
    saved = wait_for_download(page, downloads)
    assert saved.name == "kept-jumps.aloft.json"
    elsewhere = new_page().open().wait_ready()
    at_rest(elsewhere)
    before = elsewhere.output("turns")
    set_file(elsewhere, "#scenario-file", saved)
    wait_for_names(elsewhere, ["Half a turn short", "Four turns"])
    assert kept(elsewhere) == kept(page)
    assert elsewhere.output("turns") == before
    assert "2 jumps" in elsewhere.notice()

    drop_file(elsewhere, "bad.json", saved.read_text().replace("arm_tuck", "arm_tack", 1))
    elsewhere.wait_until("a notice", lambda: elsewhere.notice().startswith("Not opened: jump 1"))
    assert names(elsewhere) == ["Half a turn short", "Four turns"]


@pytest.mark.window(1024, 768)
def test_the_second_attempt_is_a_figure_in_the_picture(page):
    keep_two(page)
    alone = reddish_purple(stage_image(page))
    set_reference(page, "kept:1")
    page.wait_until("two figures", lambda: reddish_purple(stage_image(page)) > alone + 75)
    tap(page, "reference:none")
    page.wait_until("one figure again", lambda: reddish_purple(stage_image(page)) <= alone)


def reddish_purple(image):
    """Number of pixels in the hue of the reference figure, which nothing else in the picture has."""
    return sum(
        count
        for count, (red, green, blue) in image.getcolors(maxcolors=1 << 24)
        if red > blue > green + 12 and red > green + 20
    )


@pytest.mark.sharp
@pytest.mark.window(1024, 768)
def test_the_second_attempt_has_its_curves_in_the_charts(page):
    keep_two(page)
    page.wait_until("one curve each", lambda: curve_pixels(page) == 0)
    set_reference(page, "kept:1")
    page.wait_until("two curves each", lambda: curve_pixels(page) > 300)
    tap(page, "reference:none")
    page.wait_until("one curve each again", lambda: curve_pixels(page) == 0)


@pytest.mark.sharp
def test_a_narrow_page_has_the_curves_below_the_table(new_page):
    page = new_page(size=(390, 844)).open().wait_ready()
    at_rest(page)
    question(page, "Compare")
    assert "charts" not in page.rects()
    keep(page)
    wait_for_names(page, ["Half a turn short"])
    # Two equal attempts would show as one curve.
    choose_start(page, "four-turns")
    wait_for_output(page, "turns_owed", lambda text: text == "4")
    set_reference(page, "kept:1")
    page.wait_until("charts", lambda: "charts" in page.rects())
    into_sight(page, "charts")
    page.wait_until("two curves each", lambda: curve_pixels(page) > 100)


def curve_pixels(page):
    """Number of pixels in the reference's colour on the charts."""
    x, y, width, height = page.rects()["charts"]
    charts = page.canvas_pixels().crop((round(x), round(y), round(x + width), round(y + height)))
    return sum(
        count
        for count, (red, green, blue) in charts.getcolors(maxcolors=1 << 24)
        if abs(red - 0x96) < 12 and abs(green - 0x48) < 12 and abs(blue - 0x7A) < 12
    )


@pytest.mark.window(1024, 768)
def test_nothing_is_drawn_while_nothing_moves(page):
    keep_two(page)
    set_reference(page, "kept:1")
    page.run(
        """
        window.drawn = 0;
        window.nextFrame = window.requestAnimationFrame.bind(window);
        window.requestAnimationFrame = (draw) => { window.drawn += 1; return nextFrame(draw); };
        """
    )
    page.wait_until("a rest", lambda: frames_asked_for(page) == 0)
    touch.tap(page, *page.centre("play"))
    page.wait_until("a flight", lambda: frames_asked_for(page) > 0)
    at_rest(page)
    page.wait_until("a rest again", lambda: frames_asked_for(page) == 0)


def frames_asked_for(page):
    """The number of frames that the app requests during thirty frames of the browser."""
    return page.driver.execute_async_script(
        """
        const [done] = arguments;
        const before = window.drawn;
        const next = (left) => left > 0 ? nextFrame(() => next(left - 1)) : done(window.drawn - before);
        next(30);
        """
    )


@pytest.mark.window(1024, 768)
def test_a_link_carries_the_comparison(page, new_page, tmp_path):
    keep_two(page)
    set_reference(page, "kept:1")
    link = share(page)
    first, second = tmp_path / "first.aloft.json", tmp_path / "second.aloft.json"
    first.write_text(aloft("starts", "half-a-turn-short"))
    second.write_text(stored_scenario(page))
    assert link == aloft("link", second, "--beside", first).strip()

    elsewhere = new_page().open(link).wait_ready()
    wait_for_output(elsewhere, "compare:turns", bool)
    of = lambda page: {q: text for q, text in page.outputs().items() if not q.startswith("kept:")}
    assert of(elsewhere) == of(page)
    assert names(elsewhere) == []

    tap(page, "reference:none")
    page.wait_until("an address without the link", lambda: fragment(page) == "")


@pytest.mark.window(1024, 768)
def test_a_link_does_not_lose_a_changed_jump(page):
    at_rest(page)
    x, y, width, height = page.rects()["slider:takeoff_rate_rad_s"]
    before = page.output("turns")
    touch.touch_drag(page, x + 0.3 * width, y + 0.7 * height, x + 0.5 * width, y + 0.7 * height)
    changed = wait_for_output(page, "turns", lambda text: text != before)
    page.run("location.hash = arguments[0]", aloft("link", "four-turns").strip())
    wait_for_output(page, "turns_owed", lambda text: text == "4")
    page.wait_until("a notice", lambda: "is kept" in page.notice())
    at_rest(page)
    question(page, "Compare")
    page.wait_until("kept", lambda: len(kept(page)) == 1)
    ((name, turns),) = kept(page)
    assert re.fullmatch(r"Half a turn short, take-off rate \d+ rpm", name), name
    assert turns == changed


@pytest.mark.window(1024, 768)
def test_unreadable_kept_jumps_give_a_notice_and_are_moved_to_another_name(new_page):
    page = new_page().open().wait_ready()
    page.run("localStorage.setItem(arguments[0], 'rubbish')", STORED)
    page.open().wait_ready()
    page.wait_until("a notice", lambda: "cannot be read" in page.notice())
    stored = page.run("return Object.fromEntries(Object.entries(localStorage))")
    assert stored[f"{STORED}-unread-1"] == "rubbish"
    assert STORED not in stored
    question(page, "Compare")
    keep(page)
    wait_for_names(page, ["Half a turn short"])
    page.open().wait_ready()
    wait_for_names(page, ["Half a turn short"])
    assert page.notice() == ""


@pytest.mark.window(1024, 768)
def test_a_newer_list_is_not_overwritten(new_page):
    page = new_page().open().wait_ready()
    newer = '{"turns_aloft_kept_jumps": 99}'
    page.run("localStorage.setItem(arguments[0], arguments[1])", STORED, newer)
    page.open().wait_ready()
    page.wait_until("a notice", lambda: "newer" in page.notice())
    question(page, "Compare")
    keep(page)
    page.wait_until("a notice", lambda: page.notice().startswith("This will be gone after a reload"))
    assert page.run("return localStorage.getItem(arguments[0])", STORED) == newer


@pytest.mark.window(1024, 768)
def test_a_full_storage_gives_a_notice(page):
    at_rest(page)
    question(page, "Compare")
    # Fills the storage to the last character.
    page.run(
        """
        for (let size = 1 << 24, n = 0; size >= 1; size >>= 1) {
          try { localStorage.setItem("full" + n, "x".repeat(size)); n += 1; } catch {}
        }
        """
    )
    keep(page)
    page.wait_until("a notice", lambda: "has no more room" in page.notice())
    assert names(page) == ["Half a turn short"]


@pytest.mark.fresh
@pytest.mark.window(1024, 768)
def test_jumps_kept_on_another_page_appear(page):
    at_rest(page)
    question(page, "Compare")
    here = page.driver.current_window_handle
    page.driver.switch_to.new_window("window")
    page.open().wait_ready()
    keep(page)
    wait_for_names(page, ["Half a turn short"])
    page.driver.switch_to.window(here)
    wait_for_names(page, ["Half a turn short"])
