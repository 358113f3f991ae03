"""A sensor's file is measured on the page, and what it says is what the command says of the same file."""

import json
import math
import re

import pytest

import sight
import touch
from command import aloft
from files import set_file
from test_jump import at_rest
from test_measure import TURNS, settled

RATE_HZ = 200
# Standing, turning in, pushing off, in the air, coming down, standing again, s. Made up.
TURNS_IN, PUSHES, FLIES, COMES_DOWN, STANDS = 1.5, 2.0, 2.25, 2.73, 3.3
END_S = 4.5
# Of the sensor to the axis, m.
AWAY_M = 0.1


def eased(x):
    x = min(max(x, 0), 1)
    return x * x * x * (10 - x * (15 - 6 * x))


def turning_rad_s(t_s):
    open_rad_s, tight_rad_s = 11.0, 20.0
    if t_s < FLIES:
        return open_rad_s * eased((t_s - TURNS_IN) / (FLIES - TURNS_IN))
    if t_s < COMES_DOWN:
        tight = eased((t_s - FLIES) / 0.15) - eased((t_s - COMES_DOWN + 0.12) / 0.12)
        return open_rad_s + (tight_rad_s - open_rad_s) * tight
    return open_rad_s * (1 - eased((t_s - COMES_DOWN) / (STANDS - COMES_DOWN)))


def upward_m_s2(t_s):
    if PUSHES <= t_s < FLIES:
        return 19.0
    if FLIES <= t_s < COMES_DOWN:
        return 0.0
    if COMES_DOWN <= t_s < COMES_DOWN + 0.12:
        return 29.0
    return 9.80665


def recorded():
    """Of a sensor that drifts a little: the file's text, and how many turns its flight has."""
    lines, turned_rad = ["time_s,gyro_x_rad_s,gyro_y_rad_s,gyro_z_rad_s,acc_x_m_s2,acc_y_m_s2,acc_z_m_s2"], 0
    for i in range(int(END_S * RATE_HZ)):
        t_s = i / RATE_HZ
        rate = turning_rad_s(t_s)
        if FLIES <= t_s < COMES_DOWN:
            turned_rad += rate / RATE_HZ
        change = (turning_rad_s(t_s + 1e-4) - rate) / 1e-4
        wave = 0.02 * math.sin(40 * t_s)
        row = [t_s, 0.01 + wave, -0.02, rate + 0.015, -AWAY_M * rate * rate, AWAY_M * change, upward_m_s2(t_s) + wave]
        lines.append(",".join(f"{value:.5f}" for value in row))
    return "\n".join(lines) + "\n", turned_rad / math.tau


@pytest.mark.parametrize("size", [(1024, 768), (390, 844)], ids=str)
def test_a_sensors_file_gives_the_commands_answer(new_page, tmp_path, size):
    text, turns = recorded()
    path = tmp_path / "skate.csv"
    path.write_text(text)
    said = json.loads(aloft("measure", path, "--jump", "half-a-turn-short"))
    page = new_page(size=size).open().wait_ready()
    at_rest(page)
    set_file(page, "#scenario-file", path)
    page.wait_until("the answer", lambda: "measuring:air_turns" in settled(page))
    low, high = map(float, TURNS.match(page.output("measuring:air_turns")).groups())
    assert low < turns < high and high - low < 0.3, (low, turns, high)
    for sentence in said["sentences"]:
        assert sentence in page.output("measuring:answer")

    # The flight is moved by touch: what was found changes, and can be asked about.
    before = page.output("measuring:air_turns")
    for _ in range(4):
        touch.tap(page, *sight.reveal(page, "−:flight to"))
    page.wait_until("another answer", lambda: settled(page).get("measuring:air_turns", before) != before)
    touch.tap(page, *sight.reveal(page, "ask why"))
    page.wait_until("the jump", lambda: "question:Why" in page.rects())


BAD = {
    "gaps.csv": "time_s,gyro_x,gyro_y,gyro_z\n0,1,2,3\n0.01,,2\n",
    "words.csv": "time_s,gyro_x,gyro_y,gyro_z\n0,1,2,three\n0.01,1,2,3\n",
    "backwards.csv": "time_s,gyro_x,gyro_y,gyro_z\n" + "".join(f"{-i},1,2,3\n" for i in range(500)),
    "prose.csv": "no table\nat all\n",
}


@pytest.mark.parametrize("name", BAD)
def test_a_file_that_is_no_trace_is_said_and_nothing_is_lost(new_page, tmp_path, name):
    path = tmp_path / name
    path.write_text(BAD[name])
    page = new_page().open().wait_ready()
    at_rest(page)
    before = settled(page)
    set_file(page, "#scenario-file", path)
    notice = page.wait_until("the sentence", lambda: page.notice())
    assert re.search(r"\w+.*\.$", notice, re.S), notice
    assert settled(page) == before
