# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""Where testers are photographed: in front of hoses, pulleys, covers and other gauges, on oily glass, in poor light."""

import cv2
import numpy as np

import dial_drawing as drawing
import dial_photo as photo

LENGTHS = [960, 1280, 1280, 1280, 1600, 2048, 3000]  # px, longer side
TROUBLES = ["glare", "oil", "shadow", "blur", "shake", "noise", "dim", "cast", "clutter", "hand", "far", "near", "rolled", "other", "pair", "dirt"]


def conditions(difficulty, s, random, largest):
    """How a photo is taken, and what is the matter with it (names for the table)."""
    between = random.uniform
    easy, hard = difficulty == "easy", difficulty == "hard"
    names = [] if easy else [str(n) for n in random.choice(TROUBLES, size=int(random.integers(1, 3)) + hard, replace=False)]

    def only(name, low, high, otherwise=0.0):
        return between(low, high) if name in names else otherwise

    longest = min(largest, int(random.choice(LENGTHS)))
    size = (longest, longest * 3 // 4)
    if random.uniform() < 0.5:
        size = size[::-1]
    short = min(size)
    fill = only("far", 0.3, 0.42, only("near", 0.88, 0.97, between(0.45, 0.85)))
    radius = max(0.5 * fill * short / s["case_radius"], 105)
    slack = np.maximum(0, np.array(size) / 2 - radius * s["case_radius"])
    middle = np.array(size) / 2 + between(-0.9, 0.9, 2) * slack
    out = dict(
        names=names, size=size, radius_px=radius, middle=tuple(middle), distance=between(3.5, 9), towards=between(0, 360), background=background,
        roll=only("rolled", -25, 25, between(-1, 1) * (6 if easy else 14)), tilt=between(0, 10) if easy else between(3, 22) if not hard else between(18, 35),
        glare=only("glare", 0.5, 1.0), dirt=only("dirt", 0.3, 0.8), oil=only("oil", 0.4, 1.0), shadow=only("shadow", 0.3, 0.65), uneven=between(0, 0.5),
        blur=only("blur", 1.0, 2.3, between(0.3, 0.9)), shake=only("shake", 4, 10), noise=only("noise", 8, 18, only("dim", 5, 12, between(1, 4))),
        balance=tuple(only("cast", 0.75, 1.25, 1.0) for _ in range(3)), light=only("dim", 0.2, 0.45, between(0.8, 1.05)),
        clutter=1.0 if "clutter" in names else 0.5, pair="pair" in names, pair_way=between(0, 2 * np.pi), gap=between(0.02, 0.4), other="other" in names,
        hand="hand" in names, sharpen=between(0, 0.8), needle_shadow=between(0.01, 0.07) if random.uniform() < 0.6 else 0.0,
        needle_shadow_way=between(0, 360), needle_shadow_depth=between(0.15, 0.5), quality=60 if random.uniform() < 0.3 else int(between(45, 92)))
    return out | dict(smear=oil) if "oil" in names else out


def background(random, c):
    """An engine bay or a bench, out of focus."""
    w, h = c["size"]
    long = max(w, h)
    picture = np.empty((h, w, 3), np.float32)
    picture[:] = np.array([random.uniform(20, 120)] * 3) + random.uniform(-15, 20, 3)
    picture += (random.uniform(4, 20) * photo.texture(random, h, w, max(8, long // 6)))[..., None]

    def at():
        return (random.uniform(-0.1, 1.1, 2) * [w, h]).astype(int)

    def metal(light=1.0):
        return tuple(float(v) for v in np.clip(light * random.uniform(40, 210) + random.uniform(-12, 12, 3), 0, 255))

    def paint():
        return tuple(float(v) for v in random.choice([[30, 30, 34], [30, 30, 150], [150, 90, 30], [40, 110, 50], [40, 170, 210], [190, 190, 195]]))

    parts = [cover, pulley, tube, cap, bolts, belt, plate]
    for _ in range(int(random.integers(5, 8 + int(14 * c["clutter"])))):
        parts[int(random.integers(0, len(parts)))](picture, random, long, at, metal, paint)
    for _ in range(int(random.integers(1, 4))):
        tube(picture, random, long, at, metal, paint)
    photo.hose(picture, random, c)
    return cv2.GaussianBlur(picture, (0, 0), random.uniform(0.6, 4) * long / 1280)


def cover(picture, random, long, at, metal, paint):
    """A ribbed cover with a word cast on it."""
    angle = float(random.uniform(0, 180))
    middle, size = at(), random.uniform(0.15, 0.5, 2) * long
    cv2.fillConvexPoly(picture, cv2.boxPoints(((float(middle[0]), float(middle[1])), tuple(float(v) for v in size), angle)).astype(np.int32), metal(), cv2.LINE_AA)
    along = np.array([np.cos(np.radians(angle)), np.sin(np.radians(angle))])
    tone = metal()
    for k in np.linspace(-0.4, 0.4, int(random.integers(3, 12))):
        p = middle + along * k * size[0]
        side = np.array([-along[1], along[0]]) * 0.42 * size[1]
        cv2.line(picture, (p - side).astype(int).tolist(), (p + side).astype(int).tolist(), tone, max(2, int(0.006 * long)), cv2.LINE_AA)
    cv2.putText(picture, "16 VALVE", middle.tolist(), cv2.FONT_HERSHEY_TRIPLEX, random.uniform(0.8, 2) * long / 1280, metal(), 2, cv2.LINE_AA)


def pulley(picture, random, long, at, metal, paint):
    """Rings and spokes, as round as a dial."""
    middle, r = at(), random.uniform(0.04, 0.17) * long
    for share in sorted(random.uniform(0.2, 1, int(random.integers(2, 6))))[::-1]:
        cv2.circle(picture, middle.tolist(), max(2, int(share * r)), metal(), -1 if random.uniform() < 0.6 else max(2, int(0.05 * r)), cv2.LINE_AA)
    for k in range(int(random.choice([0, 0, 3, 5, 6]))):
        hole = middle + 0.55 * r * np.array([np.cos(k * 1.2566), np.sin(k * 1.2566)])
        cv2.circle(picture, hole.astype(int).tolist(), max(2, int(0.15 * r)), metal(0.4), -1, cv2.LINE_AA)


def tube(picture, random, long, at, metal, paint):
    p, way, bend = at().astype(float), random.uniform(0, 6.3), random.uniform(-0.2, 0.2)
    points = []
    for _ in range(50):
        points.append(p.copy())
        p += 0.03 * long * np.array([np.cos(way), np.sin(way)])
        way += bend + random.uniform(-0.1, 0.1)
    line, thick, tone = np.array(points, np.int32), int(random.uniform(0.006, 0.045) * long), paint()
    cv2.polylines(picture, [line], False, tuple(0.5 * v for v in tone), thick, cv2.LINE_AA)
    cv2.polylines(picture, [line - thick // 6], False, tone, max(1, thick * 2 // 3), cv2.LINE_AA)
    cv2.polylines(picture, [line - thick // 4], False, tuple(min(255.0, 1.5 * v + 30) for v in tone), max(1, thick // 6), cv2.LINE_AA)


def cap(picture, random, long, at, metal, paint):
    """A filler cap: notched rim, sign in the middle, and lines round it like a scale's."""
    middle, r, tone, ink = at(), random.uniform(0.05, 0.12) * long, paint(), metal()
    cv2.circle(picture, middle.tolist(), int(r), tone, -1, cv2.LINE_AA)
    for k in range(int(random.choice([8, 12, 24]))):
        d = np.array([np.cos(k * 0.5236), np.sin(k * 0.5236)])
        cv2.line(picture, (middle + 0.8 * r * d).astype(int).tolist(), (middle + r * d).astype(int).tolist(), ink, max(1, int(0.05 * r)), cv2.LINE_AA)
    cv2.putText(picture, str(random.choice(["OIL", "RAD", "5W-30"])), (int(middle[0] - 0.5 * r), int(middle[1])), cv2.FONT_HERSHEY_DUPLEX, r / 60, ink, 2, cv2.LINE_AA)


def bolts(picture, random, long, at, metal, paint):
    for _ in range(int(random.integers(2, 7))):
        middle, r, turn = at(), random.uniform(0.01, 0.03) * long, random.uniform(0, 1)
        cv2.circle(picture, middle.tolist(), int(1.5 * r), metal(), -1, cv2.LINE_AA)
        cv2.fillConvexPoly(picture, np.array([middle + r * np.array([np.cos(turn + k * 1.0472), np.sin(turn + k * 1.0472)]) for k in range(6)], np.int32), metal(), cv2.LINE_AA)


def belt(picture, random, long, at, metal, paint):
    a, b = at(), at()
    cv2.line(picture, a.tolist(), b.tolist(), (25.0, 25.0, 27.0), int(0.04 * long), cv2.LINE_AA)
    for k in range(5):
        shift = np.array([0, int((k - 2) * 0.008 * long)])
        cv2.line(picture, (a + shift).tolist(), (b + shift).tolist(), (60.0, 60.0, 64.0), max(1, int(0.002 * long)), cv2.LINE_AA)


def plate(picture, random, long, at, metal, paint):
    """A label with small print and bars."""
    p, size, ink = at(), (random.uniform(0.08, 0.25, 2) * long).astype(int), metal(0.3)
    cv2.rectangle(picture, p.tolist(), (p + size).tolist(), paint(), -1)
    for k in range(4):
        cv2.putText(picture, "WARNING HOT PARTS", (p + [6, (k + 1) * size[1] // 5]).tolist(), cv2.FONT_HERSHEY_SIMPLEX, 0.4 * long / 1280, ink, 1, cv2.LINE_AA)


def oil(picture, random, c, camera):
    """Brown smears drawn over the glass by a finger, with drops."""
    h, w = picture.shape[:2]
    film, r = np.zeros((h, w), np.float32), c["radius_px"]
    for _ in range(int(random.integers(1, 4))):
        p = np.array(camera.seen(drawing.on_circle(random.uniform(0, 0.9), random.uniform(0, 360)), 0.08))
        way, bend = random.uniform(0, 6.3), random.uniform(-0.3, 0.3)
        for _ in range(int(random.integers(4, 12))):
            q = p + 0.07 * r * np.array([np.cos(way), np.sin(way)])
            cv2.line(film, p.astype(int).tolist(), q.astype(int).tolist(), random.uniform(0.3, 0.8), max(2, int(random.uniform(0.05, 0.16) * r)), cv2.LINE_AA)
            p, way = q, way + bend
    for _ in range(int(random.integers(0, 8))):
        p = camera.seen(drawing.on_circle(random.uniform(0, 0.98), random.uniform(0, 360)), 0.08)
        cv2.circle(film, [int(v) for v in p], max(2, int(random.uniform(0.015, 0.06) * r)), random.uniform(0.4, 0.95), -1, cv2.LINE_AA)
    film = cv2.GaussianBlur(film, (0, 0), 0.015 * r)
    film *= 1 + 0.25 * photo.texture(random, h, w, max(8, int(0.05 * r)))
    share = np.clip(0.75 * c["oil"] * film, 0, 0.85)[..., None]
    picture[:] = picture * (1 - share) + np.array([20, 38, 52]) * share
