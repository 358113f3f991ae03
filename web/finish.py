"""Finishes a folder that Trunk has built: tells the page how big its module is, for the progress
bar, and prints what a visitor has to download.

    python3 finish.py DIST
"""

import gzip
import sys
from pathlib import Path

PLACEHOLDER = 'data-bytes=""'


def main(dist: Path) -> None:
    [module] = dist.glob("*.wasm")
    index = dist / "index.html"
    html = index.read_text(encoding="utf-8")
    if html.count(PLACEHOLDER) != 1:
        sys.exit(f"{index}: expected exactly one {PLACEHOLDER} to write the module's size into")
    index.write_text(
        html.replace(PLACEHOLDER, f'data-bytes="{module.stat().st_size}"'), encoding="utf-8"
    )

    print(f"{'file':<52}{'raw':>12}{'gzip':>12}")
    totals = [0, 0]
    for path in sorted(p for p in dist.rglob("*") if p.is_file() and not p.name.startswith(".")):
        raw = path.read_bytes()
        sizes = [len(raw), len(gzip.compress(raw, 9))]
        totals = [total + size for total, size in zip(totals, sizes)]
        print_row(str(path.relative_to(dist)), sizes)
    print_row("total", totals)


def print_row(name: str, sizes: list[int]) -> None:
    print(f"{name:<52}" + "".join(f"{size / 1e6:>9.3f} MB" for size in sizes))


if __name__ == "__main__":
    main(Path(sys.argv[1]))
