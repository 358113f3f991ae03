"""Makes the page's fonts from the npm package @fontsource/barlow (version 5.3.0, OFL-1.1).

    npm pack @fontsource/barlow@5.3.0 && tar xzf fontsource-barlow-5.3.0.tgz
    python3 -m pip install fonttools==4.68.0 brotli==1.2.1
    python3 make.py package/files

Each font is cut down to the characters below, and the digits are replaced by the font's own
tabular ones ('tnum'), since the page's text engine does not choose font features: figures that
change while a slider is dragged must not dance.
"""

import sys
from pathlib import Path

from fontTools import subset
from fontTools.ttLib import TTFont

CHARACTERS = (
    "".join(chr(code) for code in range(0x20, 0x7F))
    + "".join(chr(code) for code in range(0xA0, 0x100))
    + "–—‘’“”„…−×≤≥½¼"
)


def tabular_digits(font):
    """Points the digits' characters at the glyphs that 'tnum' would choose."""
    gsub = font["GSUB"].table
    lookups = {
        index
        for record in gsub.FeatureList.FeatureRecord
        if record.FeatureTag == "tnum"
        for index in record.Feature.LookupListIndex
    }
    swaps = {}
    for index in lookups:
        for table in gsub.LookupList.Lookup[index].SubTable:
            swaps.update(getattr(table, "ExtSubTable", table).mapping)
    for table in font["cmap"].tables:
        for digit in "0123456789":
            glyph = table.cmap.get(ord(digit))
            if glyph in swaps:
                table.cmap[ord(digit)] = swaps[glyph]


def make(source, target):
    font = TTFont(source)
    tabular_digits(font)
    options = subset.Options()
    options.layout_features = ["kern"]
    options.hinting = False
    options.flavor = None
    cutter = subset.Subsetter(options)
    cutter.populate(text=CHARACTERS)
    cutter.subset(font)
    widths = {font["hmtx"][font.getBestCmap()[ord(d)]][0] for d in "0123456789"}
    assert len(widths) == 1, f"digits of different widths: {widths}"
    font.flavor = None
    font.save(target)


if __name__ == "__main__":
    files = Path(sys.argv[1])
    here = Path(__file__).parent
    for weight in (500, 600):
        make(files / f"barlow-latin-{weight}-normal.woff2", here / f"barlow-{weight}.ttf")
