# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""Paints the parts of a made-up pressure gauge square on: face, scales, needle, bezel.

Sheets are square pictures (BGR) or masks (grey), `side` px wide, that show `EDGE` radii of the dial's plate to every
side of its middle. x runs to the right, y down, angles clockwise from 12 o'clock in degrees.
"""

import pathlib

import cv2
import numpy as np

EDGE = 1.45
SUB = 5  # fractional bits of OpenCV's drawing
FONT_FILE = pathlib.Path(__file__).resolve().parents[3] / "assets/fonts/B612-Bold.ttf"


def on_circle(radius, angle, middle=(0.0, 0.0)):
    a = np.radians(angle)
    return np.array([middle[0] + radius * np.sin(a), middle[1] - radius * np.cos(a)])


class Sheet:
    """A square picture in plane coordinates; `colour` None makes it a mask that starts empty."""

    def __init__(self, side, colour=None):
        self.side = side
        self.unit = side / (2 * EDGE)
        self.picture = np.zeros((side, side), np.uint8) if colour is None else np.full((side, side, 3), colour, np.uint8)

    def px(self, points):
        return np.round((np.asarray(points, float) + EDGE) * self.unit * (1 << SUB)).astype(np.int32)

    def ink(self, colour):
        return 255 if self.picture.ndim == 2 else tuple(float(c) for c in colour)

    def polygon(self, points, colour=None):
        cv2.fillPoly(self.picture, [self.px(points)], self.ink(colour), cv2.LINE_AA, SUB)

    def disc(self, middle, radius, colour=None):
        c = self.px(middle)
        cv2.circle(self.picture, (int(c[0]), int(c[1])), int(radius * self.unit * (1 << SUB)), self.ink(colour), -1,
                   cv2.LINE_AA, SUB)

    def stroke(self, a, b, width_a, width_b, colour=None):
        a, b = np.asarray(a, float), np.asarray(b, float)
        along = b - a
        n = np.array([-along[1], along[0]]) / np.hypot(*along)
        self.polygon([a + n * width_a / 2, b + n * width_b / 2, b - n * width_b / 2, a - n * width_a / 2], colour)

    def band(self, middle, inner, outer, start, end, colour=None):
        """Part of a ring, from one angle to another."""
        angles = np.linspace(start, end, max(8, int(abs(end - start))))
        self.polygon([on_circle(outer, a, middle) for a in angles] + [on_circle(inner, a, middle) for a in angles[::-1]],
                     colour)

    def text(self, words, middle, height, colour, font, lean=0.0):
        """`height` of a capital; `font` 0 is the project's own typeface, 1 to 4 are OpenCV's stroked ones."""
        cap = max(4.0, height * self.unit)
        patch = text_mask(words, cap, font)
        h, w = patch.shape
        turn = cv2.getRotationMatrix2D((w / 2, h / 2), -lean, 1.0)
        room = int(np.hypot(h, w)) + 4
        turn[:, 2] += [room / 2 - w / 2, room / 2 - h / 2]
        patch = cv2.warpAffine(patch, turn, (room, room), flags=cv2.INTER_LINEAR)
        x, y = np.round((np.asarray(middle) + EDGE) * self.unit - room / 2).astype(int)
        if x < 0 or y < 0 or x + room > self.side or y + room > self.side:
            return
        place = self.picture[y:y + room, x:x + room]
        share = patch[..., None] / 255.0
        place[:] = np.clip(place * (1 - share) + share * np.asarray(colour, float), 0, 255).astype(np.uint8)


    def curved(self, words, middle, radius, angle, height, colour, font):
        """Words along a circle, read from the middle; at the bottom from outside."""
        step = np.degrees(1.05 * height / radius) * (-1 if 90 < angle % 360 < 270 else 1)
        for k, letter in enumerate(words):
            a = angle + (k - (len(words) - 1) / 2) * step
            self.text(letter, on_circle(radius, a, middle), height, colour, font, a if step > 0 else a + 180)


def text_mask(words, cap, font):
    if font == 0:
        face = cv2.freetype.createFreeType2()
        face.loadFontData(str(FONT_FILE), 0)
        size = int(round(1.4 * cap))
        (w, h), base = face.getTextSize(words, size, -1)
        mask = np.zeros((h + abs(base) + size, w + size, 3), np.uint8)
        face.putText(mask, words, (size // 2, size // 2), size, (255, 255, 255), -1, cv2.LINE_AA, False)
        mask = mask[..., 0]
        seen = cv2.findNonZero(mask)
        if seen is None:
            return mask
        x, y, w, h = cv2.boundingRect(seen)
        return np.pad(mask[y:y + h, x:x + w], 2)
    face = [cv2.FONT_HERSHEY_SIMPLEX, cv2.FONT_HERSHEY_DUPLEX, cv2.FONT_HERSHEY_COMPLEX, cv2.FONT_HERSHEY_TRIPLEX][font - 1]
    scale = cap / 21.0
    thick = max(1, int(round(2.4 * scale)))
    (w, h), base = cv2.getTextSize(words, face, scale, thick)
    mask = np.zeros((h + 2 * base + 4, w + 2 * thick + 4), np.uint8)
    cv2.putText(mask, words, (thick, h + base), face, scale, 255, thick, cv2.LINE_AA)
    return mask


def figure(value):
    text = f"{value:.4g}"
    return "0" if text == "-0" else text


def draw_ticks(sheet, s, scale, value_to_angle, middle):
    """One scale: its graduation lines, arcs and numerals."""
    low, high, divisions = scale["min"], scale["max"], scale["divisions"]
    out = 1 if scale["outwards"] else -1
    ring = scale["ring"]
    colour = scale["colour"]

    def angle(i):
        return value_to_angle(low + (high - low) * i / divisions)

    for arc in scale["arcs"]:
        r = ring + out * arc * scale["minor"]
        sheet.band(middle, r - scale["width"] / 2, r + scale["width"] / 2, angle(0), angle(divisions), colour)
    for i in range(divisions + 1):
        if 0 < i <= scale.get("skip_first", 0):
            continue
        value = low + (high - low) * i / divisions
        colour = scale["below"] if "below" in scale and value < 0 else scale["colour"]
        major = i % scale["major_every"] == 0
        mid = scale["middle_every"] and i % scale["middle_every"] == 0
        length = scale["major"] if major else (scale["major"] + scale["minor"]) / 2 if mid else scale["minor"]
        width = scale["width"] * (scale["bold"] if major else 1.0)
        a = angle(i)
        if scale["dots"] and not major:
            sheet.disc(on_circle(ring + out * length / 2, a, middle), 0.45 * length, colour)
        else:
            sheet.stroke(on_circle(ring, a, middle), on_circle(ring + out * length, a, middle), width,
                         width * scale["wedge"], colour)
        if major and (i // scale["major_every"]) % scale["figure_every"] == 0:
            where = ring + scale["figures_at"]
            sheet.text(figure(value * scale.get("figure_factor", 1)), on_circle(where, a, middle), scale["figure_height"],
                       scale.get("figure_colour", colour), scale["font"], a if s["figures_lean"] else 0.0)


def draw_face(side, s):
    """The printed plate of the style `s`."""
    sheet = Sheet(side, s["face"])
    middle = s["pivot"]
    first = s["scales"][0]

    def angle_of(value):
        return s["start"] + s["sweep"] * (value - first["min"]) / (first["max"] - first["min"])

    if s["outer_ring"] is not None:
        sheet.disc((0, 0), 1.0, s["outer_ring"])
        sheet.disc(middle, first["ring"] - s["outer_ring_depth"], s["face"])
    for zone in s["zones"]:
        sheet.band(middle, zone["inner"], zone["outer"], s["start"] + zone["from"] * s["sweep"],
                   s["start"] + zone["to"] * s["sweep"], zone["colour"])
    for panel in s.get("panels", []):
        (x, y), (far_x, far_y) = panel["low"], panel["high"]
        sheet.polygon([(x, y), (far_x, y), (far_x, far_y), (x, far_y)], panel["colour"])
    for scale in s["scales"]:
        k = scale.get("in_first", 1.0)  # how much of the first scale's unit is one of this scale's
        draw_ticks(sheet, s, scale, lambda v, k=k: angle_of(v * k), middle)
    for word in s["words"]:
        sheet.text(word["text"], word["at"], word["height"], word["colour"], word["font"])
    for word in s.get("curved", []):
        sheet.curved(word["text"], middle, word["radius"], word["angle"], word["height"], word["colour"], word["font"])
    for blob in s["blobs"]:
        if blob["ring"]:
            sheet.disc(blob["at"], blob["size"], blob["colour"])
            sheet.disc(blob["at"], 0.7 * blob["size"], s["face"])
        else:
            sheet.polygon([np.asarray(blob["at"]) + on_circle(blob["size"] * (1 + 0.4 * (k % 2)), blob["turn"] + 360 * k / blob["corners"])
                           for k in range(blob["corners"])], blob["colour"])
    for screw in s["screws"]:
        draw_screw(sheet, screw["at"], screw["size"], screw["turn"])
    return sheet.picture


def draw_screw(sheet, at, size, turn):
    sheet.disc(at, size, (70, 75, 80))
    sheet.disc(at, 0.85 * size, (165, 170, 175))
    sheet.stroke(np.asarray(at) + on_circle(0.8 * size, turn), np.asarray(at) - on_circle(0.8 * size, turn), 0.25 * size,
                 0.25 * size, (45, 45, 50))


def needle_outline(n):
    """Polygons and discs of a needle that points to 12 o'clock, pivot in the origin."""
    tip, w = n["tip"], n["width"]
    polygons, discs = [], []

    def shape(points):
        polygons.append([(x, -y) for x, y in points] + [(-x, -y) for x, y in points[::-1]])

    kind = n["shape"]
    if kind == "thin":
        shape([(0.15 * w, 0), (0.12 * w, tip)])
    elif kind == "taper":
        shape([(0.5 * w, 0), (0.05 * w, tip)])
    elif kind == "lance":
        shape([(0.12 * w, 0), (0.5 * w, 0.12 * tip), (0.04 * w, tip)])
    elif kind == "baton":
        shape([(0.32 * w, 0), (0.32 * w, 0.9 * tip), (0.03 * w, tip)])
    elif kind == "arrow":
        head = n["head"] * tip
        shape([(0.18 * w, 0), (0.18 * w, tip - head), (0.9 * w, tip - head), (0.02 * w, tip)])
    elif kind == "spade":
        head = n["head"] * tip
        shape([(0.2 * w, 0), (0.2 * w, tip - 1.9 * head), (0.75 * w, tip - 1.4 * head), (0.85 * w, tip - 1.1 * head),
               (0.55 * w, tip - 0.6 * head), (0.12 * w, tip - 0.35 * head), (0.03 * w, tip)])
    elif kind == "leaf":
        shape([(0.15 * w, 0), (0.6 * w, 0.35 * tip), (0.4 * w, 0.7 * tip), (0.04 * w, tip)])
    elif kind == "window":  # a slot in a broad hand
        for side in (-1, 1):
            polygons.append([(side * 0.35 * w, 0), (side * 0.75 * w, 0), (side * 0.55 * w, -0.7 * tip), (side * 0.25 * w, -0.7 * tip)])
        shape([(0.6 * w, 0.68 * tip), (0.05 * w, tip)])
    back = n["tail"]
    if n["tail_shape"] == "bar":
        shape([(0.3 * w, 0), (0.35 * w, -back)])
    elif n["tail_shape"] == "fan":
        shape([(0.25 * w, 0), (0.95 * w, -back)])
    elif n["tail_shape"] == "arrow":
        shape([(0.2 * w, 0), (0.2 * w, -0.55 * back), (0.85 * w, -0.6 * back), (0.05 * w, -back)])
    elif n["tail_shape"] == "disc":
        shape([(0.25 * w, 0), (0.25 * w, -back)])
        discs.append(((0, back), 1.1 * w))
    elif n["tail_shape"] == "moon":
        shape([(0.25 * w, 0), (0.25 * w, -back)])
        angles = np.radians(np.linspace(100, 260, 24))
        outer = [(1.5 * w * np.sin(a), back - 1.2 * w - 1.5 * w * np.cos(a)) for a in angles]
        inner = [(1.0 * w * np.sin(a), back - 1.2 * w - 1.0 * w * np.cos(a)) for a in angles[::-1]]
        polygons.append(outer + inner)
    return polygons, discs


