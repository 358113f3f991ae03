"""Fails if the download of a first visit exceeds its budget.

    budget.py DIST
"""

import gzip
import json
import sys
import tomllib
from pathlib import Path

REPOSITORY = Path(__file__).resolve().parents[1]

# Limit for the compressed size of everything a first visit needs before it draws, as a multiple of
# the smallest page's of the same crates.
BUDGET = 1.20
NEEDED = ("*.html", "*.css", "*.js", "*.wasm")
# The service worker is fetched after the first picture.
LATER = "sw.js"

# The download of the smallest page, as measured by web/weigh, and the versions of its crates.
SMALLEST = REPOSITORY / "tests" / "bench" / "smallest" / "download.json"
CRATES = ("bevy", "bevy_egui")


def download(dist: Path) -> int:
    """Size of a first visit's download, compressed, bytes."""
    files = {path for pattern in NEEDED for path in dist.glob(pattern) if path.name != LATER}
    # The texts of one language: the largest.
    texts = max((compressed(path) for path in dist.glob("words/*.ftl")), default=0)
    return sum(map(compressed, files)) + texts


def compressed(path: Path) -> int:
    return len(gzip.compress(path.read_bytes(), 9))


def crates() -> dict[str, str]:
    """The versions of the crates that determine the size of the smallest page."""
    locked = tomllib.loads((REPOSITORY / "Cargo.lock").read_text(encoding="utf-8"))["package"]
    return {crate["name"]: crate["version"] for crate in locked if crate["name"] in CRATES}


def record_smallest(size: int) -> None:
    SMALLEST.write_text(json.dumps({"bytes": size, **crates()}, indent=2) + "\n")


def smallest() -> int:
    """The recorded download of the smallest page, compressed, bytes; exits if its crates' versions
    differ."""
    recorded = json.loads(SMALLEST.read_text())
    size = recorded.pop("bytes")
    if recorded != crates():
        sys.exit(f"{SMALLEST.name} is of {recorded}, not of {crates()}: run web/weigh, which measures it anew.")
    return size


def main(dist: Path) -> None:
    size, least = download(dist), smallest()
    said = (
        f"To download before anything is drawn: {size / 1e6:.2f} MB, {size / least:.3f} times the smallest"
        f" page of the same crates; at most {BUDGET:.2f} times, {BUDGET * least / 1e6:.2f} MB."
    )
    if size > BUDGET * least:
        sys.exit(f"{said} Find what has grown, or fetch after the first picture what isn't needed for it.")
    print(said)


if __name__ == "__main__":
    main(Path(sys.argv[1]))
