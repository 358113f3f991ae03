"""The bar code in every picture of a test film: the frame's number, to be read from the pixels.

It fills a strip along the top of the picture, as wide as it and a sixth of its height, cut into 16 cells
of equal width, from the left:

    0      white
    1      black
    2-13   the number, the highest of its 12 bits first: white is 1, black is 0
    14-15  how many of those 12 bits are white, modulo 4, the higher bit first

A cell is read in its middle, halfway down the strip. It is white if it is lighter than the mean of cells
0 and 1. What doesn't start with white and black, or whose count is wrong, is no bar code.
"""

CELLS = 16
BITS = 12
PARTS_OF_HEIGHT = 6


def cells(number):
    """The cells of a frame's number, each True for white."""
    bits = [bool(number >> bit & 1) for bit in reversed(range(BITS))]
    count = sum(bits) % 4
    return [True, False, *bits, bool(count & 2), bool(count & 1)]


def row(number):
    """A line of pixels, one for each cell, as grey bytes."""
    return bytes(235 if white else 16 for white in cells(number))


def read(line):
    """The number in a line of grey pixels across the strip, or None."""
    width = len(line)
    seen = [line[(2 * cell + 1) * width // (2 * CELLS)] for cell in range(CELLS)]
    middle = (seen[0] + seen[1]) / 2
    if seen[0] - seen[1] < 64:
        return None
    white = [value > middle for value in seen]
    number = sum(bit << place for place, bit in enumerate(reversed(white[2 : 2 + BITS])))
    return number if white == cells(number) else None
