"""Checks that are kept as rows, whether they pass or not, for the page of results."""

from dataclasses import dataclass


@dataclass
class Row:
    group: str
    what: str
    source: str
    expected: str
    ours: str
    tolerance: str
    passed: bool
    # How far apart the two are, and how far they may be; nothing where that is not the question.
    apart: float | None = None
    limit: float | None = None


def text(value):
    return value if isinstance(value, str) else f"{float(value):.9g}"


class Checks:
    """The checks of one test. A check that fails does not stop the test: all are seen at once."""

    def __init__(self, group):
        self.group = group
        self.rows = []

    def _add(self, what, source, expected, ours, tolerance, passed, apart=None, limit=None):
        row = Row(
            self.group,
            what,
            source,
            text(expected),
            text(ours),
            tolerance,
            bool(passed),
            None if apart is None else float(apart),
            limit,
        )
        self.rows.append(row)

    def apart(self, what, ours, expected, apart, limit, source, unit=""):
        """Two things shown by a number each, whose difference is more than that of the numbers."""
        tolerance = f"± {limit:.3g}{unit and ' ' + unit}"
        self._add(what, source, expected, ours, tolerance, apart <= limit, apart, limit)

    def near(self, what, ours, expected, limit, source, unit=""):
        """To an absolute tolerance."""
        self.apart(what, ours, expected, abs(ours - expected), limit, source, unit)

    def share(self, what, ours, expected, share, source):
        """To a share of what is expected."""
        apart = abs(ours - expected) / abs(expected)
        self.apart(what, ours, expected, apart, share, source, "of it")

    def within(self, what, ours, low, high, source):
        expected = f"{text(low)} to {text(high)}"
        self._add(what, source, expected, ours, "in the range", low <= ours <= high)

    def more(self, what, larger, smaller, source):
        """A direction: the first number, ours, is the larger one."""
        self._add(what, source, f"more than {text(smaller)}", larger, "direction", larger > smaller)

    def below(self, what, ours, bound, source):
        """A direction: ours is the smaller one."""
        self._add(what, source, f"below {text(bound)}", ours, "direction", ours < bound)

    def same(self, what, ours, expected, source):
        self._add(what, source, str(expected), str(ours), "the same", ours == expected)

    def failed(self):
        return [row for row in self.rows if not row.passed]
