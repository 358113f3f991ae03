"""Films in the browser: the frame shown is the frame asked for, by the bar code in its picture.

Runs on a page of its own, the player alone (`tests/films/page.rs`), which `web/film-page` builds. With
`--films all` every frame of every film is looked at, else some of them.
"""

import io
import json
import random
import statistics
import subprocess
import sys
from pathlib import Path

import pytest
from PIL import Image

from files import set_file
from server import REPOSITORY, serving
from touch import double_tap, pinch, tap, touch_drag

sys.path.append(str(REPOSITORY / "tests" / "films"))

import bar_code  # noqa: E402

BUILT = REPOSITORY / "target" / "film-page"
# Files that this engine doesn't play, whatever is asked.
UNPLAYED = {"chromium": ["hevc"], "firefox": []}
# In a live recording the next key frame can't be found without reading up to it, and Firefox goes past it.
UNSOUGHT = {"chromium": [], "firefox": ["live_webm"]}
# Of each way in which films differ, one.
SOME = [
    "h264_30", "h264_240", "vp8_60", "vp9_120", "av1_60", "h264_varying", "b_frames_varying", "sound",
    "fragmented", "trimmed_b_frames", "delayed", "delayed_webm", "mov_60", "upright",
]  # fmt: skip
FAULTS = {
    "empty": "Film(Empty)",
    "cut_off": "Film(CutOff)",
    "sound_only": "Film(NoFilmTrack)",
    "picture": "Film(StillPicture)",
    "two_edits": "Film(SeveralEdits)",
}
# How many of a film's frames are looked at in a short run.
FEW = 40


@pytest.fixture(scope="module")
def folder():
    """The test films', made where they are not there."""
    script = 'source web/tools.sh && need_films >&2 && printf %s "$FILMS"'
    made = subprocess.run(["bash", "-euc", script], cwd=REPOSITORY, stdout=subprocess.PIPE, text=True, check=True)
    return Path(made.stdout)


@pytest.fixture(scope="module")
def film_site():
    if not BUILT.is_dir():
        raise SystemExit("The player's page is not there: build it with web/film-page first.")
    with serving(BUILT) as address:
        yield address


@pytest.fixture
def film_page(new_page, film_site, folder):
    page = new_page(film_site + "page.html").open()
    page.wait_until("the player", lambda: page.state() == "ready")
    page.driver.set_script_timeout(600)
    page.films = folder
    return page


def call(page, script, *arguments):
    """Waits for what a script's promise becomes."""
    done = f"const done = arguments[{len(arguments)}]; ({script}).then((value) => done([value]), (error) => done(String(error)));"
    answer = page.driver.execute_async_script(done, *arguments)
    assert isinstance(answer, list), answer
    return answer[0]


def open_film(page, name):
    """Opens a film by the page's file input; returns what is true of it."""
    [path] = [path for path in page.films.glob(f"{name}.*") if path.suffix != ".json"]
    set_file(page, "#file", path)
    call(page, "films.open(document.getElementById('file').files[0])")
    return json.loads((page.films / f"{name}.json").read_text())


def shown(truth):
    """The frames that the film shows, by their places in the file."""
    return [frame for frame, time_s in enumerate(truth["edited_s"]) if time_s is not None]


