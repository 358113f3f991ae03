"""Debian's Chromium, headless, drawing in software, with nothing remembered from before."""

import shutil
import tempfile
from contextlib import contextmanager

from selenium import webdriver
from selenium.webdriver.chrome.service import Service

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


@contextmanager
def chromium(size, scale=1, flags=(), downloads=None, languages="en-US,en"):
    """A touch-screen browser whose page is exactly `size` CSS pixels, `scale` device pixels each, and
    whose user wishes for `languages`."""
    with tempfile.TemporaryDirectory(prefix="chromium-", ignore_cleanup_errors=True) as profile:
        options = webdriver.ChromeOptions()
        options.binary_location = required("chromium")
        for flag in [
            *FLAGS,
            f"--user-data-dir={profile}",
            f"--force-device-scale-factor={scale}",
            *flags,
        ]:
            options.add_argument(flag)
        # Opening a page returns while its module is still on the way: loading is part of the page.
        options.page_load_strategy = "eager"
        options.add_experimental_option("prefs", {"intl.accept_languages": languages})
        options.set_capability("goog:loggingPrefs", {"browser": "ALL"})

        driver = webdriver.Chrome(options=options, service=Service(required("chromedriver")))
        try:
            # A window can't be as narrow as a phone, so the page's size is set, not the window's.
            # Factor 0 keeps the real pixel ratio: an emulated one would not reach the canvas.
            width, height = size
            driver.execute_cdp_cmd(
                "Emulation.setDeviceMetricsOverride",
                {"width": width, "height": height, "deviceScaleFactor": 0, "mobile": False},
            )
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


def required(program):
    path = shutil.which(program)
    if path is None:
        raise SystemExit(f"{program} is missing: web/test installs it.")
    return path
