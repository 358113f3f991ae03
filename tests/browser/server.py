"""A built page, served by the same code that serves it to people, on a free port."""

import sys
import threading
from contextlib import contextmanager
from pathlib import Path

REPOSITORY = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(REPOSITORY / "web"))

from serve import make_server  # noqa: E402


@contextmanager
def serving(folder):
    """Yields the address under which `folder` is served, with a closing slash."""
    if not Path(folder).is_dir():
        raise SystemExit(f"{folder} is not there: build the page with web/run --build-only first.")
    server = make_server(folder)
    threading.Thread(target=server.serve_forever, daemon=True).start()
    try:
        yield f"http://127.0.0.1:{server.server_port}/"
    finally:
        server.shutdown()
        server.server_close()
