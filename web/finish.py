"""Finishes a folder that Trunk has built: inserts the page's own texts, the size of its module
(for the progress bar) and the hash of its one inline script (for the content security policy),
writes the service worker with the list of files, and prints the sizes of the download.

    python3 finish.py DIST
"""

import gzip
import hashlib
import html as markup
import json
import re
import sys
from base64 import b64encode
from pathlib import Path

MODULE_BYTES = 'data-bytes=""'
DOCUMENTS = 'data-documents=""'
SCRIPT_HASH = "'sha256-'"
STYLES = "style-src 'self'"
WORDS = '<script type="application/json" id="shell-words">'
# Trunk's inline script, which starts the module.
INLINE_SCRIPT = re.compile(
    r'<script(?![^>]* src=)(?![^>]* type="application/json")[^>]*>(.*?)</script>', re.DOTALL
)

# A folder for each language; without a script the page is in the language FIRST.
MESSAGES = Path(__file__).parents[1] / "assets" / "words"
FIRST = "en"
MESSAGE = re.compile(r"([a-z][a-z0-9-]*) = (\S.*)")
# Lines between the messages of a file.
COMMENT = re.compile(r"^(#.*)?\n", re.MULTILINE)
VALUE = re.compile(r"\{ \$(\w+) \}")
# An empty element to be filled with a message, and an attribute that names a message.
SAYS = re.compile(r'(<(\w+)\b[^>]* data-words="([\w-]+)"[^>]*>)\s*(</\2>)')
NAMED = re.compile(r'data-words-(label|content)="([\w-]+)"')
ASKED = re.compile(r' data-words[\w-]*="')
ATTRIBUTES = {"label": "aria-label", "content": "content"}

# The style of the sheets of paper, which open in pages of their own under this page's policy.
SHEET = Path(__file__).parents[1] / "assets" / "sheet.css"

WORKER = Path(__file__).with_name("worker.js")


def main(dist: Path) -> None:
    words = all_messages()
    files = write_texts(dist)
    finish_index(dist, words, files)
    finish_manifest(dist, words[FIRST]["about"])
    write_worker(dist)
    print_sizes(dist)


def write_texts(dist: Path) -> dict[str, str]:
    """Writes the module's texts, a file for each language with its hash in the name; language to name."""
    folder = dist / "words"
    folder.mkdir(exist_ok=True)
    files = {}
    for language in sorted(path.name for path in MESSAGES.iterdir()):
        texts = "".join(
            COMMENT.sub("", path.read_text(encoding="utf-8"))
            for path in sorted((MESSAGES / language).glob("*.ftl"))
            if path.name != "shell.ftl"
        ).encode()
        digest = hashlib.sha256(texts).hexdigest()[:16]
        files[language] = f"words/{language}-{digest}.ftl"
        (dist / files[language]).write_bytes(texts)
    return files


def finish_index(dist: Path, words: dict[str, dict[str, str]], files: dict[str, str]) -> None:
    [module] = dist.glob("*.wasm")
    index = dist / "index.html"
    html = index.read_text(encoding="utf-8")
    for placeholder in (MODULE_BYTES, SCRIPT_HASH, STYLES, DOCUMENTS, WORDS):
        if html.count(placeholder) != 1:
            sys.exit(f"{index}: expected exactly one {placeholder} to fill in")
    [script] = INLINE_SCRIPT.findall(html)
    html = html.replace(MODULE_BYTES, f'data-bytes="{module.stat().st_size}"')
    html = html.replace(SCRIPT_HASH, f"'{sha256(script)}'")
    html = html.replace(STYLES, f"{STYLES} '{sha256(SHEET.read_text(encoding='utf-8'))}'")
    html = html.replace(DOCUMENTS, f'data-documents="{name_documents(dist)}"')
    html = write_words(html, words, files)
    index.write_text(html, encoding="utf-8")


def name_documents(dist: Path) -> str:
    """Puts the hash of the module that makes documents into the names of its two files; their name without
    its ends."""
    folder = dist / "documents"
    module = folder / "documents_bg.wasm"
    name = f"documents-{hashlib.sha256(module.read_bytes()).hexdigest()[:16]}"
    module.rename(folder / f"{name}_bg.wasm")
    (folder / "documents.js").rename(folder / f"{name}.js")
    return f"documents/{name}"


def sha256(content: str) -> str:
    """As a content security policy writes it."""
    return "sha256-" + b64encode(hashlib.sha256(content.encode()).digest()).decode()


def finish_manifest(dist: Path, about: str) -> None:
    """Inserts the description; a manifest has one language only."""
    path = dist / "manifest.webmanifest"
    manifest = json.loads(path.read_text(encoding="utf-8"))
    if manifest["lang"] != FIRST or manifest["description"]:
        sys.exit(f"{path}: expected one in {FIRST}, with no description yet")
    manifest["description"] = about
    path.write_text(json.dumps(manifest, indent=2, ensure_ascii=False) + "\n", encoding="utf-8")


def all_messages() -> dict[str, dict[str, str]]:
    """The page's own texts: language to name to text. Exits unless all languages have the same names
    and values."""
    words = {path.parent.name: messages(path) for path in sorted(MESSAGES.glob("*/shell.ftl"))}

    def shape(texts: dict[str, str]) -> dict[str, list[str]]:
        return {name: sorted(VALUE.findall(text)) for name, text in texts.items()}

    first = shape(words[FIRST])
    for language, texts in words.items():
        own = shape(texts)
        differing = [name for name in {**first, **own} if first.get(name) != own.get(name)]
        if differing:
            sys.exit(f"shell.ftl, {language}: {', '.join(differing)} differ from {FIRST}")
    return words


def messages(path: Path) -> dict[str, str]:
    """The messages of a file, each on one line: the part of Fluent's format that the page uses."""
    found: dict[str, str] = {}
    for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
        if not line.strip() or line.startswith("#"):
            continue
        message = MESSAGE.fullmatch(line)
        if message is None or "{" in VALUE.sub("", message[2]) or message[1] in found:
            sys.exit(f"{path}:{number}: expected one new message on one line: {line}")
        found[message[1]] = message[2]
    return found


def write_words(html: str, words: dict[str, dict[str, str]], files: dict[str, str]) -> str:
    """Inserts the texts into the page: in the elements and attributes, for use without a script, and
    all of them for the script, with the name of the file of each language."""
    def element(match: re.Match) -> str:
        head, _, name, tail = match.groups()
        lang = re.search(r' lang="(\w+)"', head)
        return head + markup.escape(words[lang[1] if lang else FIRST][name]) + tail

    def attribute(match: re.Match) -> str:
        return f'{match[0]} {ATTRIBUTES[match[1]]}="{markup.escape(words[FIRST][match[2]])}"'

    filled, elements = SAYS.subn(element, html)
    filled, attributes = NAMED.subn(attribute, filled)
    if elements + attributes != len(ASKED.findall(html)):
        sys.exit("index.html: a text is asked for in a form that is not understood")
    # No text may end the script element.
    listed = {language: {**texts, "file": files[language]} for language, texts in words.items()}
    data = json.dumps(listed, ensure_ascii=False).replace("<", "\\u003c")
    return filled.replace(WORDS, WORDS + data)


def write_worker(dist: Path) -> None:
    """Writes sw.js: the hashes of all other files, then the worker."""
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
    """The address under which the page requests a file, relative to its folder."""
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
