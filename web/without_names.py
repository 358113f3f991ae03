"""Takes the names of functions out of a WebAssembly module: a third of it, and nothing of what it does.
The linker could leave them out, but takes away with them what wasm-bindgen needs.

    python3 without_names.py MODULE
"""

import sys
from pathlib import Path

# WebAssembly core specification, "Binary Format": a module is its first eight bytes and sections, each
# with its number and its size; one that is custom begins with its name (appendix "Name Section").
HEADER_BYTES = 8
CUSTOM = 0
NAMES = b"name"


def without_names(module: bytes) -> bytes:
    kept = bytearray(module[:HEADER_BYTES])
    at = len(kept)
    while at < len(module):
        start, section = at, module[at]
        size, contents = leb128(module, at + 1)
        at = contents + size
        if section == CUSTOM:
            length, name = leb128(module, contents)
            if module[name : name + length] == NAMES:
                continue
        kept += module[start:at]
    return bytes(kept)


def leb128(module: bytes, at: int) -> tuple[int, int]:
    """An unsigned number, and where it ends."""
    number = shift = 0
    while True:
        byte = module[at]
        at += 1
        number |= (byte & 0x7F) << shift
        if byte < 0x80:
            return number, at
        shift += 7


if __name__ == "__main__":
    path = Path(sys.argv[1])
    path.write_bytes(without_names(path.read_bytes()))
