"""Makes the icons of the installed page from web/icon.svg.

    python3 -m pip install resvg-py==0.5.0
    python3 make.py

The plain ones keep the drawing's rounded corners. The others fill their square, since the system
cuts its own shape out of them: a maskable one at least the circle of 40 % of its width about the
middle, so the drawing is made small enough for that; iOS only rounds the corners.
"""

import re
from pathlib import Path

import resvg_py

HERE = Path(__file__).parent
SVG = (HERE.parents[1] / "web" / "icon.svg").read_text(encoding="utf-8")

# The drawing's far corner, the end of the ice, lies at 0.54 of the width from the middle.
INTO_THE_CIRCLE = 0.7


def full_square(svg, scale):
    """The same drawing without the corners, everything but the ground scaled about the middle."""
    svg, corners = re.subn(r' rx="\d+"', "", svg)
    about = f"translate(32 32) scale({scale}) translate(-32 -32)"
    svg, groups = re.subn("<g ", f'<g transform="{about}" ', svg)
    assert (corners, groups) == (1, 1), "web/icon.svg: expected one rounded ground and one group"
    return svg


def make(name, svg, pixels):
    png = resvg_py.svg_to_bytes(svg_string=svg, width=pixels, height=pixels)
    (HERE / f"{name}.png").write_bytes(bytes(png))


if __name__ == "__main__":
    for pixels in (192, 512):
        make(f"icon-{pixels}", SVG, pixels)
        make(f"maskable-{pixels}", full_square(SVG, INTO_THE_CIRCLE), pixels)
    make("apple-180", full_square(SVG, 0.9), 180)
