"""The turn map: its lines agree with the command's flights, and touch moves the jump on it."""

import csv
import io
import json

import pytest

import touch
from command import RPM, aloft, assert_equal, fly_stored, stored_scenario, shown
from page import wait_for_output
from test_jump import at_rest

NODES = 61
# The ends of its axes, SI.
RATES = (50 / RPM, 200 / RPM)
HEIGHTS = (0.1, 0.9)


def complete(page):
    wait_for_output(page, "map:done", lambda text: text == f"{NODES} x {NODES} flown")
    return page


def ask(page):
    """Shows the complete map."""
    at_rest(page)
    touch.tap(page, *page.centre("question:Map"))
    return complete(page)


def at(page, u, v):
    """The screen position of map coordinates from 0 to 1, CSS pixels."""
    x, y, width, height = page.rects()["map"]
    return x + u * width, y + (1 - v) * height


def place(page):
    """The map coordinates of the point, from 0 to 1."""
    x, y, width, height = page.rects()["map"]
    point_x, point_y = page.centre("map:point")
    return (point_x - x) / width, 1 - (point_y - y) / height


def numbers(page):
    """Take-off rate and height of the present jump, as map coordinates from 0 to 1."""
    scenario = json.loads(stored_scenario(page))["scenario"]
    of = {"takeoff_rate_rad_s": RATES, "jump_height_m": HEIGHTS}
    return [(scenario[key] - least) / (most - least) for key, (least, most) in of.items()]


def wait_for_place(page, u, v):
    """Waits until the present jump is at these map coordinates, within a pixel. Firefox rounds
    touches to device pixels, hence the mark `sharp`."""
    _, _, width, height = page.rects()["map"]

    def there():
        at_u, at_v = numbers(page)
        return abs(at_u - u) * width <= 1 and abs(at_v - v) * height <= 1

    page.wait_until(f"the jump at {u}, {v}", there)


def choose(page, side, key):
    touch.tap(page, *page.centre(f"map:{side}"))
    name = f"map:{side}:{key}"
    page.wait_until("the list of levers", lambda: name in page.rects())
    touch.tap(page, *page.centre(name))


def row_of_turns(page, folder, height_m):
    """The command's turns along the map's horizontal axis at a height, for the present jump."""
    file = folder / "kept.aloft.json"
    file.write_text(stored_scenario(page))
    across = f"takeoff_rate_rad_s:{RATES[0]!r}:{RATES[1]!r}:{NODES}"
    # A second height, because a map needs at least two.
    printed = aloft("map", file, "--x", across, "--y", f"jump_height_m:{height_m!r}:0.9:2")
    rows = csv.DictReader(io.StringIO(printed))
    return [float(row["turns"]) for row in rows if float(row["jump_height_m"]) == height_m]


def crossings(turns, level):
    """The horizontal map coordinates at which there are `level` turns."""
    return [
        (i + (level - a) / (b - a)) / (NODES - 1)
        for i, (a, b) in enumerate(zip(turns, turns[1:]))
        if (a < level) != (b < level)
    ]


@pytest.mark.sharp
@pytest.mark.window(1024, 768)
def test_a_drag_moves_the_jump_and_the_readouts_follow(page, tmp_path):
    before = ask(page).outputs()
    touch.touch_drag(page, *page.centre("map:point"), *at(page, 0.7, 0.6))
    wait_for_output(page, "turns", lambda text: text != before["turns"])
    wait_for_place(page, 0.7, 0.6)
    outputs = page.outputs()
    assert_equal(outputs, fly_stored(page, tmp_path))
    assert outputs["map:here"] == outputs["turns"]
    # 70 % of the way from 50 to 200 rpm, 60 % from 10 to 90 cm; a pixel is half of each.
    assert abs(shown(outputs["takeoff_rate_rad_s"])[0] - 155) <= 1
    assert abs(shown(outputs["jump_height_m"])[0] - 58) <= 1
    assert abs(place(page)[0] - 0.7) < 0.01 and abs(place(page)[1] - 0.6) < 0.01


@pytest.mark.sharp
@pytest.mark.window(1024, 768)
def test_a_press_moves_the_jump_there_and_a_press_near_the_point_drags_it(page):
    ask(page)
    touch.tap(page, *at(page, 0.3, 0.8))
    wait_for_place(page, 0.3, 0.8)
    x, y = page.centre("map:point")
    # From 15 px beside the point, by 40 px: the point moves by 40 px.
    touch.touch_drag(page, x + 15, y + 10, x + 55, y + 10)
    _, _, width, _ = page.rects()["map"]
    wait_for_place(page, 0.3 + 40 / width, 0.8)
    # A tap on the point moves nothing.
    kept = stored_scenario(page)
    touch.tap(page, *page.centre("map:point"))
    assert stored_scenario(page) == kept


