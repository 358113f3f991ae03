"""Sends random input to the page for a long time, and monitors its memory and its console.

    endure.py DIST MINUTES REPORT
"""

import random
import statistics
import sys
import tempfile
import time
from pathlib import Path

sys.path.append(str(Path(__file__).resolve().parents[1] / "browser"))

import touch
from browser import chromium, console, resize
from page import Page
from server import serving

SIZES = [(1366, 1024), (1024, 768), (768, 1024), (390, 844)]
# Fixed, so that runs are reproducible.
SEED = 20261126

# Messages of the engine about its software rendering, which are ignored.
OF_THE_ENGINE = ("GL Driver Message", "WEBGL_debug_renderer_info")

# After the first fifth of the time everything has been opened and drawn once. The medians of the
# second and the last fifth are compared: what is open or not yet freed varies from minute to
# minute; a leak keeps growing.
FIFTHS = 5
MOST_GROWTH = 1.10


class PageWithoutDriverObjects(Page):
    """Evaluates by CDP, because the driver leaves objects in the page's heap with every script."""

    def run(self, script):
        return self._evaluate(f"(() => {{ {script} }})()")

    def next_frames(self, count=2):
        wait = "await new Promise(requestAnimationFrame);" * count
        self._evaluate(f"(async () => {{ {wait} }})()")

    def _evaluate(self, expression):
        wanted = {"expression": expression, "returnByValue": True, "awaitPromise": True}
        return self.driver.execute_cdp_cmd("Runtime.evaluate", wanted)["result"].get("value")


def watch(page):
    """JavaScript heap after a collection (MB), the module's memory (MB), number of DOM nodes."""
    page.driver.execute_cdp_cmd("HeapProfiler.collectGarbage", {})
    measured = page.driver.execute_cdp_cmd("Performance.getMetrics", {})["metrics"]
    metrics = {metric["name"]: metric["value"] for metric in measured}
    return {
        "heap_mb": metrics["JSHeapUsedSize"] / 1e6,
        "module_mb": page.run("return window.turnsAloft.memoryBytes()") / 1e6,
        "elements": metrics["Nodes"],
    }


def anywhere(page, chance):
    width, height = page.run("return [innerWidth, innerHeight]")
    return chance.uniform(1, width - 2), chance.uniform(1, height - 2)


def drag_anything(page, chance):
    sliders = [rect for name, rect in page.rects().items() if name.startswith("slider:")]
    if sliders:
        x, y, width, height = chance.choice(sliders)
        row = y + 0.7 * height
        if 1 < row < page.run("return innerHeight") - 1:
            touch.touch_drag(page, x + 0.5 * width, row, x + chance.random() * width, row)


def do_something(page, chance):
    what = chance.random()
    if what < 0.45:
        touch.tap(page, *anywhere(page, chance))
    elif what < 0.65:
        touch.touch_drag(page, *anywhere(page, chance), *anywhere(page, chance))
    elif what < 0.85:
        drag_anything(page, chance)
    elif what < 0.95:
        questions = [name for name in page.rects() if name.startswith("question:")]
        if questions:
            touch.tap(page, *page.centre(chance.choice(questions)))
    elif what < 0.98:
        touch.pinch(page, *anywhere(page, chance), 60, chance.uniform(20, 200))
    else:
        resize(page.driver, chance.choice(SIZES))
        page.next_frames(3)


def said(driver):
    return [
        entry["message"]
        for entry in console(driver)
        if not any(text in entry["message"] for text in OF_THE_ENGINE)
    ]


def play(page, minutes):
    chance = random.Random(SEED)
    start = time.monotonic()
    samples, steps = [], 0
    touch.tap(page, *page.centre("repeat"))
    for minute in range(1, minutes + 1):
        while time.monotonic() < start + 60 * minute:
            try:
                do_something(page, chance)
            except AssertionError:
                # The target has disappeared meanwhile.
                pass
            steps += 1
        samples.append(watch(page))
        print(f"{minute:>3} min, {steps} steps:", samples[-1], flush=True)
        assert page.state() == "ready", page.state()
    return samples, steps


def fifth(samples, which):
    """Medians over one fifth of the samples, by name."""
    part = samples[which * len(samples) // FIFTHS : (which + 1) * len(samples) // FIFTHS]
    return {name: statistics.median(sample[name] for sample in part) for name in samples[0]}


def main(dist, minutes, report):
    with (
        tempfile.TemporaryDirectory() as downloads,
        serving(dist) as address,
        chromium(SIZES[1], scale=0.5, downloads=downloads) as driver,
    ):
        driver.execute_cdp_cmd("Performance.enable", {})
        page = PageWithoutDriverObjects(driver, address).open().wait_ready()
        # Bevy logs its graphics adapter once, at the start.
        said(driver)
        samples, steps = play(page, minutes)
        messages = said(driver)
        version = driver.capabilities["browserVersion"]
    settled, end = fifth(samples, 1), fifth(samples, FIFTHS - 1)
    growth = {name: end[name] / settled[name] for name in settled}
    lines = [
        f"# {minutes} minutes of play and random input",
        "",
        f"- Chromium {version}, headless, drawing in software; {steps} touches, drags and pinches",
        *(
            f"- {name}: {samples[0][name]:.1f} after a minute, {settled[name]:.1f} once settled,"
            f" {end[name]:.1f} at the end ({growth[name]:.3f} times the settled)"
            for name in settled
        ),
        f"- console messages after the start: {len(messages)}",
        *(f"    {message}" for message in sorted(set(messages))[:20]),
        "",
    ]
    Path(report).write_text("\n".join(lines))
    print("\n".join(lines))
    sys.exit(messages != [] or max(growth.values()) > MOST_GROWTH)


if __name__ == "__main__":
    main(Path(sys.argv[1]), int(sys.argv[2]), sys.argv[3])
