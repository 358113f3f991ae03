"""Serves a built page: on this machine only, or to all in the same network where that is asked for.

    python3 serve.py DIST [--port N] [--room]
"""

import argparse
import functools
import socket
import sys
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer

try:
    import segno
except ImportError:
    # Only for the address as a QR code: web/run --room installs it.
    segno = None


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


# This machine only, and every machine that can reach this one.
ALONE = "127.0.0.1"
ROOM = "0.0.0.0"

# An address that no machine has (RFC 5737): the way to it shows by which address this one is reached.
ELSEWHERE = ("192.0.2.1", 9)


def make_server(folder, port=0, handler=PageHandler, host=ALONE):
    """A server of `folder`, not yet running; port 0 picks a free port."""
    handler = functools.partial(handler, directory=str(folder))
    return ThreadingHTTPServer((host, port), handler)


def own_address():
    """The address of this machine in its network; none without a network. Nothing is sent."""
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as way:
        try:
            way.connect(ELSEWHERE)
        except OSError:
            return None
        return way.getsockname()[0]


def invite(port):
    """Prints where others in the room find the page, also as a QR code."""
    address = own_address()
    if address is None or address.startswith("127."):
        print("This machine is in no network: others in the room can't reach it.", flush=True)
        return
    place = f"http://{address}:{port}/"
    # Drawn in two colours of the terminal: it can be read on a dark and on a light one.
    if segno is not None:
        segno.make(place, error="m").terminal(compact=True)
    print(f"For others in this network: {place}")
    print(
        "Without https a browser keeps nothing for later without a network, copies no links and"
        " gives no sensors; all else works. Whoever is in this network can open the page."
        " Nothing that is typed there is sent here.",
        flush=True,
    )


def main():
    arguments = argparse.ArgumentParser(description="Serve a built page.")
    arguments.add_argument("dist")
    arguments.add_argument("--port", type=int, default=8080)
    arguments.add_argument("--room", action="store_true", help="to all in the same network")
    options = arguments.parse_args()

    host = ROOM if options.room else ALONE
    try:
        server = make_server(options.dist, options.port, host=host)
    except (OSError, OverflowError):
        server = make_server(options.dist, host=host)
        print(f"Port {options.port} can't be had; using another.")
    print(f"Turns Aloft is at http://127.0.0.1:{server.server_port}/ - stop with Ctrl-C.", flush=True)
    if options.room:
        invite(server.server_port)
    try:
        server.serve_forever()
    except KeyboardInterrupt:
        sys.exit(0)


if __name__ == "__main__":
    main()
