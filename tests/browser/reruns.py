"""Fails a test run in which more than a few tests had to be run again."""

import pytest

# One or two may be due to a busy machine; a third indicates a fault of the page or of its tests.
MOST = 2


class Reruns:
    """Counts reruns, over the runs of all engines that get the same file."""

    def __init__(self, file):
        self._file = file
        earlier = file is not None and file.exists()
        self._tests = file.read_text().splitlines() if earlier else []

    def pytest_runtest_logreport(self, report):
        if report.outcome == "rerun":
            self._tests.append(report.nodeid)

    @pytest.hookimpl(trylast=True)
    def pytest_sessionfinish(self, session):
        if self._file is not None:
            self._file.write_text("".join(f"{test}\n" for test in self._tests))
        if self._too_many() and session.exitstatus == pytest.ExitCode.OK:
            session.exitstatus = pytest.ExitCode.TESTS_FAILED

    def pytest_terminal_summary(self, terminalreporter):
        if self._too_many():
            terminalreporter.section("Too many reruns", red=True)
            terminalreporter.line(f"Tried again, where at most {MOST} may be:")
            for test in self._tests:
                terminalreporter.line(test)

    def _too_many(self):
        return len(self._tests) > MOST
