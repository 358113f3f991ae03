"""Compares the page with the smallest page of the same crates, in one run.

    weigh.py DIST SMALLEST REPORT
"""

import os
import statistics
import sys
import time
from pathlib import Path

sys.path.append(str(Path(__file__).resolve().parents[1] / "browser"))

import touch
from browser import chromium
from page import Page
from server import serving  # puts web/ on the path
from budget import BUDGET, download, record_smallest

SIZE = (1024, 768)
STARTS = 7
FRAMES_S = 6
REST_S = 20

# Notes the time of the first pictures, ms after navigation; both pages signal it in the same way.
WATCH = """
new MutationObserver((_, watcher) => {
  if (document.documentElement?.dataset.state !== "ready") return;
  window.readyAt = performance.now();
  watcher.disconnect();
}).observe(document, { subtree: true, childList: true, attributeFilter: ["data-state"] });
"""

# Time from each frame to the next.
FRAMES = """
const [seconds, done] = arguments;
const times = [];
const start = performance.now();
const next = (now) => {
  times.push(now);
  if (performance.now() - start < 1000 * seconds) requestAnimationFrame(next);
  else done(times.slice(1).map((time, i) => time - times[i]));
};
requestAnimationFrame(next);
"""


def open_page(driver, address):
    driver.execute_cdp_cmd("Page.addScriptToEvaluateOnNewDocument", {"source": WATCH})
    page = Page(driver, address).open()
    page.wait_until("ready", lambda: page.run("return window.readyAt"))
    return page


def start_ms(address):
    with chromium(SIZE) as driver:
        return open_page(driver, address).run("return window.readyAt")


def frame_ms(address, before=None):
    """Median time between two frames while something moves."""
    with chromium(SIZE, still=before is not None) as driver:
        page = open_page(driver, address)
        if before:
            before(page)
        time.sleep(1)
        driver.set_script_timeout(60)
        return statistics.median(driver.execute_async_script(FRAMES, FRAMES_S))


def play(page):
    """Plays the jump repeatedly, once it is at rest on its landing."""
    page.wait_until("rest", lambda: page.output("phase") == "landed")
    touch.tap(page, *page.centre("repeat"))
    touch.tap(page, *page.centre("play"))


# Median times of the app per frame: of the panels (the flight that a slider sets, readouts,
# charts), and of everything except the renderer.
WORK = "return [window.turnsAloft.panelsMs(), window.turnsAloft.workMs()]"


def work_ms(address):
    """The times while a slider is dragged, and while only the playhead moves."""
    # Few pixels, so that software rendering takes little of the processor.
    with chromium(SIZE, scale=0.25, still=True) as driver:
        page = open_page(driver, address)
        page.wait_until("rest", lambda: page.output("phase") == "landed")
        x, y, width, height = page.rects()["slider:takeoff_rate_rad_s"]
        row = y + 0.7 * height
        for there in (0.8, 0.2) * 3:
            touch.touch_drag(page, x + 0.5 * width, row, x + there * width, row, steps=25)
        dragged = page.run(WORK)
        play(page)
        time.sleep(8)
        return dragged, page.run(WORK)


def used_s(processes):
    """Processor time of these processes so far, s."""
    ticks = 0
    for process in processes:
        try:
            fields = Path(f"/proc/{process}/stat").read_text().rpartition(")")[2].split()
        except FileNotFoundError:
            continue
        ticks += int(fields[11]) + int(fields[12])
    return ticks / os.sysconf("SC_CLK_TCK")


def descendants(process):
    # Any thread of the process may have started children.
    lists = Path(f"/proc/{process}/task").glob("*/children")
    children = [int(child) for list_ in lists for child in list_.read_text().split()]
    return [process, *(below for child in children for below in descendants(child))]


def rest_share(address):
    """Share of one core that all processes of the browser use while the page is at rest."""
    with chromium(SIZE, still=True) as driver:
        page = open_page(driver, address)
        page.wait_until("rest", lambda: page.output("phase") == "landed")
        time.sleep(5)
        processes = descendants(driver.service.process.pid)
        before, started = used_s(processes), time.monotonic()
        time.sleep(REST_S)
        return (used_s(processes) - before) / (time.monotonic() - started)


def row(what, ours, theirs, digits, unit, most):
    ratio = ours / theirs
    verdict = "met" if ratio <= most else "**not met**"
    numbers = [f"{number:.{digits}f} {unit}" for number in (ours, theirs)]
    return f"| {what} | {' | '.join(numbers)} | {ratio:.2f} | <= {most:.2f} | {verdict} |"


def main(dist, smallest, report):
    with serving(dist) as ours, serving(smallest) as theirs:
        sizes = [download(folder) / 1e6 for folder in (dist, smallest)]
        record_smallest(download(smallest))
        # Alternately, so that other load on the machine affects both.
        starts = [(start_ms(ours), start_ms(theirs)) for _ in range(STARTS)]
        start = [statistics.median(times) / 1e3 for times in zip(*starts)]
        frames = frame_ms(ours, play), frame_ms(theirs)
        dragged, played = work_ms(ours)
        rest = rest_share(ours)
        with chromium(SIZE) as driver:
            version = driver.capabilities["browserVersion"]
    lines = [
        "# The page against the smallest page of its stack",
        "",
        f"- Chromium {version}, headless, drawing in software; {SIZE[0]} x {SIZE[1]}",
        f"- start: median of {STARTS}, each in a new browser, to the fourth frame",
        f"- frames: median over {FRAMES_S} s, the jump playing, the cube turning",
        "",
        "| what | the page | smallest | ratio | wanted | |",
        "| --- | --- | --- | --- | --- | --- |",
        row("to download, compressed", *sizes, 2, "MB", BUDGET),
        row("start", *start, 2, "s", 1.15),
        row("frame", *frames, 1, "ms", 1.20),
        "",
        "The app's own work on a frame, the median of 120 frames:",
        "",
        "| | the flight, readouts and charts | everything but the renderer |",
        "| --- | --- | --- |",
        f"| a slider is dragged (wanted < 1 ms) | {dragged[0]:.2f} ms | {dragged[1]:.2f} ms |",
        f"| the jump plays | {played[0]:.2f} ms | {played[1]:.2f} ms |",
        "",
        f"At rest the browser takes {100 * rest:.2f} % of a core over {REST_S} s (wanted < 2 %).",
        "",
    ]
    Path(report).write_text("\n".join(lines))
    print("\n".join(lines))


if __name__ == "__main__":
    main(*map(Path, sys.argv[1:]))
