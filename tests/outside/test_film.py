"""When the frames of a film are shown, against ffprobe (`tests/films`).

Each film was made by ffmpeg, and ffprobe says what the times of its packets are, with its edit list and
without. Films that can't be measured were made so on purpose: their fault is known.
"""

import json
import subprocess

import pytest

TITLE = "Frames of films, against ffprobe"

# Both sides round to the last bit of a double.
TOLERANCE_S = 1e-9

# Where an edit list cuts a frame in two, ffmpeg leaves it out and shows the next one at once, although the
# standard (ISO/IEC 14496-12, 8.6.6) has it wait for the rest of that frame.
CUTS_A_FRAME = {"trimmed_between"}

# What a camera or a program wrote into a film that was slowed: as many times slower.
SLOWED = {"slowed": 8, "slowed_phone": 8}

SOURCE = "ffprobe, packet times"


@pytest.fixture(scope="module")
def films(film_folder, film_program):
    """Each film of the list: its entry, what is read out of it, and what is true of it."""
    listed = json.loads((film_folder / "films.json").read_text())
    paths = [film_folder / entry["file"] for entry in listed]
    said = subprocess.run([film_program, *paths], capture_output=True, text=True, check=True, timeout=60)
    read = [json.loads(line) for line in said.stdout.splitlines()]
    assert len(read) == len(listed) > 60
    truths = [film_folder / f"{entry['name']}.json" for entry in listed]
    return [
        (entry, told, json.loads(truth.read_text()) if truth.exists() else None)
        for entry, told, truth in zip(listed, read, truths)
    ]


def measured(films):
    return [(entry["name"], told, truth) for entry, told, truth in films if entry["fault"] is None]


def test_times(films, checks):
    for name, told, truth in measured(films):
        assert "fault" not in told, f"{name}: {told}"
        assert len(told["starts_s"]) == len(truth["times_s"]), name
        off_s = max(abs(own - theirs) for own, theirs in zip(told["starts_s"], truth["times_s"]))
        last_s = told["starts_s"][-1], truth["times_s"][-1]
        checks.apart(f"{name}: times of all frames; the last one's", *last_s, off_s, TOLERANCE_S, SOURCE, "s")
        keys = [number for number, key in enumerate(truth["key"]) if key]
        assert told["keys"] == keys, name


def test_edits(films, checks):
    for name, told, truth in measured(films):
        shown = [time_s is not None for time_s in truth["edited_s"]]
        assert told["in_edit"] == shown, name
        both_s = [
            (start_s + told["offset_s"], time_s)
            for start_s, time_s in zip(told["starts_s"], truth["edited_s"])
            if time_s is not None
        ]
        off_s = max(abs(own_s - their_s) for own_s, their_s in both_s)
        limit_s = 1 / told["stored_rate_hz"] if name in CUTS_A_FRAME else TOLERANCE_S
        checks.apart(f"{name}: times with the edit list; the last one's", *both_s[-1], off_s, limit_s, SOURCE, "s")


def test_middles(films):
    """Where to seek to lies in the frame's own interval, a quarter of it away from either neighbour."""
    for name, told, truth in measured(films):
        ends_s = [*truth["times_s"][1:], told["end_s"]]
        for start_s, middle_s, end_s in zip(truth["times_s"], told["middles_s"], ends_s):
            quarter_s = (end_s - start_s) / 4
            assert quarter_s > 0, name
            assert start_s + quarter_s < middle_s < end_s - quarter_s, name


def test_what_a_film_says_of_itself(films):
    names = {"h264": "H.264", "hevc": "HEVC (H.265)", "vp8": "VP8", "vp9": "VP9", "av1": "AV1"}
    for name, told, truth in measured(films):
        assert told["codec"] == names[truth["codec"]], name
        assert (told["width"], told["height"]) == (truth["width"], truth["height"]), name
        assert told["capture_rate_hz"] == truth["capture_rate"], name
        assert told["slow_motion"] == SLOWED.get(name, 1), name


def test_faults(films):
    broken = [(entry, told) for entry, told, _ in films if entry["fault"] is not None]
    assert len(broken) > 20
    for entry, told in broken:
        assert told.get("fault", "").lower() == entry["fault"].replace("-", ""), entry["name"]


def test_little_is_read(films):
    """Of MP4 and MOV only the tables, whatever their length: of 2 GB as of a second."""
    for entry, told, _ in films:
        if entry["file"].endswith(("mp4", "mov")):
            assert told["pieces"] <= 5, entry["name"]
            assert told["bytes"] < 300_000, entry["name"]
