"""The page as a test sees it: texts, touch targets and picture."""

import io
import time

from PIL import Image

from browser import PATIENCE_S, console


class Page:
    def __init__(self, driver, address, is_open=False):
        self.driver = driver
        self.address = address
        self._is_open = is_open
        self._console = []

    def open(self, fragment=""):
        """Loads the page, or loads it again. A page that the pool has lent open is not loaded again."""
        if self._is_open and fragment == "":
            self._settle()
        else:
            self.driver.get(self.address + fragment)
        self._is_open = False
        return self

    def _settle(self):
        """Waits until the layout fits the present size."""
        self.wait_until(
            "a canvas of the present size",
            lambda: self.run(
                "const { width, height } = document.getElementById('stage');"
                "return Math.abs(width - innerWidth * devicePixelRatio) <= 1"
                " && Math.abs(height - innerHeight * devicePixelRatio) <= 1"
            ),
        )
        self.next_frames(4)
        self.still_rects()

    def run(self, script, *arguments):
        return self.driver.execute_script(script, *arguments)

    def wait_until(self, what, condition, timeout_s=PATIENCE_S):
        """Polls `condition` until it returns something true, and returns that."""
        deadline = time.monotonic() + timeout_s
        while True:
            value = condition()
            if value:
                return value
            if time.monotonic() > deadline:
                raise AssertionError(
                    f"{what}: not within {timeout_s} s; state {self.state()!r}, "
                    f"notice {self.notice()!r}, console {self.console()[-5:]}"
                )
            time.sleep(0.05)

    def wait_ready(self, timeout_s=PATIENCE_S):
        """Waits for the first picture; fails at once if the app could not start."""
        state = self.wait_until(
            "ready", lambda: self.state() != "loading" and self.state(), timeout_s
        )
        assert state == "ready", (state, self.console())
        return self

    def next_frames(self, count=2):
        """Waits for `count` animation frames of the browser."""
        self.driver.execute_async_script(
            """
            const [count, done] = arguments;
            const next = (left) => left > 0 ? requestAnimationFrame(() => next(left - 1)) : done();
            next(count);
            """,
            count,
        )

    # Texts

    def state(self):
        return self.run("return document.documentElement.dataset.state")

    def notice(self):
        return self.run("return document.getElementById('notice')?.textContent.trim()")

    def outputs(self):
        """The text of every readout, by quantity."""
        return self.run(
            "return Object.fromEntries([...document.querySelectorAll('output[data-quantity]')]"
            ".map((output) => [output.dataset.quantity, output.textContent.trim()]))"
        )

    def output(self, quantity):
        return self.outputs()[quantity]

    def is_settled(self):
        """Whether nothing moves, and the readouts are those of what is shown."""
        return self.run("return document.getElementById('readout').hasAttribute('data-settled')")

    def console(self):
        """Every console message so far: dictionaries with `level` and `message`."""
        self._console += console(self.driver)
        return self._console

    # Touch targets, in CSS pixels

    def rects(self):
        return self.run("return window.turnsAloft.rects()")

    def still_rects(self):
        """The touch targets, once they no longer move: egui lays out new parts over several frames."""
        before = None

        def still():
            nonlocal before
            earlier, before = before, self.rects()
            if earlier == before:
                return before
            self.next_frames()
            return None

        return self.wait_until("touch targets that no longer move", still)

    def centre(self, name):
        """The centre of a touch target, once it no longer moves."""
        rects = self.still_rects()
        assert name in rects, f"no touch target {name!r}; there are {sorted(rects)}"
        x, y, width, height = rects[name]
        return x + width / 2, y + height / 2

    # Picture

    def canvas_pixels(self):
        """The canvas as it is on the screen, as an RGB image in device pixels."""
        canvas = self.driver.find_element("id", "stage")
        return Image.open(io.BytesIO(canvas.screenshot_as_png)).convert("RGB")


def wait_for_output(page, quantity, predicate, timeout_s=PATIENCE_S):
    """Waits until nothing moves and the text of a readout satisfies `predicate`; returns the text."""

    def satisfied():
        if not page.is_settled():
            return None
        text = page.outputs().get(quantity)
        # A tuple, so that an empty text that satisfies counts as well.
        return text is not None and predicate(text) and (text,)

    try:
        return page.wait_until(quantity, satisfied, timeout_s)[0]
    except AssertionError as error:
        raise AssertionError(f"{error}; it says {page.outputs().get(quantity)!r}") from None