@pytest.mark.sharp
@pytest.mark.window(390, 844)
def test_an_upright_swipe_scrolls_but_on_the_point(page):
    ask(page)
    top = page.rects()["map"][1]
    u, _ = place(page)
    touch.touch_drag(page, *page.centre("map:point"), *at(page, u, 0.1))
    wait_for_place(page, u, 0.1)
    # The warning that comes above may cover a little.
    assert abs(page.rects()["map"][1] - top) < 4
    kept = stored_scenario(page)
    x, y, width, height = page.rects()["map"]
    top = y
    # In the upper corner away from the point.
    beside = x + (0.85 if u < 0.5 else 0.15) * width
    touch.touch_drag(page, beside, y + 0.6 * height, beside + 5, y + 0.1 * height)
    page.wait_until("scrolled", lambda: page.rects()["map"][1] < top - 20)
    assert stored_scenario(page) == kept


def is_line_colour(pixel):
    """Whether a pixel has the colour of a whole-turn line; hatching and the full jump's line are
    lighter."""
    return sum(pixel) < 3 * 75 and pixel[1] - pixel[0] < 50


@pytest.mark.sharp
@pytest.mark.window(1024, 768)
def test_the_lines_stand_where_the_commands_flights_have_whole_turns(page, tmp_path):
    ask(page)
    x, y, width, height = page.rects()["map"]
    point_x, _ = page.centre("map:point")
    pixels = page.canvas_pixels().load()
    expected, drawn = {}, {}
    for row in range(4, NODES - 4, 3):
        part = row / (NODES - 1)
        turns = row_of_turns(page, tmp_path, HEIGHTS[0] * (1 - part) + HEIGHTS[1] * part)
        line_y = round(y + (1 - part) * height)
        # The line of two turns, those of the full jump, has another colour.
        for level in (1, 3, 4):
            for u in crossings(turns, level):
                line_x = x + u * width
                if abs(line_x - point_x) < 8 or not 8 < u * width < width - 8:
                    continue
                near = range(round(line_x) - 3, round(line_x) + 4)
                off = range(round(line_x) + 9, round(line_x) + 16)
                expected[level] = expected.get(level, 0) + 1
                drawn[level] = drawn.get(level, 0) + any(is_line_colour(pixels[i, line_y]) for i in near)
                drawn["off"] = drawn.get("off", 0) + any(is_line_colour(pixels[i, line_y]) for i in off)
    assert set(expected) == {1, 3, 4}
    total = sum(expected.values())
    # A line's label covers a row or two of it.
    for level, count in expected.items():
        assert drawn[level] >= max(1, count - 3), (level, expected, drawn)
    assert total > 20 and drawn["off"] < 0.2 * total, (expected, drawn)


@pytest.mark.window(768, 1024)
def test_another_slider_makes_another_map(page, tmp_path):
    before = ask(page).outputs()
    x, y, width, height = page.rects()["slider:arm_tuck"]
    middle = y + 0.75 * height
    touch.touch_drag(page, x + 0.4 * width, middle, x + 0.95 * width, middle)
    wait_for_output(page, "map:x_for_2", lambda text: text != before["map:x_for_2"])
    outputs = complete(page).outputs()
    height_m = json.loads(stored_scenario(page))["scenario"]["jump_height_m"]
    turns = row_of_turns(page, tmp_path, height_m)
    for level in (1, 2, 3):
        needed = [RPM * (RATES[0] * (1 - u) + RATES[1] * u) for u in crossings(turns, level)]
        text = outputs.get(f"map:x_for_{level}")
        assert (text is None) == (needed == []), level
        if text is not None:
            # The jump's height is between two rows of the map: a small difference.
            assert abs(shown(text)[0] - needed[0]) <= 0.6, level


@pytest.mark.window(1024, 768)
def test_other_levers_are_chosen_and_survive_a_reload(page):
    ask(page)
    choose(page, "x", "arm_tuck")
    wait_for_output(page, "map:x", lambda text: text == "Arm tuck from 0 to 100 %")
    choose(page, "y", "arm_tuck")
    wait_for_output(page, "map:y", lambda text: text == "Arm tuck from 0 to 100 %")
    complete(page)
    touch.tap(page, *at(page, 0.5, 0.5))
    wait_for_output(page, "jump_height_m", lambda text: text == "50 cm")
    before = page.outputs()
    assert before["map:x"] == "Jump height from 10 to 90 cm", "the axes were swapped"

    page.open().wait_ready()
    at_rest(page)
    complete(page)

    assert page.outputs() == before
