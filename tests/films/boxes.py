"""MP4 files taken apart into boxes (ISO/IEC 14496-12) and put together again with one of them changed.

The tables of these films stand behind the pictures, so that nothing which says where a picture lies moves
when a table grows.
"""

import struct

CONTAINERS = {b"moov", b"trak", b"mdia", b"minf", b"stbl", b"edts"}


def parts(data):
    """The boxes in a row of them: kind and content."""
    at = 0
    while at < len(data):
        size, kind = struct.unpack_from(">I4s", data, at)
        yield kind, data[at + 8 : at + size]
        at += size


def box(kind, content):
    return struct.pack(">I4s", len(content) + 8, kind) + content


def change(data, kind, to, track=0):
    """The file with the content of the box of this kind in that track put through `to`."""
    top = list(parts(data))
    assert [name for name, _ in top][-1] == b"moov", "the tables must stand at the end"
    found = []
    changed = b"".join(box(name, _change(name, content, kind, to, track, found)) for name, content in top)
    assert len(found) == 1, f"{len(found)} boxes of kind {kind}"
    return changed


def _change(name, content, kind, to, track, found):
    if name == kind:
        found.append(kind)
        return to(content)
    if name not in CONTAINERS:
        return content
    inside, tracks = b"", 0
    for child, part in parts(content):
        if child != b"trak" or tracks == track:
            part = _change(child, part, kind, to, track, found)
        tracks += child == b"trak"
        inside += box(child, part)
    return inside


def stretch(path, length):
    """Puts a gap in front of the tables that makes the file so long, but takes no room on the disk."""
    data = path.read_bytes()
    before, tables = b"", b""
    for kind, content in parts(data):
        if kind == b"moov":
            tables = box(kind, content)
        else:
            before += box(kind, content)
    gap = length - len(before) - len(tables)
    with path.open("wb") as file:
        file.write(before + struct.pack(">I4sQ", 1, b"free", gap))
        file.seek(length - len(tables))
        file.write(tables)
