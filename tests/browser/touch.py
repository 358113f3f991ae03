"""Fingers on the screen. Positions are CSS pixels of the page.

Between the stations of a drag the app gets time to draw, as under a real finger: a widget has to
see the finger come down before it can follow it.
"""

import math


def tap(page, x, y):
    _act(page, [_down(x, y)])
    page.next_frames()
    _act(page, [_up()])
    page.next_frames()


def double_tap(page, x, y):
    # In one go: drawing slowly must not stretch it into two single taps.
    _act(page, [_down(x, y) + _up() + _down(x, y) + _up()])
    page.next_frames()


def taps(page, places):
    """One after the other without waiting."""
    _act(page, [[step for x, y in places for step in _down(x, y) + _up()]])
    page.next_frames()


def touch_drag(page, x0, y0, x1, y1, steps=6):
    _act(page, [_down(x0, y0)])
    page.next_frames()
    for x, y in _stations((x0, y0), (x1, y1), steps):
        _act(page, [_move(x, y)])
        page.next_frames()
    _act(page, [_up()])
    page.next_frames()


def pinch(page, x, y, from_px, to_px, steps=6):
    """Two fingers about (x, y), side by side, moving from one distance to another."""

    def fingers(does, distance):
        return [does(x - distance / 2, y), does(x + distance / 2, y)]

    _act(page, fingers(_down, from_px))
    page.next_frames()
    for (distance,) in _stations((from_px,), (to_px,), steps):
        _act(page, fingers(_move, distance))
        page.next_frames()
    _act(page, [_up(), _up()])
    page.next_frames()


def _stations(start, end, steps):
    for step in range(1, steps + 1):
        part = (1 - math.cos(math.pi * step / steps)) / 2
        yield tuple(a + (b - a) * part for a, b in zip(start, end))


def _move(x, y):
    # The protocol counts whole pixels.
    return [{"type": "pointerMove", "duration": 0, "x": round(x), "y": round(y)}]


def _down(x, y):
    return [*_move(x, y), {"type": "pointerDown", "button": 0}]


def _up():
    return [{"type": "pointerUp", "button": 0}]


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
