"""The content security policy, that the page requests nothing from other servers, and what a system
needs to install it."""

import json

import pytest
from PIL import Image

from browser import chromium
from page import Page
from test_offline import wait_cached

READS_MANIFEST = "reads the manifest by the browser's developer tools"


@pytest.fixture
def manifest(page):
    """The manifest as the browser has read it."""
    read = page.driver.execute_cdp_cmd("Page.getAppManifest", {})
    assert read["errors"] == []
    assert read["url"] == page.address + "manifest.webmanifest"
    return json.loads(read["data"])


@pytest.mark.only("chromium", READS_MANIFEST)
def test_can_be_installed(page, manifest):
    wait_cached(page)
    found = page.driver.execute_cdp_cmd("Page.getInstallabilityErrors", {})
    assert found == {"installabilityErrors": []}
    assert manifest["name"] == page.driver.title
    assert manifest["display"] == "standalone"
    assert (manifest["start_url"], manifest["scope"]) == ("./", "./")
    [colour] = page.driver.find_elements("css selector", "meta[name=theme-color]")
    assert manifest["theme_color"] == colour.get_attribute("content")


@pytest.mark.only("chromium", READS_MANIFEST)
def test_icons_are_what_the_manifest_says(manifest, dist):
    seen = set()
    for icon in manifest["icons"]:
        with Image.open(dist / icon["src"]) as picture:
            assert icon["type"] == f"image/{picture.format.lower()}"
            assert icon["sizes"] == f"{picture.width}x{picture.height}"
            if icon.get("purpose") == "maskable":
                assert_maskable(picture)
        seen.add((icon["sizes"], icon.get("purpose", "any")))
    sizes, purposes = ["192x192", "512x512"], ["any", "maskable"]
    assert seen == {(size, purpose) for size in sizes for purpose in purposes}


@pytest.mark.looks
def test_the_icon_for_ios_is_there(page, dist):
    [link] = page.driver.find_elements("css selector", "link[rel=apple-touch-icon]")
    with Image.open(dist / link.get_dom_attribute("href")) as picture:
        assert picture.size == (180, 180)
        assert_opaque(picture)


def assert_opaque(picture):
    assert picture.convert("RGBA").getchannel("A").getextrema() == (255, 255)


def assert_maskable(picture):
    """W3C, Web Application Manifest, 'Icon masks and safe zone': the important part is within a circle
    about the centre with a radius of 2/5 of the width; the rest may be cut off."""
    assert_opaque(picture)
    picture = picture.convert("RGB")
    ground, middle = picture.getpixel((0, 0)), (picture.width - 1) / 2
    drawn = [
        (x, y)
        for x in range(picture.width)
        for y in range(picture.height)
        if picture.getpixel((x, y)) != ground
    ]
    farthest = max((x - middle) ** 2 + (y - middle) ** 2 for x, y in drawn) ** 0.5
    assert 0.3 * picture.width < farthest <= 0.4 * picture.width


@pytest.mark.looks
def test_the_policy_allows_no_inline_and_no_evaluated_code(page):
    selector = "meta[http-equiv=Content-Security-Policy]"
    [policy] = page.driver.find_elements("css selector", selector)
    rules = policy.get_dom_attribute("content").split("; ")
    rules = {name: set(allowed) for name, *allowed in map(str.split, rules)}
    assert rules["default-src"] == {"'none'"}
    [of_trunk] = rules.pop("script-src") - {"'self'", "'wasm-unsafe-eval'"}
    assert of_trunk.startswith("'sha256-")
    # The still picture of a jump, which the page makes itself.
    assert rules.pop("img-src") == {"'self'", "data:"}
    # A film that the user opens.
    assert rules.pop("media-src") == {"blob:"}
    # The style of the sheets of paper, which open in tabs of their own.
    [of_sheets] = rules.pop("style-src") - {"'self'"}
    assert of_sheets.startswith("'sha256-")
    assert all(allowed in ({"'self'"}, {"'none'"}) for allowed in rules.values())


# The directive that blocks it, the blocked address, and the script that tries it.
VIOLATIONS = [
    ("script-src-elem", "inline", "add('script', { textContent: 'window.broken = 1' })"),
    ("script-src-elem", "http://elsewhere.example/x", "add('script', { src: elsewhere + 'x' })"),
    ("script-src-attr", "inline", "add('b').setAttribute('onclick', 'window.broken = 1')"),
    ("script-src", "eval", "setTimeout('window.broken = 1')"),
    ("style-src-attr", "inline", "add('b').setAttribute('style', 'margin: 9px')"),
    ("img-src", "http://elsewhere.example/x", "add('img', { src: elsewhere + 'x' })"),
    ("connect-src", "http://elsewhere.example/x", "fetch(elsewhere + 'x').catch(() => {})"),
    ("frame-src", "http://elsewhere.example", "add('iframe', { src: elsewhere })"),
]


def test_violations_of_the_policy_are_blocked(new_page):
    page = new_page(expected_errors=["Content Security Policy", "Content-Security-Policy"]).open().wait_ready()
    page.run(
        """
        window.blocked = [];
        document.addEventListener("securitypolicyviolation", (event) =>
          window.blocked.push([event.effectiveDirective, event.blockedURI]));
        """
    )
    for *_, script in VIOLATIONS:
        page.run(
            """
            const elsewhere = "http://elsewhere.example/";
            const add = (name, what) => {
              const element = Object.assign(document.createElement(name), what);
              document.body.append(element);
              return element;
            };
            """
            + script
        )

    def blocked():
        return sorted(map(tuple, page.run("return window.blocked")))

    page.wait_until("all blocked", lambda: len(blocked()) >= len(VIOLATIONS))
    assert blocked() == sorted((directive, address) for directive, address, _ in VIOLATIONS)
    assert page.run("return window.broken") is None


def requests(log, origin):
    """The addresses requested by pages and workers of `origin`, from the browser's network log."""
    log = json.loads(log.read_text())
    start = log["constants"]["logEventTypes"]["URL_REQUEST_START_JOB"]
    started = [event.get("params", {}) for event in log["events"] if event["type"] == start]
    return [request["url"] for request in started if request.get("initiator") == origin]


@pytest.mark.only("chromium", "reads the browser's network log")
def test_nothing_is_requested_from_other_servers(site, dist, tmp_path):
    log, elsewhere = tmp_path / "log.json", "http://elsewhere.example/"
    with chromium((1024, 768), flags=[f"--log-net-log={log}"]) as driver:
        page = Page(driver, site).open().wait_ready()
        wait_cached(page)
        page.open().wait_ready()
        page.run("location = arguments[0]", elsewhere)
        page.wait_until("elsewhere", lambda: driver.current_url == elsewhere)
    *asked, last = requests(log, site.rstrip("/"))
    assert all(address.startswith(site) for address in asked), asked
    assert asked.count(site + "icons/maskable-512.png") == 1, "the worker's requests are among them"
    assert last == elsewhere, "the log has requests to other servers"
