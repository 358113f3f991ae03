"""The page in the user's language: as the browser asks for it, or as chosen in the bar."""

import re

import pytest

import touch
from asked import QUESTIONS, ask
from flown import fly, kept_scenario
from server import serving_slowly
from test_offline import wait_kept

# The page's name for the user's choice.
KEPT = "turns-aloft/language"

GERMAN = "de-DE,de,en"

# Texts that are the same in both languages: the languages' own names, names of jumps.
SAME = {"English", "Deutsch", "Ideal", "Axel", "Salchow", "Flip", "Lutz"}

# Signs of units that are the same in both; a text of these and whole numbers may be, too.
UNITS = {"cm", "m", "kg", "s", "lb", "J", "N", "W", "rad", "x", "q"}


def says(page):
    """Everything that the page says to people, by where it says it."""
    return page.run(
        """
        const all = (selector) => [...document.querySelectorAll(selector)];
        const said = {};
        const say = (where, text) => {
          if (text?.trim()) said[where] = text.trim();
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
        return said;
        """
    )


def language(page):
    return page.run("return document.documentElement.lang")


def choose(page, tag):
    touch.tap(page, *page.centre("Units"))
    page.wait_until("the languages", lambda: f"language:{tag}" in page.rects())
    touch.tap(page, *page.centre(f"language:{tag}"))
    page.wait_until("the language", lambda: language(page) == tag)
    # Beside the list, so that it closes.
    touch.tap(page, 300, 300)
    page.wait_until("closed", lambda: f"language:{tag}" not in page.rects())
    page.next_frames(4)


def whole_numbers(text):
    """Whether a text has only whole numbers and the signs of units."""
    return not re.search(r"\d\.\d", text) and set(re.findall(r"[^\W\d_]+", text)) <= UNITS


def untranslated(english, german):
    """What a German page says just as an English one does."""
    return {
        where: text
        for where, text in german.items()
        if english.get(where) == text and text not in SAME and not whole_numbers(text)
    }


@pytest.mark.window(1024, 768)
@pytest.mark.parametrize("question", QUESTIONS)
def test_a_german_browser_gets_german_everywhere(new_page, question):
    english, german = new_page(), new_page(languages=GERMAN)
    said = []
    for page in (english, german):
        page.open().wait_ready()
        page.wait_until("at rest", page.outputs)
        ask(page, question)
        said.append(says(page))
    assert (language(english), language(german)) == ("en", "de")
    assert said[0].keys() == said[1].keys(), "both say as much"
    assert len(said[1]) > 80, "and that is not little"
    assert untranslated(*said) == {}
    points = {where: text for where, text in said[1].items() if re.search(r"\d\.\d", text)}
    assert points == {}, "decimal signs are commas"
    assert re.search(r"\d,\d", german.output("turns"))


def test_loading_is_told_in_german(new_page, dist):
    [module] = dist.glob("*.wasm")
    size = module.stat().st_size
    with serving_slowly(dist) as (address, hurry):
        page = new_page(address, languages=GERMAN).open()

        def told():
            text = page.driver.find_element("id", "loading-text").text
            return re.fullmatch(r"Der Simulator wird geladen: (\d+,\d) von (\d+,\d) MB", text)

        match = page.wait_until("progress in German", told)
        done, whole = (float(number.replace(",", ".")) for number in match.groups())
        assert done <= whole == round(size / 1e6, 1)
        assert language(page) == "de"
        hurry.set()
        page.wait_ready()
        # The worker still fetches files; a server that ends before makes errors.
        wait_kept(page)


@pytest.mark.parametrize(
    ("wished", "tag"),
    [
        ("de-CH", "de"),
        ("fr,de-AT,en", "de"),
        ("en-GB,de", "en"),
        ("fr,it", "en"),
    ],
)
def test_the_first_language_wished_for_that_is_written_is_spoken(new_page, wished, tag):
    page = new_page(languages=wished).open().wait_ready()
    assert page.run("return navigator.languages.join()").startswith(wished.split(",")[0])
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
        kept = kept_scenario(page)
        choose(page, "en")
        page.wait_until("all of it in English", lambda: says(page) == says(english))
        assert kept_scenario(page) == kept
        if question != QUESTIONS[-1]:
            choose(page, "de")

    page.open().wait_ready()
    assert language(page) == "en"
    at_rest_in_any_language(page)
    page.wait_until("still in English", lambda: says(page) == says(english))


def at_rest_in_any_language(page):
    """Once the readout stands: for one who wants stillness the page opens on the landing."""
    page.wait_until("a readout", lambda: page.outputs().get("phase"))


@pytest.mark.parametrize("rubbish", ["", "fr", "DE ", "{]", "__proto__", "toString"])
def test_rubbish_in_the_storage_opens_the_browsers_language(new_page, rubbish):
    page = new_page(languages=GERMAN).open().wait_ready()
    page.run("localStorage.setItem(...arguments)", KEPT, rubbish)
    page.open().wait_ready()
    assert language(page) == "de"
    assert page.notice() == ""
    assert "," in page.output("turns")


def test_without_graphics_the_page_says_so_in_german(new_page):
    page = new_page(languages=GERMAN, graphics=False).open().wait_ready()
    message = page.driver.find_element("id", "no-graphics")
    assert message.is_displayed() and "kann hier nicht gezeichnet werden" in message.text
    shown = page.driver.find_element("id", "readout")
    assert shown.is_displayed() and shown.accessible_name == "Werte"
    turns = fly("half-a-turn-short")["turns"]
    assert page.output("turns") == f"{turns:.2f}".replace(".", ",")
