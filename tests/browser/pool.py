"""Browsers that one test hands to the next: starting one takes longer than most tests.

What a page can leave behind - storage, kept files, workers - is cleared in between; a browser whose
test has failed or has done anything else to it is not handed on.
"""

from contextlib import ExitStack

from browser import ENGINES, console, resize

# Any file of the site that runs nothing: what the page has kept is cleared from there.
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


class Pool:
    def __init__(self, engine, site, downloads):
        self.engine = engine
        self._site = site
        self._downloads = downloads
        self._idle = []
        self._browsers = ExitStack()

    def lend(self, size, **options):
        """A browser with these options, nothing remembered, and the way to give it back."""
        for lent in self._idle:
            driver, has = lent
            if has == options:
                self._idle.remove(lent)
                resize(driver, size)
                return driver, lambda: self._take_back(driver, options)
        driver = self._browsers.enter_context(self.fresh(size, **options))
        return driver, lambda: self._take_back(driver, options)

    def fresh(self, size, **options):
        """One that is used only once."""
        return ENGINES[self.engine](size, downloads=self._downloads, **options)

    def _take_back(self, driver, options):
        driver.get(self._site + QUIET_FILE)
        problem = driver.execute_async_script(CLEAR)
        assert problem == "", problem
        driver.get("about:blank")
        console(driver)
        self._idle.append((driver, options))

    def close(self):
        self._browsers.close()
