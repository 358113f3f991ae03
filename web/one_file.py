"""Makes one HTML file of a built page: it runs from a disk or a stick, by a double click, without a
server. The module is compressed in it; nothing is fetched.

    one_file.py DIST OUT.html
"""

import gzip
import re
import sys
from base64 import b64encode
from pathlib import Path

from finish import INLINE_SCRIPT, SHEET, sha256, shipped

# The most that the file may have: what a school's mail and old sticks take easily. Our choice.
MOST_BYTES = 11_000_000

# What only makes sense where there is a server: the app's manifest, its icons, what is fetched early,
# and the offline worker.
OF_A_SERVER = re.compile(
    r'\s*<link rel="(?:apple-touch-icon|manifest|modulepreload|preload)"[^>]*>'
    r'|\s*<script src="\./offline-[^"]*"[^>]*></script>'
)
POLICY = re.compile(r'(<meta http-equiv="Content-Security-Policy" content=")[^"]*(">)')
STYLE = re.compile(r'<link rel="stylesheet" href="\./([^"]*)"/?>')
ICON = re.compile(r'<link rel="icon" href="\./([^"]*)"/?>')
SCRIPT = re.compile(r'<script src="\./([^"]*)"( type="module")?></script>')

TYPES = {".json": "application/json", ".mp4": "video/mp4", ".svg": "image/svg+xml", ".js": "text/javascript", ".ftl": "text/plain", ".wasm": "application/gzip"}

# Folders of what the page fetches while it runs.
FETCHED = ("documents", "films", "lessons", "words")

# Whatever the page fetches comes from the page itself.
FETCH = """<script>{
  const fetched = JSON.parse(document.getElementById("fetched").textContent);
  const { fetch } = window;
  window.fetch = async (what, options) => {
    const answer = await fetch(fetched[what] ?? what, options);
    if (!String(what).endsWith(".wasm")) return answer;
    const unpacked = answer.body.pipeThrough(new DecompressionStream("gzip"));
    return new Response(unpacked, { headers: { "content-type": "application/wasm" } });
  };
  window.turnsAloft = {
    // Where a script can be imported from.
    address: (what) => URL.createObjectURL(
      new Blob([atob(fetched[what].split(",")[1])], { type: "text/javascript" })),
  };
}</script>"""

# Starts the module from what is in the page. An inline script can't export, so the two that are
# imported become addresses of their own.
START = """<script type="module">
const part = (id) => document.getElementById(id).textContent;
const address = (id) => URL.createObjectURL(new Blob([part(id)], { type: "text/javascript" }));

const [bindings, { default: initializer }] = await Promise.all([
  import(address("bindings")),
  import(address("start")),
]);
const { onSuccess, onFailure } = initializer();
try {
  const packed = await fetch("data:application/gzip;base64," + part("module"));
  const unpacked = packed.body.pipeThrough(new DecompressionStream("gzip"));
  const headers = { "content-type": "application/wasm" };
  const wasm = await bindings.default({ module_or_path: new Response(unpacked, { headers }) });
  window.wasmBindings = bindings;
  onSuccess(wasm);
} catch (reason) {
  onFailure(reason);
}
</script>"""


def main(dist: Path, out: Path) -> None:
    page = OF_A_SERVER.sub("", (dist / "index.html").read_text(encoding="utf-8"))
    page = ICON.sub(lambda it: f'<link rel="icon" href="{data(dist / it[1])}">', page)
    page = STYLE.sub(lambda it: f"<style>{text(dist / it[1])}</style>", page)
    page = SCRIPT.sub(lambda it: f"<script{it[2] or ''}>{script(dist / it[1])}</script>", page)
    [trunk] = [it for it in INLINE_SCRIPT.finditer(page) if "__trunkInitializer" in it[1]]
    page = page[: trunk.start()] + page[trunk.end() :]
    [bindings] = re.findall(r"from '\./([^']*-page-[^']*\.js)'", trunk[1])
    [start] = re.findall(r"from '\./([^']*-start\.js)'", trunk[1])
    [module] = dist.glob("*.wasm")
    files = {
        path.relative_to(dist).as_posix(): data(path)
        for folder in FETCHED
        for path in shipped(dist / folder)
    }
    listed = ", ".join(f'"{name}": "{address}"' for name, address in files.items())
    parts = [
        f'<script type="text/plain" id="bindings">{script(dist / bindings)}</script>',
        f'<script type="text/plain" id="start">{script(dist / start)}</script>',
        f'<script type="text/plain" id="module">{packed(module)}</script>',
        START,
    ]
    page = page.replace("</body>", "\n".join(parts) + "\n</body>")
    # Before whatever fetches something.
    first = f'<script type="application/json" id="fetched">{{{listed}}}</script>\n{FETCH}'
    page = page.replace("<body>", f"<body>\n{first}")
    page = POLICY.sub(lambda it: it[1] + policy(page) + it[2], page)
    out.parent.mkdir(parents=True, exist_ok=True)
    out.write_text(page, encoding="utf-8")
    size = out.stat().st_size
    if size > MOST_BYTES:
        sys.exit(f"{out} has {size / 1e6:.2f} MB, more than {MOST_BYTES / 1e6:.0f} MB.")
    print(f"{out}  {size / 1e6:.2f} MB")


def text(path: Path) -> str:
    return path.read_text(encoding="utf-8")


def script(path: Path) -> str:
    """A script as it can stand in a page: none of its texts may end the element."""
    return text(path).replace("</script", "<\\/script")


def packed(path: Path) -> str:
    return b64encode(gzip.compress(path.read_bytes(), 9, mtime=0)).decode()


def data(path: Path) -> str:
    """What is in a file; a module compressed."""
    content = packed(path) if path.suffix == ".wasm" else b64encode(path.read_bytes()).decode()
    return f"data:{TYPES[path.suffix]};base64,{content}"


def policy(page: str) -> str:
    """Only what is in the page may run, and nothing may be sent."""
    run = re.findall(r"<script(?: type=\"module\")?>(.*?)</script>", page, re.DOTALL)
    [style] = re.findall(r"<style>(.*?)</style>", page, re.DOTALL)
    scripts = " ".join(f"'{sha256(it)}'" for it in run)
    styles = " ".join(f"'{sha256(it)}'" for it in (style, text(SHEET)))
    return (
        f"default-src 'none'; script-src blob: 'wasm-unsafe-eval' {scripts};"
        f" style-src {styles}; img-src data: blob:; media-src blob: data:;"
        " connect-src data:; base-uri 'none'; form-action 'none'"
    )


if __name__ == "__main__":
    main(*map(Path, sys.argv[1:]))