def draw_needle(side, n, angle, middle):
    """The mask of a needle, and its picture."""
    a = np.radians(angle)
    turn = np.array([[np.cos(a), -np.sin(a)], [np.sin(a), np.cos(a)]])
    polygons, discs = needle_outline(n)

    def place(p):
        return np.asarray(p, float) @ turn.T + np.asarray(middle)

    mask = Sheet(side)
    paint = Sheet(side, n["colour"])
    for p in polygons:
        mask.polygon(place(p))
    for at, radius in discs:
        mask.disc(place(at), radius)
    if n["tip_colour"] is not None:
        paint.stroke(place((0, -0.72 * n["tip"])), place((0, -1.2 * n["tip"])), 0.3, 0.3, n["tip_colour"])
    if n["tail_colour"] is not None:
        paint.stroke(place((0, 0.02)), place((0, 1.0)), 0.5, 0.5, n["tail_colour"])
    if n["ridge"]:  # one flank catches the light
        lit = Sheet(side)
        lit.polygon([place((0, 0.6)), place((0, -1.2)), place((0.4, -1.2)), place((0.4, 0.6))])
        share = lit.picture[..., None] / 255.0 * 0.25
        paint.picture[:] = (paint.picture * (1 - share) + 255 * share).astype(np.uint8)
    return mask.picture, paint.picture


