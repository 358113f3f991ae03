"""Fingers on the screen. Positions are CSS pixels of the page.

Between the stations of a drag the app gets time to draw, as under a real finger: a widget has to
see the finger come down before it can follow it.
"""

import math


def tap(page, x, y):
    _send(page, "touchStart", (x, y))
    page.next_frames()
    _send(page, "touchEnd")
    page.next_frames()


def double_tap(page, x, y):
    # Without waiting in between: drawing slowly must not stretch it into two single taps.
    for _ in range(2):
        _send(page, "touchStart", (x, y))
        _send(page, "touchEnd")
    page.next_frames()


def touch_drag(page, x0, y0, x1, y1, steps=6):
    _send(page, "touchStart", (x0, y0))
    page.next_frames()
    for x, y in _stations((x0, y0), (x1, y1), steps):
        _send(page, "touchMove", (x, y))
        page.next_frames()
    _send(page, "touchEnd")
    page.next_frames()


def pinch(page, x, y, from_px, to_px, steps=6):
    """Two fingers about (x, y), side by side, moving from one distance to another."""

    def fingers(distance):
        return (x - distance / 2, y), (x + distance / 2, y)

    _send(page, "touchStart", *fingers(from_px))
    page.next_frames()
    for (distance,) in _stations((from_px,), (to_px,), steps):
        _send(page, "touchMove", *fingers(distance))
        page.next_frames()
    _send(page, "touchEnd")
    page.next_frames()


def _stations(start, end, steps):
    for step in range(1, steps + 1):
        part = (1 - math.cos(math.pi * step / steps)) / 2
        yield tuple(a + (b - a) * part for a, b in zip(start, end))


def _send(page, kind, *points):
    page.driver.execute_cdp_cmd(
        "Input.dispatchTouchEvent",
        {
            "type": kind,
            "touchPoints": [{"x": x, "y": y, "id": finger} for finger, (x, y) in enumerate(points)],
        },
    )
