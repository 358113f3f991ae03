"""Serves a built page on a free port, by the same code as web/run."""

import functools
import sys
import threading
from contextlib import contextmanager
from pathlib import Path

REPOSITORY = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(REPOSITORY / "web"))

from serve import PageHandler, make_server  # noqa: E402

# A module sent slowly: number of parts, and the time between them, s.
PARTS, APART_S = 300, 0.1


class SlowHandler(PageHandler):
    """Sends the module over half a minute, until the event `hurry` is set."""

    def __init__(self, *args, hurry, **options):
        self.hurry = hurry
        super().__init__(*args, **options)

    def copyfile(self, source, outputfile):
        if not self.path.endswith(".wasm"):
            super().copyfile(source, outputfile)
            return
        module = source.read()
        size = len(module) // PARTS + 1
        for start in range(0, len(module), size):
            self.hurry.wait(APART_S)
            outputfile.write(module[start : start + size])


@contextmanager
def serving_slowly(folder):
    """Yields the address under which `folder` is served, and the event that ends the slowness."""
    hurry = threading.Event()
    with serving(folder, functools.partial(SlowHandler, hurry=hurry)) as address:
        yield address, hurry
        hurry.set()


@contextmanager
def serving(folder, handler=PageHandler):
    """Yields the address under which `folder` is served, with a closing slash."""
    if not Path(folder).is_dir():
        raise SystemExit(f"{folder} is not there: build the page with web/run --build-only first.")
    server = make_server(folder, handler=handler)
    threading.Thread(target=server.serve_forever, daemon=True).start()
    try:
        yield f"http://127.0.0.1:{server.server_port}/"
    finally:
        server.shutdown()
        server.server_close()