def orders(frames, everything):
    """Forward, backward, by ten, and at random, the same each time."""
    chance = random.Random(len(frames))
    if everything:
        return [*frames, *reversed(frames), *frames[::10], *reversed(frames[::10]), *chance.choices(frames, k=len(frames))]
    start = chance.randrange(len(frames) - FEW // 4)
    part = frames[start : start + FEW // 4]
    return [*part, *reversed(part), *part[::10], *chance.choices(frames, k=FEW // 2), frames[-1], frames[0]]


def films(folder, everything):
    if everything:
        listed = json.loads((folder / "films.json").read_text())
        return [film["name"] for film in listed if film["fault"] is None and film["name"] != "large"]
    return SOME


def test_the_frame_shown_is_the_one_asked_for(film_page, request):
    engine, everything = request.config.getoption("--engine"), request.config.getoption("--films") == "all"
    wrong, looked_at = {}, 0
    for name in films(film_page.films, everything):
        if any(name.startswith(start) for start in UNPLAYED[engine] + UNSOUGHT[engine]):
            continue
        truth = open_film(film_page, name)
        order = orders(shown(truth), everything)
        # Firefox draws a film that lies on its side wrongly on a canvas, though not on the screen.
        if name == "upright" and engine == "firefox":
            order = order[:10]
            seen = [on_screen(film_page, frame) for frame in order]
        else:
            seen = call(film_page, "films.showAll(arguments[0])", order)["seen"]
        looked_at += len(order)
        differing = [(frame, number) for frame, number in zip(order, seen) if truth["numbers"][frame] != number]
        if differing:
            wrong[name] = differing
    print(f"{engine}: {looked_at} frames looked at, wrong: {wrong}")
    assert wrong == {}


def on_screen(page, frame):
    """The number in the picture as the browser has it on the screen."""
    call(page, "films.show(arguments[0])", frame)
    page.next_frames()
    left, top, width, height = page.run(
        "const { left, top, width, height } = document.querySelector('video').getBoundingClientRect();"
        "return [left, top, width, height].map((length) => length * devicePixelRatio)"
    )
    picture = Image.open(io.BytesIO(page.driver.get_screenshot_as_png())).convert("L")
    y = round(top + height / bar_code.PARTS_OF_HEIGHT / 2)
    return bar_code.read([picture.getpixel((round(left + x), y)) for x in range(int(width))])


def test_what_is_on_the_screen_is_what_is_drawn(film_page):
    """The canvas, from which the other tests read, and the screen show the same."""
    truth = open_film(film_page, "vp8_60")
    for frame in [3, 50, 20]:
        assert on_screen(film_page, frame) == truth["numbers"][frame]


def test_of_several_frames_asked_for_the_last_is_shown(film_page):
    open_film(film_page, "h264_240")
    asked = [300, 10, 200, 30, 150]
    call(film_page, "(() => { const last = films.next('shown', (now) => now === 150);"
         " for (const frame of arguments[0]) film.show(frame); return last; })()", asked)  # fmt: skip
    assert film_page.run("return films.barCode()") == 150
    shown = [values[0] for name, *values in film_page.run("return films.events") if name == "shown"]
    assert shown[-1] == 150 and len(shown) < 1 + len(asked)


@pytest.mark.parametrize("name", ["h264_60", "vp9_120"])
def test_playing_tells_the_frames_as_they_pass(film_page, name):
    """In order, without going back, and what stands on the screen after a pause is the frame told."""
    truth = open_film(film_page, name)
    passed = call(film_page, "films.playUntil(0.25, 20)")
    assert passed == sorted(passed) and passed[-1] > passed[0]
    frame = call(film_page, "films.pause()")
    assert film_page.run("return film.frame") == frame
    assert film_page.run("return films.barCode()") == truth["numbers"][frame]
    # Never a frame off: that last seen, and no other.
    last = [values[0] for kind, *values in film_page.run("return films.events") if kind == "passing"][-1]
    assert frame == last


def test_a_film_that_has_played_stands_on_its_last_frame(film_page):
    truth = open_film(film_page, "trimmed_b_frames")
    last = shown(truth)[-1]
    call(film_page, "films.show(arguments[0])", last - 5)
    assert call(film_page, "(() => { const end = films.next('ended').then(() => films.next('shown'));"
                " film.play(1); return end; })()") == [last]  # fmt: skip
    assert film_page.run("return films.barCode()") == truth["numbers"][last]


@pytest.mark.parametrize("name", FAULTS)
def test_what_is_no_film_is_said(film_page, name):
    with pytest.raises(AssertionError) as failed:
        open_film(film_page, name)
    assert FAULTS[name] in str(failed.value)


@pytest.mark.only("chromium", "Debian's Chromium has no HEVC")
def test_a_codec_that_the_browser_lacks_is_said(film_page):
    with pytest.raises(AssertionError, match="Unplayable"):
        open_film(film_page, "hevc_60")


@pytest.mark.only("firefox", "Chromium goes to every frame of it")
def test_a_frame_that_the_browser_goes_past_is_said(film_page):
    """Never another frame in its place."""
    truth = open_film(film_page, "live_webm")
    with pytest.raises(AssertionError, match="Unreachable"):
        seen = call(film_page, "films.showAll(arguments[0])", shown(truth))["seen"]
        assert seen == truth["numbers"]


@pytest.mark.sharp
def test_fingers_look_closer_and_two_taps_show_all_again(film_page):
    page = film_page
    open_film(page, "h264_60")
    whole = page.run("return film.scale")
    x, y = page.run("return Array.from(film.to_page(160, 120))")
    pinch(page, x, y, 100, 300)
    page.wait_until("a closer look", lambda: page.run("return film.scale") == pytest.approx(3 * whole, rel=0.1))
    closer = page.run("return film.scale")
    # What was between the fingers still is.
    assert page.run("return Array.from(film.to_film(arguments[0], arguments[1]))", x, y) == pytest.approx([160, 120], abs=3)
    touch_drag(page, x, y, x + 60, y - 40)
    target = pytest.approx([x + 60, y - 40], abs=4)
    page.wait_until("it moved", lambda: page.run("return Array.from(film.to_page(160, 120))") == target)
    there = page.run("return Array.from(film.to_page(160, 120))")
    # The video itself lies where the points are said to be.
    left, top, width = page.run(
        "const { left, top, width } = document.querySelector('video').getBoundingClientRect(); return [left, top, width]"
    )
    assert [left + width / 2, width / 320] == pytest.approx([there[0], closer], rel=0.01)
    double_tap(page, x, y)
    page.wait_until("all of it", lambda: page.run("return film.scale") == pytest.approx(whole))


@pytest.mark.sharp
def test_a_mark_is_dragged_and_the_film_is_not(film_page):
    page = film_page
    open_film(page, "h264_60")
    page.run("film.let_take(100, 100, 20)")
    x, y = page.run("return Array.from(film.to_page(100, 100))")
    scale = page.run("return film.scale")
    touch_drag(page, x, y, x + 50 * scale, y + 30 * scale)
    assert page.run("return Array.from(film.to_page(100, 100))") == pytest.approx([x, y])
    [dropped] = [values for name, *values in page.run("return films.events") if name == "dropped"]
    assert dropped == pytest.approx([150, 130], abs=2)
    tap(page, x, y + 100)
    page.wait_until("a tap", lambda: page.run("return films.events.some(([name]) => name === 'tapped')"))


@pytest.mark.sharp
def test_what_is_drawn_over_the_film_lies_where_it_says(film_page):
    page = film_page
    open_film(page, "h264_60")
    x, y = page.run("return Array.from(film.to_page(200, 150))")
    pinch(page, x, y, 100, 200)
    page.run("film.draw(120, 110, 200, 150, 30)")
    page.next_frames()
    picture = Image.open(io.BytesIO(page.driver.get_screenshot_as_png())).convert("RGB")

    def is_red(x_px, y_px):
        at = page.run("return Array.from(film.to_page(arguments[0], arguments[1]))", x_px, y_px)
        red, green, blue = picture.getpixel(tuple(round(place) for place in at))
        return red > 240 and max(green, blue) < 30

    assert is_red(160, 130) and is_red(200, 120) and is_red(230, 150) and is_red(200, 180)
    assert not is_red(200, 135)


def test_nothing_of_a_closed_film_is_left(film_page):
    page = film_page
    page.run(
        "window.addresses = [];"
        "const revoke = URL.revokeObjectURL; URL.revokeObjectURL = (url) => { addresses.push(url); revoke(url); }"
    )
    open_film(page, "h264_60")
    address = page.run("return document.querySelector('video').src")
    # In the middle of what it is doing.
    page.run("film.play(1); film.show(40); films.close()")
    page.wait_until("no video", lambda: page.run("return document.querySelector('video') === null"))
    page.wait_until("no address", lambda: page.run("return addresses") == [address])
    page.next_frames(10)
    assert [entry for entry in page.console() if entry["level"] == "SEVERE"] == []


def test_a_large_film_takes_little_memory(film_page):
    """2 GB, gone through from end to end: less than 100 MB more in all processes of the browser."""
    film_page.next_frames(30)
    before, module_before = browser_memory(film_page), page_memory(film_page)
    truth = open_film(film_page, "large")
    order = [0, 700, 350]
    assert call(film_page, "films.showAll(arguments[0])", order)["seen"] == [truth["numbers"][frame] for frame in order]
    more, of_module = browser_memory(film_page) - before, page_memory(film_page) - module_before
    print(f"2 GB: {more / 1e6:.1f} MB more in the browser, {of_module / 1e6:.1f} MB of them in the module")
    assert more < 100e6 and of_module < 20e6


def page_memory(page):
    """Of the module, bytes."""
    return page.run("return films.memory()")


def browser_memory(page):
    """Of all processes that the driver has started, bytes; what several share is counted once (proc(5), Pss)."""
    children = {}
    for status in Path("/proc").glob("[0-9]*/stat"):
        try:
            after_name = status.read_text().rpartition(")")[2].split()
        except OSError:
            continue
        children.setdefault(int(after_name[1]), []).append(int(status.parent.name))
    found, waiting = 0, [page.driver.service.process.pid]
    while waiting:
        pid = waiting.pop()
        waiting += children.get(pid, [])
        try:
            rollup = Path(f"/proc/{pid}/smaps_rollup").read_text()
        except OSError:
            continue
        found += sum(int(line.split()[1]) for line in rollup.splitlines() if line.startswith("Pss:"))
    return 1024 * found


def test_how_long_the_next_frame_takes(film_page, request):
    """1080p at 240 a second, a key frame every 240: printed, never held against the machine."""
    open_film(film_page, "full_hd_240")
    count = 60 if request.config.getoption("--films") == "all" else 10
    took = call(film_page, "films.showAll(arguments[0])", list(range(200, 200 + count)))["took"][1:]
    print(f"next frame at 1080p: {statistics.median(took):.0f} ms, at most {max(took):.0f} ms")
