"""The page without a network, and updates: complete or not at all."""

import hashlib
import shutil
import urllib.error
import urllib.request

import pytest

from finish import write_worker
from page import wait_for_output
from server import serving
from test_jump import at_rest
from test_session import choose_start

# The title tells which version is open.
FIRST, LATER = "Turns Aloft", "Turns Aloft, later"
LATER_STYLE = "style-later.css"

OFFER = "A new version is ready; it opens with the next reload."


@pytest.fixture
def copy(dist, tmp_path):
    """A copy of the page that a test can change."""
    folder = tmp_path / "copy"
    shutil.copytree(dist, folder)
    return folder


def publish_later(folder):
    """Changes the page in `folder` to another version: another title and style file."""
    index, [style] = folder / "index.html", folder.glob("style-*.css")
    html = index.read_text()
    for old, new in [(f"<title>{FIRST}<", f"<title>{LATER}<"), (style.name, LATER_STYLE)]:
        assert html.count(old) == 1
        html = html.replace(old, new)
    index.write_text(html)
    style.rename(folder / LATER_STYLE)
    write_worker(folder)
    return style.name


def wait_cached(page):
    """Waits until the page is cached for use without a network."""
    page.wait_until(
        "a worker", lambda: page.run("return navigator.serviceWorker.controller !== null")
    )
    return page


def come_back_online(page):
    """Simulates losing and regaining the network, after which the page checks for a new version.
    The server runs all the time."""
    if page.driver.name == "firefox":
        # Its driver can't disable the network, but the event can be sent.
        page.run("dispatchEvent(new Event('online'))")
        return
    page.driver.set_network_conditions(offline=True, latency=0, throughput=0)
    page.wait_until("offline", lambda: not page.run("return navigator.onLine"))
    page.driver.delete_network_conditions()
    page.wait_until("online", lambda: page.run("return navigator.onLine"))


def watch_workers(page):
    """From now on `window.workerState` is the state of the newest worker being installed."""
    page.driver.execute_async_script(
        """
        const done = arguments[0];
        navigator.serviceWorker.ready.then((registration) => {
          registration.addEventListener("updatefound", () => {
            const worker = registration.installing;
            worker.addEventListener("statechange", () => { window.workerState = worker.state; });
          });
          done();
        });
        """
    )


def wait_worker(page, state):
    page.wait_until(f"a worker {state}", lambda: page.run("return window.workerState") == state)


def offered(page):
    return page.driver.find_element("id", "update").text


def button(page, name):
    buttons = page.driver.find_elements("css selector", "#update button")
    [named] = [button for button in buttons if button.accessible_name == name]
    return named


def wait_offered(page):
    page.wait_until("an offer", lambda: OFFER in offered(page))


def console_errors(page):
    return [entry["message"] for entry in page.console() if entry["level"] != "INFO"]


def files(folder):
    """The page's files except the worker: address to path."""
    found = {path.relative_to(folder).as_posix(): path for path in folder.rglob("*.*")}
    hidden = [name for name, path in found.items() if path.is_dir() or name.startswith(".")]
    for name in [*hidden, "sw.js"]:
        del found[name]
    found["./"] = found.pop("index.html")
    return found


def assert_whole(page, folder):
    """The page gets every file of `folder` with the same content."""
    expected = {
        name: hashlib.sha256(path.read_bytes()).hexdigest() for name, path in files(folder).items()
    }
    seen = page.driver.execute_async_script(
        """
        const [names, done] = arguments;
        const sum = async (name) => {
          const body = await (await fetch(name)).arrayBuffer();
          const bytes = new Uint8Array(await crypto.subtle.digest("SHA-256", body));
          return [name, [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("")];
        };
        Promise.all(names.map(sum)).then(Object.fromEntries)
          .then(done, (error) => done(`${error}`));
        """,
        list(expected),
    )
    assert seen == expected


@pytest.mark.parametrize("opened", ["", "index.html", "#later"])
def test_opens_without_a_network_from_the_second_visit_on(new_page, dist, tmp_path, opened):
    (tmp_path / "some").mkdir()
    (tmp_path / "some" / "where").symlink_to(dist)
    with serving(tmp_path) as server:
        address = server + "some/where/"
        page = new_page(address).open().wait_ready()
        before = at_rest(page).outputs()
        wait_cached(page)
    with pytest.raises(urllib.error.URLError):
        urllib.request.urlopen(address)

    page.open(opened).wait_ready()
    assert at_rest(page).outputs() == before
    assert_whole(page, dist)
    # Failing to find a new version causes no message.
    found = page.driver.execute_async_script(
        """
        const done = arguments[0];
        dispatchEvent(new Event("online"));
        navigator.serviceWorker.ready.then((registration) => registration.update())
          .then(() => done(true), () => done(false));
        """
    )
    assert found is False
    assert console_errors(page) == []


def test_an_update_in_the_middle_of_a_session(new_page, copy, tmp_path):
    with serving(copy) as address:
        page = wait_cached(new_page(address).open().wait_ready())
        choose_start(page, "four-turns")
        wait_for_output(page, "turns_owed", lambda text: text == "4")
        before = at_rest(page).outputs()
        assert offered(page) == "", "the first version is no update"

        publish_later(copy)
        come_back_online(page)
        wait_offered(page)

    # The update is offered once it is cached; the open page still works without the server.
    assert page.driver.title == FIRST
    choose_start(page, "child-single")
    wait_for_output(page, "turns_owed", lambda text: text == "1")
    choose_start(page, "four-turns")
    wait_for_output(page, "turns_owed", lambda text: text == "4")

    button(page, "Reload now").click()
    page.wait_until("the later version", lambda: page.driver.title == LATER)
    page.wait_ready()
    assert at_rest(page).outputs() == before, "the present jump is restored"
    assert offered(page) == ""
    assert_whole(page, copy)


