"""Opens files on the page, and waits for its downloads."""


def set_file(page, selector, path):
    """Chooses the file at `path` in the file input that `selector` finds, visible or not."""
    page.driver.find_element("css selector", selector).send_keys(str(path))
    page.next_frames()


def drop_file(page, name, text, selector="#stage"):
    """Drops a file of that name and content onto an element."""
    page.run(
        """
        const [name, text, selector] = arguments;
        const dataTransfer = new DataTransfer();
        dataTransfer.items.add(new File([text], name));
        for (const kind of ["dragenter", "dragover", "drop"]) {
          document.querySelector(selector).dispatchEvent(
            new DragEvent(kind, { bubbles: true, cancelable: true, dataTransfer }));
        }
        """,
        name,
        text,
        selector,
    )
    page.next_frames()


def wait_for_download(page, folder):
    """The one file that the page has saved into `folder`, once it is complete."""

    def whole():
        files = list(folder.iterdir())
        return len(files) == 1 and files[0].suffix not in (".crdownload", ".part") and files[0]

    return page.wait_until("a download", whole)
