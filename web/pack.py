"""Packs a built page: for a static host as a folder and a zip of it, and as one file that runs without
a server; all with checksums.

    pack.py DIST OUT
"""

import hashlib
import re
import shutil
import sys
import tomllib
import zipfile
from pathlib import Path

import one_file
from finish import shipped

REPOSITORY = Path(__file__).resolve().parents[1]

# The licences of the page and its fonts, which have to accompany it.
LICENCES = [
    "LICENSE-MIT",
    "LICENSE-APACHE",
    "assets/fonts/LICENSE-barlow.txt",
    "assets/fonts/LICENSE-fira-sans.txt",
]

SUMS = "SHA256SUMS"

# The earliest time of the zip format. A constant time makes the zip of the same page identical to
# the byte.
EPOCH = (1980, 1, 1, 0, 0, 0)


def main(dist: Path, out: Path) -> None:
    name = f"turns-aloft-{version(dist)}"
    folder, archive = out / name, out / f"{name}.zip"
    out.mkdir(exist_ok=True)
    shutil.rmtree(folder, ignore_errors=True)
    fill(folder, dist)
    pack(folder, archive)
    alone = out / f"{name}.html"
    one_file.main(dist, alone)
    for made in (archive, alone):
        (out / f"{made.name}.sha256").write_text(line(made, out))
    print(f"{folder}/")
    print(f"{archive}  {archive.stat().st_size / 1e6:.2f} MB, SHA-256 {sha256(archive)}")


def version(dist: Path) -> str:
    """The package's version and the start of the service worker's hash over all files."""
    package = tomllib.loads((REPOSITORY / "Cargo.toml").read_text(encoding="utf-8"))["package"]
    worker = (dist / "sw.js").read_text(encoding="utf-8")
    [content] = re.findall(r'^const VERSION = "([0-9a-f]{16})";$', worker, re.MULTILINE)
    return f"{package['version']}-{content[:8]}"


def fill(folder: Path, dist: Path) -> None:
    files = {path.relative_to(dist): path for path in shipped(dist)}
    files |= {Path("licences") / Path(name).name: REPOSITORY / name for name in LICENCES}
    for name, path in files.items():
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        shutil.copyfile(path, folder / name)
    sums = "".join(line(path, folder) for path in shipped(folder))
    (folder / SUMS).write_text(sums)


def pack(folder: Path, archive: Path) -> None:
    """Zips the files at the top level: the zip is unpacked into the folder that serves the page."""
    with zipfile.ZipFile(archive, "w", zipfile.ZIP_DEFLATED, compresslevel=9) as pack:
        for path in shipped(folder):
            entry = zipfile.ZipInfo(path.relative_to(folder).as_posix(), EPOCH)
            entry.compress_type = zipfile.ZIP_DEFLATED
            entry.external_attr = 0o644 << 16
            pack.writestr(entry, path.read_bytes())


def line(path: Path, above: Path) -> str:
    """A line for `sha256sum --check` run in the folder `above`."""
    return f"{sha256(path)}  {path.relative_to(above).as_posix()}\n"


def sha256(path: Path) -> str:
    return hashlib.sha256(path.read_bytes()).hexdigest()


if __name__ == "__main__":
    main(*map(Path, sys.argv[1:]))
