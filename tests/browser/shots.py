"""Takes screenshots of a built page at several sizes, after performing the steps given.

    shots.py --dist dist-quick --out shots --sizes 1024x768 --tap play --wait 0.5 --name playing

Steps are done in the order given, on every size. A PLACE is X,Y in CSS pixels or the name of a
touch target, as in --drag takeoff_rate:+120,0 (from the target's middle, by 120 pixels).
"""

import argparse
import re
import sys
import time
from concurrent.futures import ThreadPoolExecutor
from contextlib import nullcontext
from pathlib import Path

import sight
import touch
from browser import chromium
from files import set_file
from page import Page
from server import REPOSITORY, serving

SIZES = "1366x1024,1024x768,768x1024,390x844"


def place(page, text):
    pair = re.fullmatch(r"(-?[\d.]+),(-?[\d.]+)", text)
    return (float(pair[1]), float(pair[2])) if pair else page.centre(text)


def drag(page, text):
    absolute = re.fullmatch(r"([\d.]+,[\d.]+),([\d.]+,[\d.]+)", text)
    if absolute:
        start, end = place(page, absolute[1]), place(page, absolute[2])
    else:
        name, _, by = text.rpartition(":")
        start = place(page, name)
        end = [a + float(b) for a, b in zip(start, by.split(","), strict=True)]
    touch.touch_drag(page, *start, *end)


def pinch(page, text):
    where, from_px, to_px = text.rsplit(":", 2)
    touch.pinch(page, *place(page, where), float(from_px), float(to_px))


def tap(page, text):
    touch.tap(page, *place(page, text))


def reveal(page, text):
    sight.reveal(page, text)


def choose_file(page, text):
    selector, _, path = text.partition("=")
    set_file(page, selector, Path(path).resolve())


def double_tap(page, text):
    touch.double_tap(page, *place(page, text))


def run_script(page, text):
    value = page.run(text)
    if value is not None:
        print(value)


def wait(page, text):
    time.sleep(float(text))


STEPS = {
    "--tap": ("PLACE", "tap", tap),
    "--reveal": ("NAME", "scroll by touch until a touch target is visible", reveal),
    "--file": ("SELECTOR=PATH", "choose a file in an input", choose_file),
    "--double-tap": ("PLACE", "tap twice", double_tap),
    "--drag": ("X0,Y0,X1,Y1 | PLACE:DX,DY", "drag one finger", drag),
    "--pinch": ("PLACE:FROM:TO", "move two fingers from one distance to another", pinch),
    "--js": ("SCRIPT", "run in the page; what it returns is printed", run_script),
    "--wait": ("SECONDS", "wait", wait),
}


def parse_arguments():
    parser = argparse.ArgumentParser(
        description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter
    )
    parser.add_argument("--dist", type=Path, default=REPOSITORY / "dist")
    parser.add_argument("--url", help="an address already served, instead of --dist")
    parser.add_argument("--out", type=Path, required=True, help="folder for the pictures")
    parser.add_argument("--sizes", default=SIZES, help=f"default {SIZES}")
    parser.add_argument("--scale", type=float, default=1, help="device pixels per CSS pixel")
    parser.add_argument("--name", default="", help="put before the size in the files' names")
    parser.add_argument("--hash", default="", help="put behind the address, as '#...'")
    parser.add_argument("--timeout", type=float, default=90, help="seconds allowed to get ready")
    parser.add_argument("--console", action="store_true", help="print all console messages")
    parser.add_argument("--outputs", action="store_true", help="print the readout")
    parser.add_argument("--rects", action="store_true", help="print the touch targets")
    parser.add_argument("--languages", default="en", help="wished for by the user, as in de,en")
    parser.add_argument("--flag", action="append", default=[], help="further flag for Chromium")

    class Step(argparse.Action):
        def __call__(self, parser, options, text, flag):
            options.steps.append((flag, text))

    parser.set_defaults(steps=[])
    for flag, (metavar, what, _) in STEPS.items():
        parser.add_argument(flag, action=Step, metavar=metavar, help=f"step: {what}")
    return parser.parse_args()


def shoot(address, size, options):
    """One size; returns whether all went well."""
    label = f"{size[0]}x{size[1]}"
    target = options.out / f"{options.name}{'-' if options.name else ''}{label}.png"
    well = True
    with chromium(size, options.scale, options.flag, languages=options.languages) as driver:
        page = Page(driver, address)
        started = time.monotonic()
        try:
            page.open(options.hash).wait_ready(options.timeout)
            ready_s = time.monotonic() - started
            for flag, text in options.steps:
                STEPS[flag][2](page, text)
            page.next_frames(3)
            print(f"{label}: ready after {ready_s:.1f} s -> {target}")
            if options.outputs:
                print(f"{label}:", page.outputs())
            if options.rects:
                print(f"{label}:", page.rects())
        except Exception as error:
            # A screenshot is taken after an error too.
            print(f"{label}: {error} -> {target}")
            well = False
        driver.save_screenshot(str(target))
        for entry in page.console():
            severe = entry["level"] == "SEVERE"
            well = well and not severe
            if severe or options.console:
                print(f"{label}: {entry['level']} {entry['message']}")
    return well


def main():
    options = parse_arguments()
    sizes = [tuple(map(int, size.split("x"))) for size in options.sizes.split(",")]
    options.out.mkdir(parents=True, exist_ok=True)
    with nullcontext(options.url) if options.url else serving(options.dist) as address:
        with ThreadPoolExecutor(max_workers=2) as pool:
            went_well = list(pool.map(lambda size: shoot(address, size, options), sizes))
    sys.exit(0 if all(went_well) else 1)


if __name__ == "__main__":
    main()