def lowest(page, name):
    """The lower edge of a touch target."""
    _, y, _, height = page.rects()[name]
    return y + height


def test_an_offer_covers_nothing_and_can_be_dismissed(new_page, copy):
    with serving(copy) as address:
        page = wait_cached(new_page(address).open().wait_ready())
        publish_later(copy)
        come_back_online(page)
        wait_offered(page)

        bar = page.driver.find_element("id", "update")
        canvas = page.driver.find_element("id", "stage")
        assert bar.aria_role == "status"
        assert canvas.rect["y"] + canvas.rect["height"] <= bar.rect["y"]
        page.wait_until("the panels above it", lambda: lowest(page, "charts") <= bar.rect["y"])
        for name in ["Reload now", "Later"]:
            rect = button(page, name).rect
            assert rect["height"] >= 44 and rect["width"] >= 44
        button(page, "Later").click()
        assert offered(page) == ""
        assert canvas.rect["height"] == 768
        page.wait_until("the panels back", lambda: lowest(page, "charts") > 700)

        page.open().wait_ready()
        assert page.driver.title == LATER


@pytest.mark.parametrize("fault", ["a file missing", "a file torn"])
def test_an_incomplete_update_changes_nothing(new_page, copy, tmp_path, fault):
    first = tmp_path / "first"
    shutil.copytree(copy, first)
    with serving(copy) as address:
        page = wait_cached(new_page(address).open().wait_ready())
        watch_workers(page)
        publish_later(copy)
        broken = copy / {"a file missing": LATER_STYLE, "a file torn": "index.html"}[fault]
        whole = broken.read_bytes()
        if fault == "a file missing":
            broken.unlink()
        else:
            broken.write_bytes(whole[: len(whole) // 2])
        come_back_online(page)
        wait_worker(page, "redundant")
        assert offered(page) == "" and page.notice() == ""

        page.open().wait_ready()
        assert page.driver.title == FIRST
        assert_whole(page, first)
        assert offered(page) == "" and page.notice() == ""
        assert console_errors(page) == []

        # Once the file is complete, the same update is installed.
        broken.write_bytes(whole)
        come_back_online(page)
        wait_offered(page)
    page.open().wait_ready()
    assert page.driver.title == LATER
    assert_whole(page, copy)


def caches(page):
    return page.driver.execute_async_script("caches.keys().then(arguments[0])")


def test_an_old_version_stays_cached_while_one_of_its_pages_is_open(new_page, copy):
    with serving(copy) as address:
        page = wait_cached(new_page(address).open().wait_ready())
        [first] = caches(page)
        style = publish_later(copy)
        come_back_online(page)
        wait_offered(page)
        old = page.driver.current_window_handle

        page.driver.switch_to.new_window("tab")
        page.open().wait_ready()
        assert page.driver.title == LATER
        page.driver.close()
        page.driver.switch_to.window(old)
        assert page.driver.title == FIRST
        assert_served(page, style)

        page.driver.get("about:blank")
        page.open().wait_ready()
        page.wait_until("one version", lambda: len(caches(page)) == 1)
        assert first not in caches(page)


def assert_served(page, name):
    served = page.driver.execute_async_script(
        "fetch(arguments[0]).then((response) => arguments[1](response.ok))", name
    )
    assert served


def test_deleted_caches_are_restored(new_page, dist):
    with serving(dist) as address:
        page = wait_cached(new_page(address).open().wait_ready())
        [version] = caches(page)
        page.driver.execute_async_script("caches.delete(arguments[0]).then(arguments[1])", version)
        page.open().wait_ready()

        def kept():
            return page.driver.execute_async_script(
                "caches.open(arguments[0]).then((cache) => cache.keys())"
                ".then((keys) => arguments[1](keys.length))",
                version,
            )

        page.wait_until("all files", lambda: kept() == len(files(dist)))
    page.open().wait_ready()
    assert_whole(page, dist)


@pytest.mark.fresh
@pytest.mark.only("chromium", "limits the storage by its developer tools")
def test_a_full_storage_changes_nothing(new_page, site):
    page = new_page()
    page.driver.execute_cdp_cmd(
        "Page.addScriptToEvaluateOnNewDocument",
        {
            "source": """
            const register = ServiceWorkerContainer.prototype.register;
            ServiceWorkerContainer.prototype.register = async function (...what) {
              const registration = await register.apply(this, what);
              const worker = registration.installing;
              worker.addEventListener("statechange", () => { window.workerState = worker.state; });
              return registration;
            };
            """
        },
    )
    page.driver.execute_cdp_cmd(
        "Storage.overrideQuotaForOrigin", {"origin": site.rstrip("/"), "quotaSize": 1_000_000}
    )
    page.open().wait_ready()
    wait_worker(page, "redundant")
    before = at_rest(page).outputs()
    page.open().wait_ready()
    assert at_rest(page).outputs() == before
    assert offered(page) == "" and page.notice() == ""
    assert console_errors(page) == []
