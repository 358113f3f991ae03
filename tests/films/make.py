"""Makes the test films into a folder, each with what is true of it beside it.

    python3 tests/films/make.py FOLDER [NAME...]
    python3 tests/films/make.py --small tests/films/small

`films.py` and `broken.py` list them; `bar_code.py` says how the number of a frame stands in its picture.
`FOLDER/films.json` has the list. Beside a film that can be measured, NAME.json has, for its frames in the
order in which they are shown:

    codec, width, height   as ffprobe names them, the size as it is to be shown
    times_s                when each starts, on the time line of the file's tables (no edit list)
    key                    which of them can be shown without others
    numbers                what the bar code says in the picture that ffmpeg decodes
    edited_s               when each is shown once the edit list is applied; null for what it leaves out
    capture_rate           the pictures a second at which it was taken, where a tag says so

Whatever stands there comes from ffprobe and ffmpeg, or was put into the file. Needs ffmpeg with ffprobe.
"""

import json
import subprocess
import sys
import tempfile
from bisect import bisect
from pathlib import Path

import bar_code
import broken
from boxes import stretch
from films import all_films, small_films, start_times


def run(*command, **options):
    ran = subprocess.run([str(part) for part in command], capture_output=True, **options)
    if ran.returncode:
        sys.exit(f"{' '.join(ran.args)}\n{ran.stderr.decode()}")
    return ran.stdout


def ffmpeg(*arguments, **options):
    return run("ffmpeg", "-v", "error", "-nostdin", "-y", "-threads", "2", *arguments, **options)


def encode(film, path):
    """Draws a moving picture with the bar code over it, and encodes it."""
    width, height = film.size
    starts = start_times(film)
    # The number in every unit of time; those in which no frame starts are left out again.
    numbers = [bisect(starts, unit) - 1 for unit in range(starts[-1] + 1)]
    code = b"".join(bar_code.row(number) for number in numbers)
    picture = "[0][code]overlay"
    if film.intervals:
        pattern = starts[: len(film.intervals)]
        picture += ",select=" + "+".join(f"eq(mod(n\\,{sum(film.intervals)})\\,{unit})" for unit in pattern)
    if film.upright:
        picture += ",transpose=cclock"
    strip = height // bar_code.PARTS_OF_HEIGHT
    # Sound before the picture: the first track is not always the film.
    duration_s = len(numbers) / film.rate
    sound = ["-f", "lavfi", "-i", f"sine=sample_rate=48000:duration={duration_s}"] if film.sound else []
    command = [
        "-f", "lavfi", "-i", f"testsrc2=size={width}x{height}:rate={film.rate}:duration={duration_s}",
        "-f", "rawvideo", "-pix_fmt", "gray", "-s", f"{bar_code.CELLS}x1", "-r", film.rate, "-i", "-",
        *sound,
        "-filter_complex", f"[1]scale={width}:{strip}:flags=neighbor[code];{picture}[film]",
        *(["-map", "2:a"] if film.sound else []), "-map", "[film]",
        "-vsync", "passthrough", "-enc_time_base:v", "1/90000" if film.intervals else f"1/{film.rate}",
        *film.codec, "-pix_fmt", "yuv420p", "-g", film.key_every, *film.options,
    ]  # fmt: skip
    if film.passes == 1:
        ffmpeg(*command, path, input=code)
        return
    with tempfile.TemporaryDirectory() as notes:
        for number, into in (1, ["-f", "null", "-"]), (2, [path]):
            ffmpeg(*command, "-pass", number, "-passlogfile", f"{notes}/pass", *into, input=code)


def make(film, folder):
    path = folder / film.file()
    if film.copied or film.upright:
        source = folder / f".source.{film.kind}"
        encode(film, source)
        turned = ["-metadata:s:v:0", "rotate=270"] if film.upright else []
        ffmpeg(*film.copied, "-i", source, "-c", "copy", *turned, path)
        source.unlink()
    else:
        encode(film, path)
    if film.patch:
        path.write_bytes(film.patch(path.read_bytes()))
    if film.stretched_to:
        stretch(path, film.stretched_to)


def packets(path, *options):
    """The stream, and for its packets in the order of being shown: times, s, and whether each is a key and shown."""
    answer = json.loads(run("ffprobe", "-v", "error", *options, "-select_streams", "v:0", "-of", "json",
                            "-show_entries", "packet=pts,flags:stream=codec_name,time_base", path))  # fmt: skip
    stream = answer["streams"][0]
    over, under = map(int, stream["time_base"].split("/"))
    # A hidden frame has the time of the shown one after it.
    shown = sorted({packet["pts"]: packet["flags"] for packet in answer["packets"]}.items())
    return [(pts * over / under, "K" in flags, "D" not in flags) for pts, flags in shown], stream["codec_name"]


def decoded_numbers(film, path, *options):
    """What the bar code says in each picture that ffmpeg decodes."""
    at = film.size[1] // bar_code.PARTS_OF_HEIGHT // 2
    # Stored a quarter turn anticlockwise, the strip is the left edge, from below.
    line = "format=gray," + (f"crop=1:ih:{at}:0" if film.upright else f"crop=iw:1:0:{at}")
    pixels = ffmpeg("-noautorotate", *options, "-i", path, "-map", "0:v:0", "-vf", line,
                    "-vsync", "passthrough", "-pix_fmt", "gray", "-f", "rawvideo", "-")  # fmt: skip
    width = film.size[0]
    lines = [pixels[at : at + width] for at in range(0, len(pixels), width)]
    return [bar_code.read(line[::-1] if film.upright else line) for line in lines]


def truth(film, path):
    no_edits = ["-ignore_editlist", "1"] if film.kind != "webm" else []
    raw, codec = packets(path, *no_edits)
    edited, _ = packets(path)
    return {
        "codec": codec,
        "width": film.size[0],
        "height": film.size[1],
        "times_s": [time_s for time_s, _, _ in raw],
        "key": [key for _, key, _ in raw],
        "numbers": decoded_numbers(film, path, *no_edits),
        "edited_s": [time_s if shown else None for time_s, _, shown in edited],
        "capture_rate": film.capture_rate,
    }


def make_one(film, folder):
    path = folder / film.file()
    make(film, folder)
    if film.fault:
        return
    told = truth(film, path)
    assert None not in told["numbers"], f"{film.name}: a bar code can't be read"
    assert len(told["numbers"]) == len(told["times_s"]), film.name
    (folder / f"{film.name}.json").write_text(json.dumps(told) + "\n")


def main(*arguments):
    folder = Path(arguments[-1] if arguments[0] == "--small" else arguments[0])
    folder.mkdir(parents=True, exist_ok=True)
    if arguments[0] == "--small":
        for film in small_films():
            make_one(film, folder)
        return
    names, listed = arguments[1:], []
    for film in all_films():
        listed.append({"name": film.name, "file": film.file(), "fault": film.fault})
        if not names or film.name in names:
            make_one(film, folder)
    if not names:
        listed += broken.make_all(folder)
        (folder / "films.json").write_text(json.dumps(listed, indent=1))


if __name__ == "__main__":
    main(*sys.argv[1:])
