"""Finishes a folder that Trunk has built: tells the page how big its module is, for the progress
bar, lets its one inline script through its content security policy, lists its files for the worker
that keeps them, and prints what a visitor has to download.

    python3 finish.py DIST
"""

import gzip
import hashlib
import json
import re
import sys
from base64 import b64encode
from pathlib import Path

MODULE_BYTES = 'data-bytes=""'
SCRIPT_HASH = "'sha256-'"
# Trunk's own, which starts the module.
INLINE_SCRIPT = re.compile(r"<script(?![^>]* src=)[^>]*>(.*?)</script>", re.DOTALL)

WORKER = Path(__file__).with_name("worker.js")


def main(dist: Path) -> None:
    finish_index(dist)
    write_worker(dist)
    print_sizes(dist)


def finish_index(dist: Path) -> None:
    [module] = dist.glob("*.wasm")
    index = dist / "index.html"
    html = index.read_text(encoding="utf-8")
    for placeholder in (MODULE_BYTES, SCRIPT_HASH):
        if html.count(placeholder) != 1:
            sys.exit(f"{index}: expected exactly one {placeholder} to fill in")
    [script] = INLINE_SCRIPT.findall(html)
    digest = b64encode(hashlib.sha256(script.encode()).digest()).decode()
    html = html.replace(MODULE_BYTES, f'data-bytes="{module.stat().st_size}"')
    html = html.replace(SCRIPT_HASH, f"'sha256-{digest}'")
    index.write_text(html, encoding="utf-8")


def write_worker(dist: Path) -> None:
    """Writes sw.js: the worker, after the hashes of all other files as they are now."""
    worker = dist / "sw.js"
    files = {
        address(path.relative_to(dist)): hashlib.sha256(path.read_bytes()).hexdigest()
        for path in shipped(dist)
        if path != worker
    }
    listed = json.dumps(files, indent=2)
    version = hashlib.sha256(listed.encode()).hexdigest()[:16]
    worker.write_text(
        f'const VERSION = "{version}";\nconst FILES = {listed};\n\n'
        + WORKER.read_text(encoding="utf-8"),
        encoding="utf-8",
    )


def address(path: Path) -> str:
    """Under which the page asks for a file, from the folder that it is in."""
    return "./" if path == Path("index.html") else path.as_posix()


def shipped(dist: Path) -> list[Path]:
    return sorted(p for p in dist.rglob("*") if p.is_file() and not p.name.startswith("."))


def print_sizes(dist: Path) -> None:
    print(f"{'file':<52}{'raw':>12}{'gzip':>12}")
    totals = [0, 0]
    for path in shipped(dist):
        raw = path.read_bytes()
        sizes = [len(raw), len(gzip.compress(raw, 9))]
        totals = [total + size for total, size in zip(totals, sizes)]
        print_row(str(path.relative_to(dist)), sizes)
    print_row("total", totals)


def print_row(name: str, sizes: list[int]) -> None:
    print(f"{name:<52}" + "".join(f"{size / 1e6:>9.3f} MB" for size in sizes))


if __name__ == "__main__":
    main(Path(sys.argv[1]))
