import json
import os
import subprocess
from pathlib import Path

import pytest

import cases
import report
from aloft import Aloft
from checks import Checks

REPOSITORY = Path(__file__).resolve().parents[2]

ROWS = pytest.StashKey[list]()
PAGE = pytest.StashKey[Path]()


def pytest_addoption(parser):
    parser.addoption("--aloft", type=Path, help="the command; else ALOFT, else cargo builds it")
    parser.addoption(
        "--page",
        type=Path,
        default=REPOSITORY / "target",
        help="folder for the page of results, checks.html and checks.md",
    )


def pytest_configure(config):
    config.stash[ROWS] = []


def built(kind="--bin", name="aloft"):
    """Builds a program, if nothing else the command, and returns where cargo has put it."""
    done = subprocess.run(
        ["cargo", "build", "--locked", "--no-default-features", kind, name]
        + ["--message-format", "json-render-diagnostics"],
        cwd=REPOSITORY,
        stdout=subprocess.PIPE,
        text=True,
        check=True,
    )
    messages = [json.loads(line) for line in done.stdout.splitlines()]
    return next(m["executable"] for m in messages if m.get("executable"))


@pytest.fixture(scope="session")
def aloft(request):
    """The command under test."""
    chosen = request.config.getoption("--aloft") or os.environ.get("ALOFT")
    return Aloft(str(Path(chosen).resolve()) if chosen else built())


@pytest.fixture(scope="session")
def any_axis():
    """Flights about any axis by their names, as the program beside these tests prints them."""
    program = built("--example", "any_axis")
    done = subprocess.run([program], stdout=subprocess.PIPE, text=True, check=True)
    return json.loads(done.stdout)


@pytest.fixture(scope="session")
def film_folder():
    """The folder of the test films, which are made where there are none yet."""
    script = "source web/tools.sh && need_films >&2 && printf %s \"$FILMS\""
    done = subprocess.run(["bash", "-c", script], cwd=REPOSITORY, stdout=subprocess.PIPE, text=True, check=True)
    return Path(done.stdout)


@pytest.fixture(scope="session")
def film_program():
    """The program that prints what is read out of films."""
    return built("--example", "film")


@pytest.fixture
def checks(request):
    """Checks of this test; they end up on the page."""
    return Checks(request.module.TITLE)


def said(row):
    apart = "" if row.apart is None else f", {row.apart:.3g} apart"
    expected = f"expected {row.expected} ({row.tolerance})"
    return f"{row.what}: {expected}, ours {row.ours}{apart}; {row.source}"


@pytest.hookimpl(wrapper=True)
def pytest_pyfunc_call(pyfuncitem):
    result = yield
    checks = pyfuncitem.funcargs.get("checks")
    if checks is not None:
        pyfuncitem.config.stash[ROWS].extend(checks.rows)
        if not checks.rows:
            pytest.fail("nothing was checked", pytrace=False)
        if failed := checks.failed():
            pytest.fail("\n".join(map(said, failed)), pytrace=False)
    return result


def pytest_sessionfinish(session):
    rows = session.config.stash[ROWS]
    if rows:
        session.config.stash[PAGE] = report.write(rows, session.config.getoption("--page"))


def pytest_terminal_summary(terminalreporter, config):
    rows = config.stash[ROWS]
    if rows:
        terminalreporter.write_line(f"{report.summary(rows)} Page: {config.stash[PAGE]}")


@pytest.fixture(scope="session")
def drawn(aloft):
    """The random admissible scenarios."""
    return cases.drawn(aloft)
