"""The still picture of a jump: saved as PNG, and sent by the device's own sheet where it has one."""

import pytest
import zxingcpp
from PIL import Image

import touch
from files import wait_for_download
from page import wait_for_output
from test_jump import at_rest
from test_session import choose_start

SIZE = (1080, 1350)


def choose(page, item):
    touch.tap(page, *page.centre("Share"))
    page.wait_until("the ways to share", lambda: item in page.rects())
    touch.tap(page, *page.centre(item))


@pytest.mark.window(1024, 768)
def test_a_picture_is_saved_and_its_code_opens_the_jump(page, downloads):
    at_rest(page)
    choose_start(page, "four-turns")
    wait_for_output(page, "turns_owed", lambda text: text == "4")
    choose(page, "Picture")
    saved = wait_for_download(page, downloads)
    assert saved.suffix == ".png"
    with Image.open(saved) as picture:
        assert picture.size == SIZE
        # Read by a library that is not ours (ZXing).
        [code] = zxingcpp.read_barcodes(picture.convert("RGB"))
    before = page.outputs()
    page.open("#" + code.text.partition("#")[2]).wait_ready()
    assert code.text.startswith(page.address)
    at_rest(page)
    page.wait_until("the jump that was sent", lambda: page.outputs() == before)


@pytest.mark.fresh
@pytest.mark.only("chromium", "Firefox has no way to put a script before the page's own")
@pytest.mark.window(390, 844)
def test_link_and_picture_go_to_the_sheet_of_the_device(new_page):
    page = new_page()
    page.driver.execute_cdp_cmd(
        "Page.addScriptToEvaluateOnNewDocument",
        {
            "source": """
            window.sent = [];
            navigator.canShare = () => true;
            navigator.share = (data) => {
              window.sent.push({
                title: data.title, url: data.url, files: (data.files ?? []).map((it) => it.type),
              });
              return Promise.resolve();
            };
            """
        },
    )
    page.open().wait_ready()
    at_rest(page)
    choose(page, "Send link")
    [link] = page.wait_until("a link", lambda: page.run("return sent.length && sent"))
    assert "#jump." in link["url"]
    choose(page, "Send picture")
    sent = page.wait_until("a picture", lambda: page.run("return sent.length > 1 && sent"))
    assert sent[1]["files"] == ["image/png"]


@pytest.mark.fresh
@pytest.mark.only("chromium", "Firefox has no way to put a script before the page's own")
@pytest.mark.window(1024, 768)
def test_a_picture_that_the_sheet_refuses_is_saved(new_page, downloads):
    page = new_page()
    page.driver.execute_cdp_cmd(
        "Page.addScriptToEvaluateOnNewDocument",
        {
            "source": """
            navigator.canShare = () => true;
            navigator.share = () => Promise.reject(new DOMException("", "NotAllowedError"));
            """
        },
    )
    page.open().wait_ready()
    at_rest(page)
    choose(page, "Send picture")
    assert wait_for_download(page, downloads).suffix == ".png"
