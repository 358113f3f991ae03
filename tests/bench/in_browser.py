"""Times of flights and fits in the browser: the module of browser.rs in headless Chromium."""

import base64
import sys
from contextlib import contextmanager
from pathlib import Path

sys.path.append(str(Path(__file__).resolve().parents[1] / "browser"))

from browser import chromium

# The browser's compiler optimises while a module runs, hence calls to warm up. Its clock is too
# coarse for batches shorter than the time between two interruptions, so the fastest batch counts.
WARM_MS = 600
BATCH_MS = 50
BATCHES = 25
FIT_BATCHES = 5
LOAD = """
const done = arguments[arguments.length - 1];
const bytes = Uint8Array.from(atob(arguments[0]), (letter) => letter.charCodeAt(0));
WebAssembly.instantiate(bytes).then(
  ({ instance }) => { Object.assign(window, instance.exports); done(""); },
  (error) => done(String(error)),
);
"""
TIME = """
const [name, which, warm, least, batches] = arguments;
const timed = (calls) => {
  const start = performance.now();
  const turns = window[name](which, calls);
  if (!(turns > 0)) throw new Error(`${name} ${which} returned ${turns} turns`);
  return performance.now() - start;
};
let calls = 1;
for (const start = performance.now(); performance.now() - start < warm; ) timed(calls);
while (timed(calls) < least) calls *= 2;
const taken = Array.from({ length: batches }, () => timed(calls) / calls);
return Math.min(...taken) * 1e6;
"""


class Module:
    def __init__(self, driver, path):
        self._driver = driver
        self.version = f"Chromium {driver.capabilities['browserVersion']}"
        # The new-tab page may not compile modules.
        driver.get("about:blank")
        problem = driver.execute_async_script(LOAD, base64.b64encode(path.read_bytes()).decode())
        if problem:
            raise SystemExit(f"The browser refused {path}: {problem}")

    def fastest_ns(self, which):
        """Time of a call of the kind with index `which` in `Call::ALL` of work.rs: the fastest batch."""
        return self._driver.execute_script(TIME, "fly", which, WARM_MS, BATCH_MS, BATCHES)

    def fastest_fit_ns(self, which):
        """Time of a fit, as `FITS` of ratios.py has them: the fastest batch."""
        return self._driver.execute_script(TIME, "fit", which, WARM_MS, BATCH_MS, FIT_BATCHES)


@contextmanager
def loaded(path):
    with chromium((800, 600)) as driver:
        driver.set_script_timeout(60)
        yield Module(driver, path)
