"""Times both sides alternately and writes the ratios. `web/bench` builds the programs.

    python3 ratios.py START COMPARE TABLE ANSWERS MODULE PAGE COMPILERS NAME=PINOCCHIO...

Every native number is the median of many batches; in the browser it is the fastest batch. The sides are timed alternately in several rounds, of which the lowest number counts: other load on the machine can only make a number larger.
"""

import datetime
import os
import platform
import subprocess
import sys
from pathlib import Path

import ratios_page
from in_browser import loaded

ROUNDS = 4
# Many batches of about a millisecond, most of which are not interrupted.
BATCHES = 31
POSTURES_A_BATCH = 2000
FLIGHT_BATCHES = 201
FLIGHTS_A_BATCH = 4
# The order of `Call::ALL` in work.rs.
FLIGHTS = ["whole jump", "at another rate", "at another height"]
# In the order of `fit` in browser.rs.
FITS = ["fit with its ranges", "likeliest jump after a mark has moved"]
FIT_BATCHES = 7


def lines(*command):
    """The lines that a program prints: a key and a number."""
    done = subprocess.run(
        [str(word) for word in command], stdout=subprocess.PIPE, text=True, check=True
    )
    for line in done.stdout.splitlines():
        *key, number = line.split("\t")
        yield tuple(key), float(number)


class Lowest(dict):
    """The lowest number noted for each key."""

    def note(self, key, number):
        self[key] = min(number, self.get(key, number))


def measured(start, compare, table, answers, module, pinocchio):
    ours, theirs, browser = Lowest(), Lowest(), Lowest()
    with loaded(Path(module)) as in_browser:
        for turn in range(ROUNDS):
            print(f"Round {turn + 1} of {ROUNDS}.", flush=True)
            postures = [compare, "postures", start, table, answers, BATCHES, POSTURES_A_BATCH]
            for (key,), number in lines(*postures):
                ours.note(key, number)
            flights = [compare, "flights", start, FLIGHT_BATCHES, FLIGHTS_A_BATCH]
            for (key,), number in lines(*flights):
                ours.note(key, number)
            for (key,), number in lines(compare, "fits", FIT_BATCHES):
                ours.note(key, number)
            for build, program in pinocchio.items():
                for key, number in lines(program, table, answers, BATCHES, POSTURES_A_BATCH):
                    theirs.note((*key, build), number)
            for which, name in enumerate(FLIGHTS):
                browser.note(name, in_browser.fastest_ns(which))
            for which, name in enumerate(FITS):
                browser.note(name, in_browser.fastest_fit_ns(which))
        return ours, theirs, browser, in_browser.version


def processor():
    try:
        with open("/proc/cpuinfo", encoding="utf-8") as lines:
            return next(line.split(":", 1)[1].strip() for line in lines if "model name" in line)
    except (OSError, StopIteration):
        return platform.processor() or platform.machine()


def main(start, compare, table, answers, module, out, compilers, *pinocchio):
    builds = dict(build.split("=", 1) for build in pinocchio)
    ours, theirs, browser, version = measured(start, compare, table, answers, module, builds)
    # About 1 if nothing else runs; above the number of cores the times are too large.
    load = f"{os.getloadavg()[0]:.1f} programs at a time at the end, on {os.cpu_count()} cores"
    head = [f"{datetime.date.today()}, {processor()}", load, compilers, version]
    text = ratios_page.written(start, head, ours, theirs, browser)
    Path(out).write_text(text, encoding="utf-8")
    print(f"\n{text}\nWritten to {out}")


if __name__ == "__main__":
    main(*sys.argv[1:])