def draw_case(side, s, random):
    """Bezel and guard around the plate: mask and picture."""
    sheet = Sheet(side, (0, 0, 0))
    mask = Sheet(side)
    mask.disc((0, 0), s["case_radius"])
    if s.get("flange"):
        f = 0.84 * s["case_radius"]
        mask.polygon([(-f, -f), (f, -f), (f, f), (-f, f)])
    y, x = np.mgrid[0:side, 0:side].astype(np.float32)
    x = x / sheet.unit - EDGE
    y = y / sheet.unit - EDGE
    radius = np.hypot(x, y)
    theta = np.arctan2(y, x)
    base = np.array(s["bezel"], np.float32)
    if s["bezel_kind"] == "chrome":
        wave = sum(random.uniform(0.1, 0.35) * np.cos(k * theta + random.uniform(0, 6.3)) for k in (1, 2, 3, 5))
        across = np.cos((radius - 1.0) / (s["case_radius"] - 1.0) * random.uniform(4, 9))
        value = 1 + wave + 0.35 * across
    elif s["bezel_kind"] == "rubber":
        value = 1 + 0.25 * np.cos((radius - 1.0) / (s["case_radius"] - 1.0) * 6.3)
        value = value + 0.5 * ((np.cos(s["ribs"] * theta) > 0.6) & (radius > 1.0 + 0.45 * (s["case_radius"] - 1.0)))
    else:
        value = 1 + 0.2 * np.cos((radius - 1.0) / (s["case_radius"] - 1.0) * 3.1) + 0.15 * np.cos(theta + 2)
    sheet.picture[:] = np.clip(base * np.maximum(value, 0.05)[..., None], 0, 255).astype(np.uint8)
    for screw in s["case_screws"]:
        draw_screw(sheet, on_circle(0.5 * (1 + s["case_radius"]), screw), 0.35 * (s["case_radius"] - 1.0), 3 * screw)
    return mask.picture, sheet.picture
