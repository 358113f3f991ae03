from contextlib import ExitStack
from pathlib import Path

import pytest

from browser import chromium
from page import Page
from server import REPOSITORY, serving


def pytest_addoption(parser):
    parser.addoption(
        "--dist", type=Path, default=REPOSITORY / "dist", help="folder of the built page"
    )


@pytest.fixture(scope="session")
def dist(request):
    return request.config.getoption("--dist").resolve()


@pytest.fixture(scope="session")
def site(dist):
    """The address of the page."""
    with serving(dist) as address:
        yield address


@pytest.fixture
def downloads(tmp_path):
    """Where the page's downloads end up."""
    folder = tmp_path / "downloads"
    folder.mkdir()
    return folder


@pytest.fixture
def new_page(request, site, downloads):
    """Starts a browser of its own at each call, its page not yet opened.

    What any of them logs as an error fails the test, but for messages containing one of the texts
    in `expected_errors`.
    """
    marker = request.node.get_closest_marker("window")
    pages = []

    with ExitStack() as browsers:

        def new(address=site, expected_errors=(), still=True, flags=(), **options):
            # For a user who wants no motion unasked the page opens at rest, on the landing.
            options["flags"] = [*flags, *(["--force-prefers-reduced-motion"] if still else [])]
            options.setdefault("size", marker.args if marker else (1024, 768))
            # Drawing in software is most of the work: it is done in full where the picture is looked
            # at.
            options.setdefault("scale", 1 if request.node.get_closest_marker("sharp") else 0.5)
            driver = browsers.enter_context(chromium(downloads=downloads, **options))
            page = Page(driver, address)
            pages.append((page, expected_errors))
            return page

        yield new

        errors = [
            entry["message"]
            for page, expected in pages
            for entry in page.console()
            if entry["level"] == "SEVERE" and not any(text in entry["message"] for text in expected)
        ]
    assert errors == []


@pytest.fixture
def page(new_page):
    """The page, open and ready."""
    return new_page().open().wait_ready()
