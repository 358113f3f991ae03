"""The test films: what each is, and how it is made.

`patch`, where there is one, changes the finished file. What no player takes for a film is made by
`broken.py`.
"""

import struct
from dataclasses import dataclass, field
from itertools import accumulate

from boxes import box, change

H264 = ["-c:v", "libx264", "-preset", "veryfast", "-crf", "26"]
HEVC = ["-c:v", "libx265", "-preset", "ultrafast", "-x265-params", "log-level=error:bframes=0", "-tag:v", "hvc1"]
VP8 = ["-c:v", "libvpx", "-deadline", "realtime", "-cpu-used", "8", "-b:v", "1M"]
VP9 = ["-c:v", "libvpx-vp9", "-deadline", "realtime", "-cpu-used", "8", "-b:v", "1M"]
AV1 = ["-c:v", "libaom-av1", "-usage", "realtime", "-cpu-used", "8", "-b:v", "1M"]
CODECS = {
    "h264": ("mp4", [*H264, "-bf", "0"]),
    "vp8": ("webm", VP8),
    "vp9": ("webm", VP9),
    "av1": ("mp4", AV1),
}
RATES = [30, 60, 120, 240]
SOUND = ["-c:a", "aac", "-b:a", "32k"]
FRAGMENTED = ["-movflags", "frag_keyframe+empty_moov+default_base_moof"]
# Android's own tag, as ffmpeg writes it.
CAPTURED_AT_240 = ["-movflags", "use_metadata_tags", "-metadata", "com.android.capture.fps=240"]


@dataclass
class Film:
    name: str
    kind: str
    codec: list
    rate: int = 30
    frames: int = 45
    # As it is to be shown.
    size: tuple = (320, 240)
    key_every: int = 30
    # A frame's interval follows this one, over and over, in units of 1/rate; empty: all are 1.
    intervals: tuple = ()
    options: list = field(default_factory=list)
    # Options in front of the finished film as an input, with which it is copied.
    copied: list = field(default_factory=list)
    sound: bool = False
    passes: int = 1
    # A film taken upright: stored a quarter turn anticlockwise, and the file says so.
    upright: bool = False
    capture_rate: float | None = None
    patch: object = None
    # Why it can't be measured; None: it can.
    fault: str | None = None
    # How long the file is made, bytes, by a gap before its tables that takes no room on the disk.
    stretched_to: int = 0

    def file(self):
        return f"{self.name}.{self.kind}"


def two_edits(content):
    """An edit list that shows the second half second first, then the first."""
    _, entries = struct.unpack_from(">II", content)
    assert entries == 1
    units_s = 1000
    half, whole = units_s // 2, 0x10000
    return struct.pack(">II", 0, 2) + struct.pack(">IiI", half, 7680, whole) + struct.pack(">IiI", half, 0, whole)


def phone_tag(data):
    """As a phone writes it: directly in `moov`, in a `meta` without a version, as a 32-bit float."""
    name = b"com.android.capture.fps"
    handler = box(b"hdlr", struct.pack(">II4s12xx", 0, 0, b"mdta"))
    keys = box(b"keys", struct.pack(">II", 0, 1) + box(b"mdta", name))
    value = box(b"data", struct.pack(">IIf", 23, 0, 240.0))
    tags = box(b"ilst", box(struct.pack(">I", 1), value))
    return change(data, b"moov", lambda content: content + box(b"meta", handler + keys + tags))


