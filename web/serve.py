"""Serves a built page on this machine only.

    python3 serve.py DIST [--port N]
"""

import argparse
import functools
import sys
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer


class PageHandler(SimpleHTTPRequestHandler):
    # Browsers compile a module while it is being downloaded only if its MIME type is right.
    extensions_map = {
        **SimpleHTTPRequestHandler.extensions_map,
        ".wasm": "application/wasm",
        ".js": "text/javascript",
        ".svg": "image/svg+xml",
        ".json": "application/json",
        ".webmanifest": "application/manifest+json",
    }

    def end_headers(self):
        # A page that has been rebuilt must not come from the browser's cache.
        self.send_header("Cache-Control", "no-cache")
        super().end_headers()

    def log_message(self, *args):
        pass


def make_server(folder, port=0, handler=PageHandler):
    """A server of `folder`, not yet running; port 0 picks a free port."""
    handler = functools.partial(handler, directory=str(folder))
    return ThreadingHTTPServer(("127.0.0.1", port), handler)


def main():
    arguments = argparse.ArgumentParser(description="Serve a built page on 127.0.0.1.")
    arguments.add_argument("dist")
    arguments.add_argument("--port", type=int, default=8080)
    options = arguments.parse_args()

    try:
        server = make_server(options.dist, options.port)
    except (OSError, OverflowError):
        server = make_server(options.dist)
        print(f"Port {options.port} can't be had; using another.")
    print(f"Turns Aloft is at http://127.0.0.1:{server.server_port}/ - stop with Ctrl-C.", flush=True)
    try:
        server.serve_forever()
    except KeyboardInterrupt:
        sys.exit(0)


if __name__ == "__main__":
    main()
