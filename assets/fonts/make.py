"""Makes the page's fonts from the npm packages @fontsource/barlow and @fontsource/fira-sans (version
5.3.0 of both, OFL-1.1).

    npm pack @fontsource/barlow@5.3.0 && tar xzf fontsource-barlow-5.3.0.tgz && mv package barlow
    npm pack @fontsource/fira-sans@5.3.0 && tar xzf fontsource-fira-sans-5.3.0.tgz && mv package fira
    python3 -m pip install fonttools==4.68.0 brotli==1.2.1
    python3 make.py barlow/files fira/files

Each font is cut down to the characters below, and the digits are replaced by the font's own
tabular ones ('tnum'), since the page's text engine does not choose font features: figures that
change while a slider is dragged must not dance. Barlow has no Greek and no sign for "almost equal":
the small omega is that of Fira Sans, which is as high, and the sign is made of two tildes.
"""

import sys
from pathlib import Path

from fontTools import subset
from fontTools.pens.recordingPen import DecomposingRecordingPen
from fontTools.pens.transformPen import TransformPen
from fontTools.pens.ttGlyphPen import TTGlyphPen
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


def add_glyph(font, character, name, outlines, width):
    """Adds a glyph made of outlines, each moved by so much."""
    pen = TTGlyphPen(None)
    for outline, (right, up) in outlines:
        outline.replay(TransformPen(pen, (1, 0, 0, 1, right, up)))
    glyph = pen.glyph()
    glyph.recalcBounds(font["glyf"])
    font["glyf"][name] = glyph
    font["hmtx"][name] = (width, glyph.xMin)
    for table in font["cmap"].tables:
        table.cmap[ord(character)] = name


def outline_of(font, character):
    """The outline of a character's glyph, and its width."""
    name = font.getBestCmap()[ord(character)]
    glyphs = font.getGlyphSet()
    outline = DecomposingRecordingPen(glyphs)
    glyphs[name].draw(outline)
    return outline, font["hmtx"][name][0]


def make(source, greek, target):
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
    outline, width = outline_of(TTFont(greek), "ω")
    add_glyph(font, "ω", "omega", [(outline, (0, 0))], width)
    outline, width = outline_of(font, "~")
    add_glyph(font, "≈", "approxequal", [(outline, (0, 95)), (outline, (0, -95))], width)
    font.flavor = None
    font.save(target)


if __name__ == "__main__":
    barlow, fira = map(Path, sys.argv[1:])
    here = Path(__file__).parent
    for weight in (500, 600):
        make(
            barlow / f"barlow-latin-{weight}-normal.woff2",
            fira / f"fira-sans-greek-{weight}-normal.woff2",
            here / f"barlow-{weight}.ttf",
        )
