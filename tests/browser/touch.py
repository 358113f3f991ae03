"""Touch gestures. Positions are CSS pixels of the page.

Between the steps of a drag the app gets frames, as with a real finger: a widget has to handle the
press before it can handle the movement.
"""

import math
from contextlib import contextmanager


def tap(page, x, y):
    _down(page, (x, y))
    page.next_frames()
    _up(page)
    page.next_frames()


def double_tap(page, x, y):
    """Two taps that are close together by the page's clock, however long drawing takes."""
    with _time_slowed(page):
        taps(page, [(x, y)] * 2)


@contextmanager
def _time_slowed(page, times=10):
    """Makes the page's clock so many times slower."""
    page.run(
        """
        const now = performance.now.bind(performance), start = now(), [times] = arguments;
        performance.now = () => start + (now() - start) / times;
        """,
        times,
    )
    yield
    page.run("delete performance.now")


def taps(page, places):
    """Taps without waiting in between."""
    for place in places:
        _down(page, place)
        _up(page)
    page.next_frames()


def touch_drag(page, x0, y0, x1, y1, steps=6):
    with held(page, (x0, y0), (x1, y1), steps):
        pass


def flick(page, x0, y0, x1, y1):
    """A quick drag by the page's clock, however long drawing takes."""
    with _time_slowed(page, times=100):
        touch_drag(page, x0, y0, x1, y1, steps=2)


@contextmanager
def held(page, start, end, steps=6):
    """A drag whose finger stays down while the body of `with` runs."""
    _down(page, start)
    page.next_frames()
    for station in _stations(start, end, steps):
        _move(page, station)
        page.next_frames()
    yield
    _up(page)
    page.next_frames()


def pinch(page, x, y, from_px, to_px, steps=6):
    """Moves two fingers, to the left and right of (x, y), from one distance to another."""

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
    # The protocol takes integers only.
    return {"type": "pointerMove", "duration": 0, "x": round(x), "y": round(y)}


def _send(page, kind, points, actions):
    if page.driver.name == "firefox":
        _act(page, [actions(x, y) for x, y in points])
    else:
        _dispatch(page, kind, points)


def _dispatch(page, kind, points):
    # By CDP, because chromedriver does not keep a touch down between two requests.
    page.driver.execute_cdp_cmd(
        "Input.dispatchTouchEvent",
        {
            "type": kind,
            "touchPoints": [{"x": x, "y": y, "id": finger} for finger, (x, y) in enumerate(points)],
        },
    )


def _act(page, fingers):
    """Performs the actions of all fingers at the same time (W3C WebDriver, 'Actions')."""
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
