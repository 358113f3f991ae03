"""The page served to a room: only when that is asked for, with an address for the others."""

import re
import subprocess
import sys
import urllib.request

import pytest

from server import REPOSITORY

SERVE = REPOSITORY / "web" / "serve.py"


def started(dist, *options):
    command = [sys.executable, "-u", SERVE, dist, "--port", "0", *options]
    return subprocess.Popen(command, stdout=subprocess.PIPE, text=True)


def listens(port):
    """The addresses at which something listens to this port (proc(5), /proc/net/tcp: in hexadecimal)."""
    with open("/proc/net/tcp", encoding="ascii") as table:
        rows = [line.split() for line in list(table)[1:]]
    state_listen = "0A"
    return {row[1].split(":")[0] for row in rows if row[3] == state_listen and int(row[1].split(":")[1], 16) == port}


@pytest.mark.parametrize("options, address", [((), "0100007F"), (("--room",), "00000000")])
def test_it_listens_to_others_only_where_that_is_asked_for(dist, options, address):
    with started(dist, *options) as server:
        try:
            port = int(re.search(r":(\d+)/", server.stdout.readline())[1])
            assert listens(port) == {address}
            with urllib.request.urlopen(f"http://127.0.0.1:{port}/") as answer:
                assert b"Turns Aloft" in answer.read()
        finally:
            server.terminate()
