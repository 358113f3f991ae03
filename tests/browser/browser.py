"""Starts the two engines that the page is tested in, both from Debian, with software rendering and a
new profile: Chromium, headless, and Firefox ESR, which has WebGL only on a (virtual) screen."""

import os
import shutil
import subprocess
import tempfile
from contextlib import contextmanager

from selenium import webdriver
from selenium.webdriver.chrome.service import Service as ChromiumService
from selenium.webdriver.firefox.service import Service as FirefoxService

# So long that, even with software rendering on a busy machine, only a state never reached exceeds it.
PATIENCE_S = 90

FLAGS = [
    "--headless=new",
    "--no-sandbox",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--use-gl=angle",
    "--use-angle=swiftshader",
    "--enable-unsafe-swiftshader",
]

ENGLISH = "en-US,en"

PREFERENCES = {
    # No network requests of the browser's own.
    "app.update.enabled": False,
    "browser.newtabpage.enabled": False,
    "browser.safebrowsing.downloads.enabled": False,
    "datareporting.policy.dataSubmissionEnabled": False,
    "network.captive-portal-service.enabled": False,
    "network.connectivity-service.enabled": False,
    # WebGL in software.
    "webgl.force-enabled": True,
    # Touch events even where no touch screen is found.
    "dom.w3c_touch_events.enabled": 1,
    "browser.download.folderList": 2,
    "browser.download.start_downloads_in_tmp_dir": False,
    "browser.download.always_ask_before_handling_new_types": False,
}


@contextmanager
def chromium(
    size,
    scale=1,
    still=False,
    dark=False,
    graphics=True,
    languages=ENGLISH,
    downloads=None,
    flags=(),
):
    """Chromium with a touch screen and a page of exactly `size` CSS pixels, `scale` device pixels each.

    Options: reduced motion (`still`), dark colour scheme, no WebGL, preferred languages.
    """
    with tempfile.TemporaryDirectory(prefix="chromium-", ignore_cleanup_errors=True) as profile:
        options = webdriver.ChromeOptions()
        options.binary_location = required("chromium")
        for flag in [
            *FLAGS,
            f"--user-data-dir={profile}",
            f"--force-device-scale-factor={scale}",
            *(["--force-prefers-reduced-motion"] if still else []),
            *(["--blink-settings=preferredColorScheme=0"] if dark else []),
            *([] if graphics else ["--disable-3d-apis"]),
            *flags,
        ]:
            options.add_argument(flag)
        # driver.get() returns before the module is loaded, because loading is under test too.
        options.page_load_strategy = "eager"
        options.add_experimental_option("prefs", {"intl.accept_languages": languages})
        options.set_capability("goog:loggingPrefs", {"browser": "ALL"})

        driver = webdriver.Chrome(
            options=options, service=ChromiumService(required("chromedriver"))
        )
        try:
            limit_waits(driver)
            resize(driver, size)
            driver.execute_cdp_cmd(
                "Emulation.setTouchEmulationEnabled", {"enabled": True, "maxTouchPoints": 5}
            )
            if downloads is not None:
                driver.execute_cdp_cmd(
                    "Browser.setDownloadBehavior",
                    {"behavior": "allow", "downloadPath": str(downloads)},
                )
            yield driver
        finally:
            driver.quit()


@contextmanager
def firefox(
    size, scale=1, still=False, dark=False, graphics=True, languages=ENGLISH, downloads=None
):
    """Firefox with the same options."""
    options = webdriver.FirefoxOptions()
    options.binary_location = required("firefox-esr")
    for name, value in {
        **PREFERENCES,
        "layout.css.devPixelsPerPx": str(scale),
        "ui.prefersReducedMotion": int(still),
        "layout.css.prefers-color-scheme.content-override": 0 if dark else 1,
        "webgl.disabled": not graphics,
        "intl.accept_languages": languages,
        "browser.download.dir": str(downloads),
    }.items():
        options.set_preference(name, value)
    options.page_load_strategy = "eager"
    # WebDriver BiDi, for the size of the page and its console.
    options.set_capability("webSocketUrl", True)

    with screen() as display:
        service = FirefoxService(required("geckodriver"), env={**os.environ, "DISPLAY": display})
        driver = webdriver.Firefox(options=options, service=service)
        yield from running(driver, size)


def running(driver, size):
    """Yields the browser with console and size set up, and quits it afterwards."""
    try:
        limit_waits(driver)
        resize(driver, size)
        driver.logged = []
        driver.script.add_console_message_handler(
            lambda entry: driver.logged.append(console_entry(entry.level, entry.text))
        )
        driver.script.add_javascript_error_handler(
            lambda entry: driver.logged.append(console_entry("error", entry.text))
        )
        yield driver
    finally:
        driver.quit()


@contextmanager
def screen():
    """Yields the display name of a new virtual screen: one per browser, because a covered window is
    not drawn."""
    read_end, write_end = os.pipe()
    server = subprocess.Popen(
        [required("Xvfb"), "-displayfd", str(write_end), "-screen", "0", "1600x1200x24"],
        pass_fds=[write_end],
        stderr=subprocess.DEVNULL,
    )
    os.close(write_end)
    try:
        with os.fdopen(read_end) as number:
            yield f":{number.readline().strip()}"
    finally:
        server.terminate()
        server.wait()


ENGINES = {"chromium": chromium, "firefox": firefox}


def console_entry(level, text):
    """A console message in Chromium's form."""
    return {"level": {"error": "SEVERE", "warn": "WARNING"}.get(level, "INFO"), "message": text}


def limit_waits(driver):
    """Limits the waits for pages and scripts."""
    driver.set_page_load_timeout(PATIENCE_S)
    driver.set_script_timeout(PATIENCE_S)


def resize(driver, size):
    """Sets the size of the page instead of the window, which can't be as narrow as a phone."""
    width, height = size
    if driver.name == "firefox":
        driver.browsing_context.set_viewport(
            context=driver.current_window_handle, viewport={"width": width, "height": height}
        )
    else:
        # Factor 0 keeps the real pixel ratio: an emulated one would not reach the canvas.
        driver.execute_cdp_cmd(
            "Emulation.setDeviceMetricsOverride",
            {"width": width, "height": height, "deviceScaleFactor": 0, "mobile": False},
        )


def console(driver):
    """The console messages since the last call."""
    if driver.name == "firefox":
        logged, driver.logged[:] = list(driver.logged), []
        return logged
    return driver.get_log("browser")


def required(program):
    path = shutil.which(program)
    if path is None:
        raise SystemExit(f"{program} is missing: web/test installs it.")
    return path
