from contextlib import ExitStack
from pathlib import Path

import pytest

from browser import ENGINES
from page import Page
from pool import Pool
from reruns import Reruns
from server import REPOSITORY, serving

PASSED = pytest.StashKey[bool]()


def pytest_addoption(parser):
    parser.addoption(
        "--built", type=Path, default=REPOSITORY / "dist", help="folder of the built page"
    )
    parser.addoption("--engine", choices=ENGINES, default="chromium", help="the browser")
    parser.addoption("--films", choices=["some", "all"], default="some", help="films to look at")
    parser.addoption("--reruns-file", type=Path, help="reruns of earlier runs, which count as well")


def pytest_configure(config):
    # With several workers only the controlling process sees all tests.
    if not hasattr(config, "workerinput"):
        config.pluginmanager.register(Reruns(config.getoption("--reruns-file")))


def pytest_collection_modifyitems(config, items):
    """Skips tests marked `only` for another engine, with the reason."""
    engine = config.getoption("--engine")
    for item in items:
        marker = item.get_closest_marker("only")
        if marker and marker.args[0] != engine:
            item.add_marker(pytest.mark.skip(reason=f"{marker.args[0]} only: {marker.args[1]}"))


@pytest.hookimpl(wrapper=True)
def pytest_runtest_makereport(item, call):
    report = yield
    if call.when == "call":
        item.stash[PASSED] = report.passed
    return report


@pytest.fixture(scope="session")
def dist(request):
    return request.config.getoption("--built").resolve()


@pytest.fixture(scope="session")
def site(dist):
    """The address of the page."""
    with serving(dist) as address:
        yield address


@pytest.fixture(scope="session")
def all_downloads(tmp_path_factory):
    return tmp_path_factory.mktemp("downloads")


@pytest.fixture
def downloads(all_downloads):
    """The folder of the page's downloads, emptied."""
    for file in all_downloads.iterdir():
        file.unlink()
    return all_downloads


@pytest.fixture(scope="session")
def pool(request, site, all_downloads):
    pool = Pool(request.config.getoption("--engine"), site, all_downloads)
    yield pool
    pool.close()


@pytest.fixture
def new_page(request, site, pool, downloads):
    """A function that returns a page in another browser at each call, not yet opened.

    An error in any of their consoles fails the test, except messages containing one of the texts in
    `expected_errors`.
    """
    window = request.node.get_closest_marker("window")
    fresh = request.node.get_closest_marker("fresh")
    looks = request.node.get_closest_marker("looks") is not None
    pages, borrowed = [], []

    with ExitStack() as own:

        def new(address=site, expected_errors=(), size=None, **options):
            size = size or (window.args if window else (1024, 768))
            # With reduced motion the page opens at rest, on the landing.
            options.setdefault("still", True)
            # Software rendering is most of the work: full resolution only where pixels are checked.
            options.setdefault("scale", 1 if request.node.get_closest_marker("sharp") else 0.5)
            if fresh or address != site:
                page = Page(own.enter_context(pool.fresh(size, **options)), address)
            else:
                lent = pool.lend(size, looks, **options)
                borrowed.append(lent)
                page = Page(lent.driver, address, is_open=lent.untouched)
            pages.append((page, expected_errors))
            return page

        yield new

        errors = [
            entry["message"]
            for page, expected in pages
            for entry in page.console()
            if entry["level"] == "SEVERE" and not any(text in entry["message"] for text in expected)
        ]
        went_well = request.node.stash.get(PASSED, False) and errors == []
        for lent in borrowed:
            if went_well:
                pool.take_back(lent, untouched=looks)
            else:
                pool.discard(lent)
    assert errors == []


@pytest.fixture
def page(new_page):
    """A page, open and ready."""
    return new_page().open().wait_ready()
