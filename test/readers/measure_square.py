"""Renders the first page of a PDF by poppler at 600 dpi and measures its square in the picture.

Usage: measure_square.py FILE.pdf MARGIN CORNERS, the corners in mm from the page's upper left as they are looked for. Prints the width and height in mm that the
middles of the square's lines are apart, how many dark pixels lie in the margin, and how many there are.
"""
import json, subprocess, sys
import numpy as np

pdf, margin, corners = sys.argv[1], float(sys.argv[2]), json.loads(sys.argv[3])
raw = subprocess.run(["pdftoppm", "-r", "600", "-gray", "-f", "1", "-l", "1", pdf], capture_output=True, check=True).stdout
head, size, most, rest = raw.split(b"\n", 3)
width, height = map(int, size.split())
dark = 255 - np.frombuffer(rest, np.uint8, width * height).reshape(height, width).astype(float)
px = 600 / 25.4
xs, ys = sorted(x for x, _ in corners), sorted(y for _, y in corners)
left, right, upper, lower = xs[0], xs[-1], ys[0], ys[-1]


def middle(at, picture, low, high):
    """Where a line near `at` (mm) runs across the picture's columns: the middle of the dark there, over the rows where nothing else is near."""
    a, b = int((at - 0.8) * px), int((at + 0.8) * px)
    band = picture[int(low * px):int(high * px), a:b]
    ink = band.sum(axis=1)
    rows = band[np.abs(ink - np.median(ink)) <= 0.05 * np.median(ink)]
    return float(((rows.sum(axis=0) * (np.arange(a, b) + 0.5)).sum() / rows.sum()) / px)


across = [middle(x, dark, upper + 2, lower - 2) for x in (left, right)]
down = [middle(y, dark.T, left + 2, right - 2) for y in (upper, lower)]
m = int(margin * px)
border = dark.copy()
border[m:height - m, m:width - m] = 0
print(json.dumps({"width": across[1] - across[0], "height": down[1] - down[0], "margin": int((border > 40).sum()), "ink": int((dark > 128).sum())}))
