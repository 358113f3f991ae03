"""Formats the report of ratios, in Markdown."""

HEAD = ("what", "ours", "theirs", "ratio", "wanted", "")
SAME = "15 spherical joints"


def verdict(met, stretch=None):
    if not met:
        return "**not met**"
    return "met" if stretch is None else f"met, stretch {'met' if stretch else 'not met'}"


def faster(what, ours, theirs, way):
    ratio = theirs / ours
    return (
        what,
        f"{ours:.0f} ns",
        f"{theirs:.0f} ns: {', '.join(way)}",
        f"{ratio:.2f}",
        ">= 2, stretch >= 5",
        verdict(ratio >= 2.0, ratio >= 5.0),
    )


def within(what, ns, most_us):
    us = ns / 1e3
    limit = f"{most_us} us"
    return (what, f"{us:.1f} us", limit, f"{us / most_us:.2f}", f"<= {limit}", verdict(us <= most_us))


def slower(what, browser_ns, native_ns):
    ratio = browser_ns / native_ns
    ours, theirs = f"{browser_ns / 1e3:.1f} us", f"{native_ns / 1e3:.1f} us native"
    return (what, ours, theirs, f"{ratio:.2f}", "<= 2", verdict(ratio <= 2.0))


def fastest(theirs, wanted):
    """Time and description of the fastest routine among those that `wanted` accepts."""
    number, (_, *way) = min((number, key) for key, number in theirs.items() if wanted(*key[:2]))
    return number, way


def rows(ours, theirs, browser):
    everything = fastest(theirs, lambda set_, _: set_ == "all")
    same = fastest(theirs, lambda set_, model: set_ == "plan" and model.endswith(SAME))
    least = fastest(theirs, lambda set_, _: set_ == "plan")
    yield faster("a posture, all 15 joints turning", ours["all"], *everything)
    yield faster("a posture of the plan, the same model", ours["plan"], *same)
    yield faster("a posture of the plan, theirs told what stays still", ours["plan"], *least)
    for name, most_us in (("whole jump", 60), ("at another rate", 15), ("at another height", 15)):
        yield within(f"{name}, native", ours[name], most_us)
    for name, ns in browser.items():
        yield slower(f"{name}, in the browser", ns, ours[name])
    fit, first = "fit with its ranges", "likeliest jump after a mark has moved"
    for name, where, ns, most_ms in (
        (fit, "native", ours[fit], 300),
        (fit, "in the browser", browser[fit], 600),
        (first, "in the browser", browser[first], 50),
    ):
        yield within(f"{name}, {where}", ns, 1000 * most_ms)


def table(head, body):
    yield "| " + " | ".join(head) + " |"
    yield "|" + " --- |" * len(head)
    for row in body:
        yield "| " + " | ".join(row) + " |"


def written(start, head, ours, theirs, browser):
    ways = sorted(theirs.items(), key=lambda item: (item[0][0], item[1]))
    return "\n".join(
        [
            "# What the mechanics cost",
            "",
            *(f"- {line}" for line in head),
            f"- starting point `{start}`; one thread; both sides compiled for the baseline of the"
            " processor's family",
            "- native: the lowest of several medians; in the browser: the fastest of many batches",
            "",
            "Theirs is Pinocchio, by the fastest way found that yields both the inertia about the CM",
            "and the momentum of the joint motion about it; every way agrees with ours within 1e-9 in",
            "every posture.",
            "",
            *table(HEAD, rows(ours, theirs, browser)),
            "",
            f"A whole jump computes the inertia and momentum of {ours['posture evaluations']:.0f}"
            " postures.",
            "",
            "## Every way in Pinocchio",
            "",
            *table(
                ("postures", "model", "routine", "build", "ns"),
                [(*key, f"{number:.0f}") for key, number in ways],
            ),
            "",
        ]
    )
