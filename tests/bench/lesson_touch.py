"""How long a step of a lesson takes to answer a touch on an old machine: one core at a quarter of this one's
speed (throttled in Chromium), drawing in software. Prints the time from the end of a touch until the page's real
controls and texts have changed, ms, over all steps of a lesson.

    lesson_touch.py DIST [LESSON]
"""

import os
import statistics
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "browser"))

import touch
from browser import chromium
from page import Page
from server import serving
from sight import reveal
from test_lesson import enter, said, tap, write

SLOWER = 4
SIZE = (1024, 768)

# From the touch's end to the first change of what is told, and to the next picture after it.
WATCH = """
window.answered = null;
let ended = null;
addEventListener("pointerup", () => (ended = performance.now()), { capture: true, once: true });
const seen = new MutationObserver(() => {
  if (ended === null || window.answered !== null) return;
  window.answered = performance.now() - ended;
  seen.disconnect();
});
seen.observe(document.body, { subtree: true, childList: true, characterData: true, attributes: true,
  attributeFilter: ["aria-pressed", "aria-label", "disabled", "value", "aria-valuetext"] });
"""


def timed(page, name, times):
    at = reveal(page, name)
    page.wait_until("rest", page.is_settled)
    page.run(WATCH)
    touch.tap(page, *at)
    times.append((name, page.wait_until("an answer", lambda: page.run("return window.answered"))))
    page.next_frames(4)


def main(dist, lesson="higher-or-tighter"):
    # The page's processes share one core.
    os.sched_setaffinity(0, {0})
    times = []
    with serving(dist) as site, chromium(SIZE, still=True) as driver:
        page = Page(driver, site).open().wait_ready()
        enter(page, lesson)
        driver.execute_cdp_cmd("Emulation.setCPUThrottlingRate", {"rate": SLOWER})
        timed(page, "lesson begin", times)
        while True:
            before = said(page, "step")
            if "lesson number" in page.rects():
                write(page, "lesson number", "1.5")
            elif "lesson words" in page.rects():
                write(page, "lesson words", "Maybe.")
            else:
                timed(page, "lesson option:1", times)
            if "lesson reason" in page.rects():
                write(page, "lesson reason", "Arms.")
            for _ in range(3):
                if said(page, "explanation"):
                    break
                if "lesson observation" in page.rects():
                    write(page, "lesson observation", "Faster.")
                timed(page, "lesson on", times)
            if "lesson on" not in page.rects():
                break
            timed(page, "lesson on", times)
            page.wait_until("the next step", lambda: said(page, "step") != before)
    for name, ms in times:
        print(f"{name:24} {ms:7.0f} ms")
    values = [ms for _, ms in times]
    print(f"{len(values)} touches: median {statistics.median(values):.0f} ms, most {max(values):.0f} ms")


if __name__ == "__main__":
    main(Path(sys.argv[1]), *sys.argv[2:])
