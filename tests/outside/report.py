"""The page of results: every check with its source, what was expected, ours, tolerance, pass."""

from html import escape
from itertools import groupby

INTRO = (
    "What Turns Aloft computes, beside what others compute or have published. The flights are "
    "computed again from nothing but the exported body, joint motion and take-off, by two "
    "rigid-body engines of different build; the bodies are put beside another body model and "
    "measured people; the worked examples, rules and skating data are those of the sources named. "
    "All jumpers are invented."
)

HEAD = ["Check", "Source", "Expected", "Ours", "Apart", "Tolerance", ""]

# A longer table is folded away.
LONG = 40

STYLE = """
body { font: 16px/1.45 system-ui, sans-serif }
body { margin: 2rem auto; max-width: 75rem; padding: 0 1rem }
table { border-collapse: collapse; width: 100%; margin: .5rem 0 2rem }
th, td { text-align: left; vertical-align: top }
th, td { padding: .3rem .6rem; border-bottom: 1px solid #ccc }
td:nth-child(n + 3):nth-child(-n + 5) { font-variant-numeric: tabular-nums }
summary { min-height: 44px; line-height: 44px; cursor: pointer }
.failed { background: #fde4dc; font-weight: 600 }
.wide { overflow-x: auto }
"""


def _verdict(row):
    return "pass" if row.passed else "FAIL"


def _cells(row):
    apart = "" if row.apart is None else f"{row.apart:.1e}"
    return [row.what, row.source, row.expected, row.ours, apart, row.tolerance, _verdict(row)]


def _groups(rows):
    return ((group, list(members)) for group, members in groupby(rows, lambda row: row.group))


def worst(rows):
    """Of every kind of check (what follows the case's name) the one that uses most of its
    tolerance."""
    most = {}
    for row in rows:
        if row.apart is not None:
            kind = row.what.rsplit(": ", 1)[-1]
            if kind not in most or row.apart / row.limit > most[kind].apart / most[kind].limit:
                most[kind] = row
    return list(most.values())


def summary(rows):
    failed = sum(not row.passed for row in rows)
    return f"{len(rows)} checks, {len(rows) - failed} passed, {failed} failed."


def _lines(rows):
    cells = [[cell.replace("|", "\\|") for cell in _cells(row)] for row in rows]
    return [f"| {' | '.join(line)} |" for line in [HEAD, ["---"] * len(HEAD), *cells]]


def markdown(rows):
    lines = ["# Checks from outside", "", INTRO, "", summary(rows)]
    for group, members in _groups(rows):
        lines += ["", f"## {group}"]
        if len(members) > LONG:
            lines += ["", f"{summary(members)} The closest of each kind:", ""]
            lines += [*_lines(worst(members)), "", "All:"]
        lines += ["", *_lines(members)]
    return "\n".join(lines) + "\n"


def _table(rows):
    head = "".join(f"<th>{cell}</th>" for cell in HEAD)
    body = "".join(
        f"<tr{'' if row.passed else ' class=failed'}>"
        + "".join(f"<td>{escape(cell)}</td>" for cell in _cells(row))
        + "</tr>\n"
        for row in rows
    )
    table = f"<table><thead><tr>{head}</tr></thead>\n<tbody>{body}</tbody></table>"
    return f"<div class=wide>{table}</div>"


def _section(group, rows):
    table = _table(rows)
    if len(rows) > LONG:
        failed = [row for row in rows if not row.passed]
        table = (
            f"<p>{summary(rows)} The closest of each kind, and those that failed:</p>"
            f"{_table([row for row in worst(rows) if row.passed] + failed)}"
            f"<details><summary>All {len(rows)}</summary>{table}</details>"
        )
    return f"<section><h2>{escape(group)}</h2>{table}</section>"


def html(rows):
    sections = "\n".join(_section(group, members) for group, members in _groups(rows))
    return f"""<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Turns Aloft: checks from outside</title>
<style>{STYLE}</style>
</head>
<body>
<h1>Checks from outside</h1>
<p>{escape(INTRO)}</p>
<p><strong>{summary(rows)}</strong></p>
{sections}
</body>
</html>
"""


def write(rows, folder):
    """Both forms of the page; returns the first's path."""
    folder.mkdir(parents=True, exist_ok=True)
    rows = sorted(rows, key=lambda row: row.group)
    page = folder / "checks.html"
    page.write_text(html(rows), encoding="utf-8")
    (folder / "checks.md").write_text(markdown(rows), encoding="utf-8")
    return page
