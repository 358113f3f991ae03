"""The page in the user's language: as the browser asks for it, or as chosen in the bar."""

import re

import pytest

import touch
from questions import QUESTIONS, ask
from command import fly, stored_scenario
from server import serving_slowly
from test_offline import wait_cached

# The page's name for the choice in the storage.
CHOICE = "turns-aloft/language"

GERMAN = "de-DE,de,en"

# Texts that are the same in both languages: the languages' own names, names of jumps.
SAME = {"English", "Deutsch", "Ideal", "Axel", "Salchow", "Flip", "Lutz"}

# Unit symbols that are the same in both; a text of these and whole numbers is the same too.
UNITS = {"cm", "m", "kg", "s", "lb", "J", "N", "W", "rad", "x", "q"}


def all_texts(page):
    """All texts of the page for people, by where they are."""
    return page.run(
        """
        const all = (selector) => [...document.querySelectorAll(selector)];
        const texts = {};
        const say = (where, text) => {
          if (text?.trim()) texts[where] = text.trim();
        };
        all("output[data-quantity]").forEach((output) => {
          say(`output ${output.dataset.quantity}`, output.textContent);
          say(`label ${output.dataset.quantity}`, output.previousElementSibling.textContent);
        });
        all("#controls > *").forEach((control, i) => {
          say(`control ${i}`, control.ariaLabel);
          say(`control ${i} in words`, control.getAttribute("aria-valuetext"));
        });
        all("[aria-label]:not(#controls > *)").forEach((named, i) => {
          say(`named ${named.id || i}`, named.ariaLabel);
        });
        for (const id of ["result", "loading-text", "no-graphics"]) {
          say(id, document.getElementById(id).textContent);
        }
        say("description", document.querySelector("meta[name=description]").content);
        const update = document.getElementById("update-ready").content;
        update.querySelectorAll("*").forEach((part, i) => say(`update ${i}`, part.textContent));
        return texts;
        """
    )


def language(page):
    return page.run("return document.documentElement.lang")


def choose(page, tag):
    touch.tap(page, *page.centre("Units"))
    page.wait_until("the languages", lambda: f"language:{tag}" in page.rects())
    touch.tap(page, *page.centre(f"language:{tag}"))
    page.wait_until("the language", lambda: language(page) == tag)
    # Outside the list, so that it closes.
    touch.tap(page, 300, 300)
    page.wait_until("closed", lambda: f"language:{tag}" not in page.rects())
    page.next_frames(4)


def whole_numbers(text):
    """Whether a text has only whole numbers and unit symbols."""
    return not re.search(r"\d\.\d", text) and set(re.findall(r"[^\W\d_]+", text)) <= UNITS


def untranslated(english, german):
    """The texts that are the same on a German and an English page."""
    return {
        where: text
        for where, text in german.items()
        if english.get(where) == text and text not in SAME and not whole_numbers(text)
    }


@pytest.mark.window(1024, 768)
@pytest.mark.parametrize("question", QUESTIONS)
def test_a_german_browser_gets_german_everywhere(new_page, question):
    english, german = new_page(), new_page(languages=GERMAN)
    texts = []
    for page in (english, german):
        page.open().wait_ready()
        page.wait_until("at rest", page.outputs)
        ask(page, question)
        texts.append(all_texts(page))
    assert (language(english), language(german)) == ("en", "de")
    assert texts[0].keys() == texts[1].keys(), "both have the same texts"
    assert len(texts[1]) > 80, "there are many texts"
    assert untranslated(*texts) == {}
    points = {where: text for where, text in texts[1].items() if re.search(r"\d\.\d", text)}
    assert points == {}, "decimal signs are commas"
    assert re.search(r"\d,\d", german.output("turns"))


def test_loading_is_shown_in_german(new_page, dist):
    [module] = dist.glob("*.wasm")
    size = module.stat().st_size
    with serving_slowly(dist) as (address, hurry):
        page = new_page(address, languages=GERMAN).open()

        def progress():
            text = page.driver.find_element("id", "loading-text").text
            return re.fullmatch(r"Der Simulator wird geladen: (\d+,\d) von (\d+,\d) MB", text)

        match = page.wait_until("progress in German", progress)
        done, whole = (float(number.replace(",", ".")) for number in match.groups())
        assert done <= whole == round(size / 1e6, 1)
        assert language(page) == "de"
        hurry.set()
        page.wait_ready()
        # The worker still fetches files; stopping the server before would cause errors.
        wait_cached(page)


@pytest.mark.parametrize(
    ("preferred", "tag"),
    [
        ("de-CH", "de"),
        ("fr,de-AT,en", "de"),
        ("en-GB,de", "en"),
        ("fr,it", "en"),
    ],
)
def test_the_first_preferred_language_that_is_available_is_used(new_page, preferred, tag):
    page = new_page(languages=preferred).open().wait_ready()
    assert page.run("return navigator.languages.join()").startswith(preferred.split(",")[0])
    assert language(page) == tag


@pytest.mark.window(1024, 768)
def test_choosing_english_changes_everything_and_nothing_else(new_page):
    page, english = new_page(languages=GERMAN), new_page()
    for one in (page, english):
        one.open().wait_ready()
        at_rest_in_any_language(one)
    for question in QUESTIONS:
        for one in (page, english):
            ask(one, question)
        kept = stored_scenario(page)
        choose(page, "en")
        page.wait_until("all of it in English", lambda: all_texts(page) == all_texts(english))
        assert stored_scenario(page) == kept
        if question != QUESTIONS[-1]:
            choose(page, "de")

    page.open().wait_ready()
    assert language(page) == "en"
    at_rest_in_any_language(page)
    page.wait_until("still in English", lambda: all_texts(page) == all_texts(english))


def at_rest_in_any_language(page):
    """Waits for the readout: with reduced motion the page opens on the landing."""
    page.wait_until("a readout", lambda: page.outputs().get("phase"))


@pytest.mark.parametrize("rubbish", ["", "fr", "DE ", "{]", "__proto__", "toString"])
def test_an_invalid_stored_language_is_ignored(new_page, rubbish):
    page = new_page(languages=GERMAN).open().wait_ready()
    page.run("localStorage.setItem(...arguments)", CHOICE, rubbish)
    page.open().wait_ready()
    assert language(page) == "de"
    assert page.notice() == ""
    assert "," in page.output("turns")


def test_the_message_without_graphics_is_german(new_page):
    page = new_page(languages=GERMAN, graphics=False).open().wait_ready()
    message = page.driver.find_element("id", "no-graphics")
    assert message.is_displayed() and "kann hier nicht gezeichnet werden" in message.text
    shown = page.driver.find_element("id", "readout")
    assert shown.is_displayed() and shown.accessible_name == "Werte"
    turns = fly("half-a-turn-short")["turns"]
    assert page.output("turns") == f"{turns:.2f}".replace(".", ",")
