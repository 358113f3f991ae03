"""Sheets of paper, as the browser prints them on A4 and on Letter: two pages at most, no line cut off, and
a code that opens what they are of. What stands on them `tests/sheet.rs` holds."""

import base64
import io
import json
import re
import zlib

import pytest
import zxingcpp
from PIL import Image
from selenium.webdriver.common.by import By
from selenium.webdriver.common.print_page_options import PrintOptions

from browser import ENGINES
from command import aloft
from server import REPOSITORY

ADDRESS = "https://example.org/turns-aloft/"
# Width and height, cm.
PAPERS = {"A4": (21.0, 29.7), "Letter": (21.59, 27.94)}
LESSONS = ["what-stays-the-same", "higher-or-tighter", "can-anybody-do-five", "arms-in"]
SHEETS = [
    *([sheet, lesson] for lesson in LESSONS for sheet in ["pupil", "answers", "plan"]),
    *(["coach", start] for start in ["half-a-turn-short", "five-turn-attempt", "trampoline"]),
]
# Between the margins of either paper, CSS pixels.
INNER_PX = 700


@pytest.fixture(scope="module")
def driver(request):
    with ENGINES[request.config.getoption("--engine")]((INNER_PX, 1000)) as driver:
        yield driver


@pytest.fixture
def opened(driver, tmp_path):
    """A function that shows a sheet."""

    def open_sheet(language, arguments):
        file = tmp_path / "sheet.html"
        file.write_text(aloft("sheet", *arguments, "--language", language, "--address", ADDRESS))
        driver.get(file.as_uri())
        return driver

    return open_sheet


def pages(pdf):
    """The pages of a PDF file (ISO 32000-1, 7.7.3.3), also where its objects are packed."""
    packed = re.findall(rb"stream\r?\n(.*?)endstream", pdf, re.DOTALL)
    unpacked = b""
    for stream in packed:
        try:
            unpacked += zlib.decompressobj().decompress(stream)
        except zlib.error:
            continue
    return len(re.findall(rb"/Type\s*/Page(?![A-Za-z])", pdf + unpacked))


def printed(driver, paper):
    width, height = PAPERS[paper]
    options = PrintOptions()
    options.page_width, options.page_height = width, height
    return base64.b64decode(driver.print_page(options))


def answered(lesson, words):
    """What a pupil has answered to every step, with so much in words."""
    text = (REPOSITORY / "assets" / "lessons" / f"{lesson}.lesson.json").read_text()
    steps = json.loads(text)["steps"]
    predictions = {"number": 2, "choice": 0, "words": words, "curve": [[0, 10], [0.2, 30]]}
    return {
        "turns_aloft_answers": 1,
        "lesson": json.loads(text)["title"]["en"],
        "who": "Two of us",
        "at": 0,
        "steps": [
            {
                "prediction": predictions[step["answer"]["kind"]],
                "reason": words if step.get("reason") else "",
                "observation": words if "observe" in step else "",
                "stage": "explain",
            }
            for step in steps
        ],
    }


@pytest.mark.parametrize("lesson", LESSONS)
def test_results_with_much_to_say_take_two_pages_at_most(opened, tmp_path, lesson):
    file = tmp_path / "answers.json"
    file.write_text(json.dumps(answered(lesson, 40 * "words ")))
    driver = opened("de", ["results", lesson, file])
    assert "Two of us" in driver.page_source
    for paper in PAPERS:
        assert 1 <= pages(printed(driver, paper)) <= 2, paper


@pytest.mark.parametrize("language", ["en", "de"])
def test_sheets_take_two_pages_at_most(opened, language):
    taken = {}
    for arguments in SHEETS:
        driver = opened(language, arguments)
        # Nothing is wider than the paper between its margins.
        assert driver.execute_script(
            "return document.documentElement.scrollWidth <= window.innerWidth"
        ), arguments
        for paper in PAPERS:
            taken[*arguments, paper] = pages(printed(driver, paper))
    assert set(taken.values()) <= {1, 2}, taken
    # A page that is not counted would be none.
    assert 2 in taken.values()


def test_longer_sheets_would_be_seen(opened):
    driver = opened("en", ["plan", "arms-in"])
    driver.execute_script("document.querySelector('main').style.height = '80cm'")
    assert pages(printed(driver, "A4")) >= 3


def test_the_code_on_a_sheet_is_read(opened):
    driver = opened("en", ["pupil", "arms-in"])
    picture = driver.find_element(By.CSS_SELECTOR, "header svg").screenshot_as_png
    image = Image.open(io.BytesIO(picture)).convert("L")
    [code] = zxingcpp.read_barcodes(image.resize((4 * image.width, 4 * image.height)))
    assert code.text == ADDRESS
