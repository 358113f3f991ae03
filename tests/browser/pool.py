"""A pool of browsers that tests share, because starting one takes longer than most tests.

What a page can leave behind (storage, caches, service workers) is cleared before the next test, which
loads the page again. Only a test that changes nothing gets the open page of another such test, resized
to its own size. A browser whose test has failed is closed.
"""

from contextlib import ExitStack
from dataclasses import dataclass

from browser import ENGINES, console, resize

# Any file of the site without a script: storage and caches are cleared while it is open.
QUIET_FILE = "icons/icon-192.png"

CLEAR = """
const done = arguments[0];
localStorage.clear();
sessionStorage.clear();
Promise.all([
  caches.keys().then((names) => Promise.all(names.map((name) => caches.delete(name)))),
  navigator.serviceWorker.getRegistrations()
    .then((all) => Promise.all(all.map((registration) => registration.unregister()))),
]).then(() => done(""), (error) => done(String(error)));
"""


@dataclass
class Lent:
    driver: object
    options: dict
    running: ExitStack
    # Whether the page is open and nothing has been changed on it since it was loaded.
    untouched: bool = False


class Pool:
    def __init__(self, engine, site, downloads):
        self.engine = engine
        self._site = site
        self._downloads = downloads
        self._idle = []

    def lend(self, size, untouched, **options):
        """A browser with these options; `untouched`: the test can use a page that is open already."""
        fitting = [lent for lent in self._idle if lent.options == options]
        # Prefers a browser that is in the requested state already.
        fitting.sort(key=lambda lent: lent.untouched != untouched)
        if fitting:
            lent = fitting[0]
            self._idle.remove(lent)
            if lent.untouched and not untouched:
                self._clear(lent)
            resize(lent.driver, size)
            return lent
        running = ExitStack()
        return Lent(running.enter_context(self.fresh(size, **options)), options, running)

    def fresh(self, size, **options):
        """A browser that is used only once."""
        return ENGINES[self.engine](size, downloads=self._downloads, **options)

    def take_back(self, lent, untouched):
        lent.untouched = untouched
        if not untouched:
            self._clear(lent)
        self._idle.append(lent)

    def discard(self, lent):
        lent.running.close()

    def close(self):
        for lent in self._idle:
            lent.running.close()

    def _clear(self, lent):
        lent.driver.get(self._site + QUIET_FILE)
        problem = lent.driver.execute_async_script(CLEAR)
        assert problem == "", problem
        lent.driver.get("about:blank")
        console(lent.driver)
        lent.untouched = False
