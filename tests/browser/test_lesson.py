"""Lessons played in the browser: by touch, by keyboard and by the real controls; nothing is lost, nothing is told too
early, and what is explained is what the command's answer sheet says."""

import pytest
from selenium.webdriver import Keys

import touch
from command import aloft
from sight import in_column, reveal
from test_keyboard import named, press, tab_to

PLAYED = [("what-stays-the-same", (1366, 1024)), ("arms-in", (390, 844))]

# The words of a control in both languages, where it is found by its name.
WORDS = {
    "en": {"begin": "Begin", "leave": "Leave the lesson"},
    "de": {"begin": "Anfangen", "leave": "Die Stunde verlassen"},
}


def enter(page, lesson):
    touch.tap(page, *page.centre("starts"))
    name = f"lesson:{lesson}"
    page.wait_until("the menu", lambda: name in page.rects())
    _, y, _, height = page.rects()["starts"]
    touch.tap(page, *reveal(page, name, top=y + height))
    page.wait_until("the lesson", lambda: "lesson:title" in page.outputs())


def tap(page, name):
    """Taps a touch target, scrolled into sight where it has to be."""
    touch.tap(page, *in_column(page, name))
    page.next_frames(4)


def said(page, key):
    return page.outputs().get(f"lesson:{key}", "")


def write(page, name, text):
    """Types into a field: a tap opens it."""
    tap(page, name)
    press(page, *text, Keys.ENTER)
    page.next_frames(4)


def predict(page):
    """Predicts whatever is asked for, by touch."""
    rects = page.rects()
    if "lesson number" in rects:
        write(page, "lesson number", "1.5")
    elif "lesson curve" in rects:
        in_column(page, "lesson curve")
        x, y, width, height = page.rects()["lesson curve"]
        touch.touch_drag(page, x + 9, y + 0.6 * height, x + width - 9, y + 0.4 * height)
    elif "lesson words" in rects:
        write(page, "lesson words", "Maybe.")
    else:
        tap(page, "lesson option:1")
    if "lesson reason" in page.rects():
        write(page, "lesson reason", "Arms.")


def play(page, steps=None):
    """Plays steps by touch, all of them unless it says how many; returns each one's explanation."""
    explained = []
    while steps is None or len(explained) < steps:
        before = said(page, "step")
        assert "lesson:explanation" not in page.outputs(), before
        page.wait_until("what is asked", lambda: any(it.startswith("lesson ") for it in page.rects()))
        predict(page)
        for _ in range(3):
            if "lesson:explanation" in page.outputs():
                break
            if "lesson observation" in page.rects():
                write(page, "lesson observation", "Faster.")
            stage = said(page, "stage")
            # What is led by hand takes some seconds.
            go_on(page, stage)
        explained.append(page.wait_until("an explanation", lambda: said(page, "explanation")))
        if "lesson on" not in page.rects():
            break
        tap(page, "lesson on")
        page.wait_until("the next step", lambda: said(page, "step") != before)
    return explained


def go_on(page, stage):
    def gone():
        if said(page, "stage") != stage:
            return True
        if "push right" in page.rects():
            tap(page, "push right")
        tap(page, "lesson on")
        return said(page, "stage") != stage

    page.wait_until(f"what follows {stage}", gone)


@pytest.mark.parametrize("lesson, size", PLAYED)
def test_a_lesson_is_played_by_touch_to_its_end(new_page, lesson, size):
    page = new_page(size=size).open().wait_ready()
    enter(page, lesson)
    tap(page, "lesson begin")
    explained = play(page)
    sheet = aloft("lesson", lesson)
    assert len(explained) >= 4
    for text in explained:
        assert " ".join(text.split()) in " ".join(sheet.split()), text
    # It is kept over a reload, and left.
    page.wait_until("rest", page.is_settled)
    page.open().wait_ready()
    page.wait_until("the same place", lambda: said(page, "explanation") == explained[-1])
    tap(page, "leave lesson")
    page.wait_until("the jump of before", lambda: "turns" in page.outputs())


@pytest.mark.window(1024, 768)
def test_nothing_is_told_before_it_is_predicted(page):
    enter(page, "higher-or-tighter")
    tap(page, "lesson begin")
    page.wait_until("the question", lambda: said(page, "question"))
    assert not {"turns", "hang_time_s", "peak_rate_rad_s"} & page.outputs().keys()
    assert page.run("return document.getElementById('result').textContent").startswith("Predict first")
    # Nor by the keyboard's play.
    press(page, " ")
    page.next_frames(10)
    assert "turns" not in page.outputs()


@pytest.mark.window(1024, 768)
@pytest.mark.parametrize("language", ["en", "de"])
def test_by_keyboard_a_step_is_predicted_and_explained(new_page, language):
    page = new_page(languages=f"{language},en").open().wait_ready()
    enter(page, "arms-in")
    tab_to(page, WORDS[language]["begin"])
    press(page, Keys.ENTER)
    page.wait_until("the question", lambda: said(page, "question"))
    option = named(page, "Arm")[-1]
    tab_to(page, option)
    press(page, Keys.ENTER)
    for _ in range(3):
        if "lesson:explanation" in page.outputs():
            break
        stage = said(page, "stage")
        on = page.run("return window.turnsAloft.rects()['lesson on']")
        assert on
        label = page.run(
            "const [x, y, width, height] = window.turnsAloft.rects()['lesson on'];"
            "const near = (element) => Math.abs(parseFloat(element.style.left) - x)"
            " + Math.abs(parseFloat(element.style.top) - y);"
            "return [...document.querySelectorAll('#controls > *')]"
            ".sort((a, b) => near(a) - near(b))[0].ariaLabel"
        )
        tab_to(page, label)
        press(page, Keys.ENTER)
        page.wait_until("what follows", lambda: said(page, "stage") != stage)
    assert said(page, "explanation")
    tab_to(page, WORDS[language]["leave"])
    press(page, Keys.ENTER)
    page.wait_until("the jump of before", lambda: "turns" in page.outputs())


@pytest.mark.window(1024, 768)
def test_a_broken_lesson_gets_one_sentence_and_loses_nothing(page, tmp_path):
    before = page.outputs()
    for name, text in {
        "key": '{"turns_aloft_lesson": 1, "colour": "red"}',
        "newer": '{"turns_aloft_lesson": 99}',
        "cut": '{"turns_aloft_lesson": 1, "title": "A',
    }.items():
        path = tmp_path / f"{name}.lesson.json"
        path.write_text(text)
        old = page.notice()
        page.driver.find_element("id", "scenario-file").send_keys(str(path))
        notice = page.wait_until("a sentence", lambda: page.notice() != old and page.notice())
        assert notice.count("\n") == 0 and len(notice) < 400, notice
        assert page.outputs() == before
