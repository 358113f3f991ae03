"""The release made by `web/publish`: checked by its checksums, unpacked, served from a subfolder by a
plain server, and opened."""

import re
import subprocess
import sys
import urllib.error
import urllib.request
import zipfile
from contextlib import contextmanager

import pytest

import pack
from command import assert_equal, fly
from test_jump import at_rest
from test_offline import console_errors, wait_cached


@pytest.fixture(scope="module")
def published(dist, tmp_path_factory):
    out = tmp_path_factory.mktemp("published")
    pack.main(dist, out)
    return out


def only(found):
    [path] = found
    return path


def check_sums(folder, sums):
    """Checks with sha256sum, as users of the release would."""
    subprocess.run(["sha256sum", "--check", "--strict", "--quiet", sums], cwd=folder, check=True)


@contextmanager
def plain_server(folder):
    """Python's own web server without special settings; yields its address."""
    command = [sys.executable, "-u", "-m", "http.server", "0", "--bind", "127.0.0.1"]
    with subprocess.Popen(
        command, cwd=folder, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True
    ) as server:
        try:
            yield re.search(r"http://[\d.:]+/", server.stdout.readline())[0]
        finally:
            server.terminate()


def test_the_sums_are_right_and_leave_no_file_out(published):
    for sums in published.glob("*.sha256"):
        check_sums(published, sums.name)
    assert len(list(published.glob("*.sha256"))) == 2
    folder = only(path for path in published.iterdir() if path.is_dir())
    check_sums(folder, pack.SUMS)
    listed = {line.split("  ")[1] for line in (folder / pack.SUMS).read_text().splitlines()}
    files = {str(path.relative_to(folder)) for path in folder.rglob("*") if path.is_file()}
    assert listed == files - {pack.SUMS}
    with zipfile.ZipFile(only(published.glob("*.zip"))) as archive:
        assert archive.testzip() is None
        assert set(archive.namelist()) == files


def test_the_same_page_makes_the_same_zip(published, dist, tmp_path):
    pack.main(dist, tmp_path)
    first, second = (only(folder.glob("*.zip")) for folder in (published, tmp_path))
    assert first.name == second.name
    assert first.read_bytes() == second.read_bytes()


def test_it_opens_from_a_folder_of_a_plain_server_and_then_without_one(
    new_page, published, tmp_path
):
    place = tmp_path / "some" / "where"
    place.mkdir(parents=True)
    with zipfile.ZipFile(only(published.glob("*.zip"))) as archive:
        archive.extractall(place)
    with plain_server(tmp_path) as server:
        address = f"{server}some/where/"
        page = new_page(address).open().wait_ready()
        assert_equal(at_rest(page).outputs(), fly("half-a-turn-short"))
        wait_cached(page)
        # The worker's scope is the folder only.
        scope = page.driver.execute_async_script(
            "navigator.serviceWorker.ready.then((found) => arguments[0](found.scope))"
        )
        assert scope == address
        asked = page.run("return performance.getEntriesByType('resource').map(({name}) => name)")
        assert asked and all(name.startswith(address) for name in asked), asked
    with pytest.raises(urllib.error.URLError):
        urllib.request.urlopen(address)
    page.open().wait_ready()
    assert_equal(at_rest(page).outputs(), fly("half-a-turn-short"))
    assert console_errors(page) == []
