"""Scrolling by touch to what is to be touched."""

import touch

# The offer of an update lies over the canvas.
BOTTOM = """
const offer = document.getElementById("update").getBoundingClientRect();
return offer.height > 0 ? offer.top : innerHeight;
"""


def reveal(page, name, top=0, at_x=None):
    """Scrolls until the whole target is visible below `top`; returns its centre.

    The finger is put down at `at_x`, or on the level of the target's middle, where it is to scroll.
    """

    def at_rest():
        """The target's rectangle, once nothing scrolls any more."""
        before = page.rects()[name]
        page.next_frames(4)
        return page.rects()[name] == before and before

    def seen():
        x, y, width, height = page.wait_until(f"{name} at rest", at_rest)
        bottom = page.run(BOTTOM)
        if top <= y and y + height <= bottom:
            return True
        middle = (top + bottom) / 2
        by = max(-200, min(200, middle - y - height / 2))
        from_y = middle - by / 2
        finger_x = x + width / 2 if at_x is None else at_x
        touch.touch_drag(page, finger_x, from_y, finger_x, from_y + by)
        return False

    page.wait_until(f"{name} in sight", seen)
    return page.centre(name)


def in_column(page, name):
    """The centre of a target in the column, scrolled into sight from below where it has to be. On an upright screen
    the finger stays in the lowest part: above the column are the picture and what goes through time."""
    page.wait_until(name, lambda: name in page.rects())
    width, height = page.run("return [innerWidth, innerHeight]")
    if width >= height:
        return reveal(page, name)

    def seen():
        _, y, _, high = page.still_rects()[name]
        below = y + high - page.run(BOTTOM)
        if below > 0:
            by = min(below + 20, 0.2 * height)
            touch.touch_drag(page, width / 2, 0.95 * height, width / 2, 0.95 * height - by)
        return below <= 0

    page.wait_until(f"{name} in sight", seen)
    return page.centre(name)
