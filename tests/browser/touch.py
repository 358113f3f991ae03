"""Fingers on the screen. Positions are CSS pixels of the page.

Between the stations of a drag the app gets time to draw, as under a real finger: a widget has to
see the finger come down before it can follow it.
"""

import math
from contextlib import contextmanager


def tap(page, x, y):
    _down(page, (x, y))
    page.next_frames()
    _up(page)
    page.next_frames()


def double_tap(page, x, y):
    """Two taps that are one after the other by the page's clock, however long drawing takes."""
    with _time_slowed(page):
        taps(page, [(x, y)] * 2)


@contextmanager
def _time_slowed(page):
    """Meanwhile time passes for the page at a tenth of its speed."""
    page.run(
        """
        const now = performance.now.bind(performance), start = now();
        performance.now = () => start + (now() - start) / 10;
        """
    )
    yield
    page.run("delete performance.now")


def taps(page, places):
    """One after the other, without waiting in between."""
    for place in places:
        _down(page, place)
        _up(page)
    page.next_frames()


def touch_drag(page, x0, y0, x1, y1, steps=6):
    _down(page, (x0, y0))
    page.next_frames()
    for station in _stations((x0, y0), (x1, y1), steps):
        _move(page, station)
        page.next_frames()
    _up(page)
    page.next_frames()


def pinch(page, x, y, from_px, to_px, steps=6):
    """Two fingers about (x, y), side by side, moving from one distance to another."""

    def fingers(distance):
        return (x - distance / 2, y), (x + distance / 2, y)

    _down(page, *fingers(from_px))
    page.next_frames()
    for (distance,) in _stations((from_px,), (to_px,), steps):
        _move(page, *fingers(distance))
        page.next_frames()
    _up(page, 2)
    page.next_frames()


def _stations(start, end, steps):
    for step in range(1, steps + 1):
        part = (1 - math.cos(math.pi * step / steps)) / 2
        yield tuple(a + (b - a) * part for a, b in zip(start, end))


def _down(page, *points):
    _send(page, "touchStart", points, lambda x, y: [_to(x, y), {"type": "pointerDown", "button": 0}])


def _move(page, *points):
    _send(page, "touchMove", points, lambda x, y: [_to(x, y)])


def _up(page, fingers=1):
    if page.driver.name == "firefox":
        _act(page, [[{"type": "pointerUp", "button": 0}]] * fingers)
    else:
        _dispatch(page, "touchEnd", [])


def _to(x, y):
    # The protocol counts whole pixels.
    return {"type": "pointerMove", "duration": 0, "x": round(x), "y": round(y)}


def _send(page, kind, points, actions):
    if page.driver.name == "firefox":
        _act(page, [actions(x, y) for x, y in points])
    else:
        _dispatch(page, kind, points)


def _dispatch(page, kind, points):
    # Chromium's driver forgets between two requests that a finger is down; the browser does not.
    page.driver.execute_cdp_cmd(
        "Input.dispatchTouchEvent",
        {
            "type": kind,
            "touchPoints": [{"x": x, "y": y, "id": finger} for finger, (x, y) in enumerate(points)],
        },
    )


def _act(page, fingers):
    """What each finger does, all at the same time (W3C WebDriver, 'Actions')."""
    page.driver.execute(
        "actions",
        {
            "actions": [
                {
                    "type": "pointer",
                    "id": f"finger {number}",
                    "parameters": {"pointerType": "touch"},
                    "actions": actions,
                }
                for number, actions in enumerate(fingers)
            ]
        },
    )
