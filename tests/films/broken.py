"""What somebody may open instead of a film that can be measured, with the name of the fault of each."""

import struct
import subprocess

from boxes import change

NO_TIME = struct.pack(">II", 0, 0)


def first_part(share):
    return lambda data: data[: int(len(data) * share)]


def all_times(delta):
    """Every frame this much after the one before it, in the units of the tables."""

    def table(content):
        entries = struct.unpack_from(">I", content, 4)[0]
        frames = sum(struct.unpack_from(">I", content, 8 + 8 * entry)[0] for entry in range(entries))
        return struct.pack(">IIII", 0, 1, frames, delta & 0xFFFFFFFF)

    return lambda data: change(data, b"stts", table)


def backwards_in_the_middle(content):
    """The clock jumps back by ten frames after thirty of them."""
    _, entries, frames, delta = struct.unpack_from(">IIII", content)
    assert entries == 1
    runs = [(30, delta), (1, -10 * delta & 0xFFFFFFFF), (frames - 31, delta)]
    return struct.pack(">II", 0, len(runs)) + b"".join(struct.pack(">II", *run) for run in runs)


def uncounted(content):
    """As many frames as a number of 32 bits can say, all of one size."""
    return struct.pack(">III", 0, 1, 0xFFFFFFFF)


def clusters_backwards(data):
    """The second cluster of a WebM starts before the first: its time is 0."""
    second = data.index(b"\x1f\x43\xb6\x75", data.index(b"\x1f\x43\xb6\x75") + 4)
    at = data.index(b"\xe7", second + 4)
    size = data[at + 1] & 0x7F
    return data[: at + 2] + bytes(size) + data[at + 2 + size :]


# Name, kind, the film from which it is made, what is done to it, the fault.
CHANGED = [
    ("cut_off", "mp4", "h264_60.mp4", first_part(0.6), "cut-off"),
    ("cut_off_behind_tables", "mp4", "tables_first.mp4", first_part(0.6), "cut-off"),
    ("cut_off_in_tables", "mp4", "h264_240.mp4", first_part(0.99), "cut-off"),
    ("cut_off_fragmented", "mp4", "fragmented.mp4", first_part(0.6), "cut-off"),
    ("cut_off_webm", "webm", "vp8_60.webm", first_part(0.6), "cut-off"),
    ("empty", "mp4", "h264_60.mp4", first_part(0.0), "empty"),
    ("no_keys", "mp4", "h264_60.mp4", lambda data: change(data, b"stss", lambda _: NO_TIME), "no-key-frame"),
    ("clock_stands", "mp4", "h264_60.mp4", all_times(0), "times-not-ascending"),
    ("clock_backwards", "mp4", "h264_60.mp4", all_times(-256), "times-not-ascending"),
    ("clock_jumps_back", "mp4", "h264_60.mp4", lambda data: change(data, b"stts", backwards_in_the_middle), "times-not-ascending"),
    ("clock_backwards_webm", "webm", "long.webm", clusters_backwards, "times-not-ascending"),
    ("uncounted", "mp4", "h264_60.mp4", lambda data: change(data, b"stsz", uncounted), "too-many-frames"),
    ("no_tables", "mp4", "h264_60.mp4", lambda data: change(data, b"stbl", lambda _: b""), "damaged"),
]

PICTURE = ["-f", "lavfi", "-i", "testsrc2=size=320x240:rate=30"]
TONE = ["-f", "lavfi", "-i", "sine=sample_rate=48000:duration=1"]

# Name, kind, how ffmpeg makes it, the fault.
MADE = [
    ("sound_only", "mp4", [*TONE, "-c:a", "aac"], "no-film-track"),
    ("sound_only_webm", "webm", [*TONE, "-c:a", "libopus"], "no-film-track"),
    ("picture", "png", [*PICTURE, "-frames:v", "1"], "still-picture"),
    ("picture_jpeg", "jpg", [*PICTURE, "-frames:v", "1"], "still-picture"),
    ("picture_avif", "avif", [*PICTURE, "-frames:v", "1", "-c:v", "libaom-av1", "-cpu-used", "8", "-still-picture", "1"], "still-picture"),
    ("one_frame", "mp4", [*PICTURE, "-frames:v", "1", "-c:v", "libx264"], "still-picture"),
    ("another_container", "avi", [*PICTURE, "-frames:v", "30", "-c:v", "mjpeg"], "unknown-container"),
    ("transport_stream", "ts", [*PICTURE, "-frames:v", "30", "-c:v", "libx264"], "unknown-container"),
]


def make_all(folder):
    """Makes all of them; answers their entries for the list."""
    listed = []
    for name, kind, source, done, fault in CHANGED:
        (folder / f"{name}.{kind}").write_bytes(done((folder / source).read_bytes()))
        listed.append({"name": name, "file": f"{name}.{kind}", "fault": fault})
    for name, kind, arguments, fault in MADE:
        ffmpeg = ["ffmpeg", "-v", "error", "-nostdin", "-y", *arguments, str(folder / f"{name}.{kind}")]
        subprocess.run(ffmpeg, check=True)
        listed.append({"name": name, "file": f"{name}.{kind}", "fault": fault})
    (folder / "text.mp4").write_text("This is no film.\n" * 100)
    listed.append({"name": "text", "file": "text.mp4", "fault": "unknown-container"})
    return listed