def usual():
    """Every codec at every rate, and at a rate that varies."""
    for codec, (kind, options) in CODECS.items():
        for rate in RATES:
            yield Film(f"{codec}_{rate}", kind, options, rate=rate, frames=rate * 3 // 2, key_every=rate // 2)
        yield Film(f"{codec}_varying", kind, options, rate=240, frames=150, intervals=(1, 3, 2, 8, 1, 1, 5))


def special():
    h264 = CODECS["h264"][1]
    b_frames = [*H264, "-bf", "3"]
    yield Film("b_frames_60", "mp4", b_frames, rate=60, frames=90)
    yield Film("b_frames_240", "mp4", b_frames, rate=240, frames=360, key_every=120)
    yield Film("b_frames_varying", "mp4", b_frames, rate=240, frames=150, intervals=(1, 3, 2, 8, 1, 1, 5))
    yield Film("vp9_in_mp4", "mp4", VP9, rate=60, frames=90)
    yield Film("av1_in_webm", "webm", AV1, rate=60, frames=90)
    yield Film("mov_60", "mov", b_frames, rate=60, frames=90)
    yield Film("sound", "mp4", h264, rate=60, frames=90, sound=True, options=[*SOUND])
    yield Film("sound_webm", "webm", VP8, rate=60, frames=90, sound=True, options=["-c:a", "libopus", "-b:a", "32k"])
    yield Film("tables_first", "mp4", b_frames, rate=60, frames=90, options=["-movflags", "faststart"])
    yield Film("fragmented", "mp4", b_frames, rate=60, frames=90, key_every=15, options=FRAGMENTED)
    yield Film("fragmented_sound", "mp4", h264, rate=60, frames=90, key_every=15, sound=True, options=[*FRAGMENTED, *SOUND])
    yield Film("live_webm", "webm", VP8, rate=60, frames=90, options=["-live", "1"])
    # Between the frames that are shown stand some that are not, from which others are made.
    hidden = ["-auto-alt-ref", "1", "-lag-in-frames", "16", "-arnr-maxframes", "5"]
    good = ["-c:v", "libvpx", "-deadline", "good", "-cpu-used", "4", "-b:v", "300k"]
    yield Film("hidden_frames", "webm", good, frames=90, key_every=300, options=hidden, passes=2)
    # Of several clusters, each of up to 5 s.
    yield Film("long", "webm", VP8, rate=30, frames=360)
    yield Film("slowed", "mp4", h264, frames=90, capture_rate=240, options=CAPTURED_AT_240)
    yield Film("slowed_phone", "mp4", h264, frames=90, capture_rate=240, patch=phone_tag)
    yield Film("trimmed", "mp4", h264, rate=60, frames=150, key_every=60, copied=["-ss", "1.25"])
    # Between two frames: ffmpeg shows the later one at once, and what players do is theirs.
    yield Film("trimmed_between", "mp4", h264, rate=60, frames=150, key_every=60, copied=["-ss", "1.26"])
    yield Film("trimmed_b_frames", "mp4", b_frames, rate=60, frames=150, key_every=60, copied=["-ss", "1.25"])
    yield Film("delayed", "mp4", h264, rate=60, frames=90, copied=["-itsoffset", "0.4"])
    yield Film("delayed_webm", "webm", VP9, rate=60, frames=90, copied=["-itsoffset", "0.4"])
    yield Film("upright", "mp4", h264, rate=60, frames=90, size=(240, 320), upright=True)
    yield Film("full_hd_240", "mp4", h264, rate=240, frames=720, size=(1920, 1080), key_every=240)
    yield Film("hevc_60", "mp4", HEVC, rate=60, frames=90)
    yield Film("hevc_240_mov", "mov", HEVC, rate=240, frames=360, key_every=120)
    # 2 GB: as large as a film of many minutes, for what its reading takes.
    yield Film("large", "mp4", h264, rate=240, frames=720, key_every=120, stretched_to=2_000_000_000)
    yield Film("two_edits", "mp4", h264, rate=60, frames=90, copied=["-ss", "0.25"], fault="several-edits",
               patch=lambda data: change(data, b"elst", two_edits))


def all_films():
    return [*usual(), *special()]


def small_films():
    """Of a few kB each, kept in the repository, for the tests that make do without ffmpeg."""
    h264 = CODECS["h264"][1]
    small = {"rate": 240, "frames": 12, "size": (64, 48), "key_every": 5}
    yield Film("b_frames", "mp4", [*H264, "-bf", "2"], **small)
    yield Film("fragmented", "mp4", [*H264, "-bf", "2"], options=FRAGMENTED, **small)
    yield Film("slowed", "mov", h264, capture_rate=240, patch=phone_tag, **small | {"rate": 30})
    yield Film("trimmed", "mp4", h264, copied=["-ss", "0.0375"], **small)
    yield Film("varying", "webm", VP8, intervals=(1, 3, 2), **small)
    yield Film("live", "webm", VP9, options=["-live", "1"], **small)


def start_times(film):
    """When each frame starts, in units of 1/rate."""
    intervals = film.intervals or (1,)
    return list(accumulate((intervals[number % len(intervals)] for number in range(film.frames - 1)), initial=0))
