# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""A pinhole camera looks at a made-up gauge: background, light, what is in the way, and what a phone makes of it."""

import cv2
import numpy as np

import dial_drawing as drawing


class Camera:
    """`distance` in radii of the plate; `tilt` leans the dial, the side `towards` comes nearer; `roll` turns it."""

    def __init__(self, c):
        def about_z(a):
            return np.array([[np.cos(a), -np.sin(a), 0], [np.sin(a), np.cos(a), 0], [0, 0, 1]])

        t, d, r = np.radians([c["tilt"], c["towards"], c["roll"]])
        about_x = np.array([[1, 0, 0], [0, np.cos(t), -np.sin(t)], [0, np.sin(t), np.cos(t)]])
        self.turn = about_z(d) @ about_x @ about_z(-d) @ about_z(r)
        self.distance = c["distance"]
        self.focus = c["radius_px"] * c["distance"]
        self.middle = c["middle"]

    def plane(self, height):
        """Takes (x, y, 1) of the plane `height` above the dial to the photo."""
        m = self.turn
        x = np.array([m[0, 0], m[0, 1], m[0, 2] * height])
        y = np.array([m[1, 0], m[1, 1], m[1, 2] * height])
        w = np.array([0, 0, self.distance]) - np.array([m[2, 0], m[2, 1], m[2, 2] * height])
        return np.array([self.focus * x + self.middle[0] * w, self.focus * y + self.middle[1] * w, w])

    def seen(self, point, height=0.0):
        p = self.plane(height) @ np.array([point[0], point[1], 1.0])
        return p[:2] / p[2]


def sheet_map(camera, height, side):
    unit = 2 * drawing.EDGE / side
    return camera.plane(height) @ np.array([[unit, 0, unit / 2 - drawing.EDGE], [0, unit, unit / 2 - drawing.EDGE], [0, 0, 1]])


def lay(picture, sheet, mask, where, share=1.0):
    """Lays a sheet over the photo where its mask is."""
    size = (picture.shape[1], picture.shape[0])
    cover = cv2.warpPerspective(mask, where, size, flags=cv2.INTER_LINEAR)
    box = cv2.boundingRect(cv2.findNonZero(cover)) if cover.any() else None
    if box is None:
        return
    x, y, w, h = box
    move = np.array([[1, 0, -x], [0, 1, -y], [0, 0, 1.0]])
    seen = cv2.warpPerspective(sheet, move @ where, (w, h), flags=cv2.INTER_LINEAR).astype(np.float32)
    a = cover[y:y + h, x:x + w, None].astype(np.float32) * (share / 255.0)
    place = picture[y:y + h, x:x + w]
    place[:] = place * (1 - a) + seen * a


def texture(random, height, width, coarse):
    """Grey noise of several sizes, mean 0, deviation about 1."""
    out = np.zeros((height, width), np.float32)
    size, weight = coarse, 1.0
    while size >= 2 and weight > 0.1:
        small = random.standard_normal((max(2, height // size), max(2, width // size))).astype(np.float32)
        out += weight * cv2.resize(small, (width, height), interpolation=cv2.INTER_CUBIC)
        size, weight = size // 3, weight * 0.6
    return out


def background(random, c):
    w, h = c["size"]
    scale = max(w, h)
    base = np.array([random.uniform(25, 200)] * 3) + random.uniform(-25, 25, 3)
    picture = np.empty((h, w, 3), np.float32)
    picture[:] = base
    picture += (random.uniform(2, 16) * texture(random, h, w, max(8, scale // 8)))[..., None]

    def point(spread=0.1):
        return [int(v) for v in (random.uniform(-spread, 1 + spread, 2) * [w, h])]

    def colour():
        return tuple(float(v) for v in np.clip(random.uniform(10, 230) + random.uniform(-40, 40, 3), 0, 255))

    for _ in range(int(random.integers(2, 5 + int(16 * c["clutter"])))):
        kind = random.integers(0, 5)
        if kind == 0:  # other round things
            at, r = point(), int(random.uniform(0.03, 0.16) * scale)
            cv2.circle(picture, at, r, colour(), -1, cv2.LINE_AA)
            cv2.circle(picture, at, int(random.uniform(0.3, 0.8) * r), colour(), -1, cv2.LINE_AA)
            for k in range(int(random.integers(0, 9))):
                a = k * 0.785
                cv2.line(picture, at, (int(at[0] + 0.8 * r * np.cos(a)), int(at[1] + 0.8 * r * np.sin(a))), colour(), max(1, r // 20), cv2.LINE_AA)
        elif kind == 1:  # tools
            cv2.line(picture, point(), point(), colour(), int(random.uniform(0.01, 0.05) * scale), cv2.LINE_AA)
        elif kind == 2:  # boards, boxes
            cv2.fillConvexPoly(picture, cv2.convexHull(np.array([point() for _ in range(5)])), colour(), cv2.LINE_AA)
        elif kind == 3:
            cv2.putText(picture, "PARTS 47-B", point(0), cv2.FONT_HERSHEY_DUPLEX, random.uniform(0.4, 1.6) * scale / 1000, colour(), 2, cv2.LINE_AA)
        else:
            for k in range(6):  # planks, radiator fins
                x = int(w * (0.1 + 0.16 * k + random.uniform(-0.02, 0.02)))
                cv2.line(picture, (x, 0), (x + int(0.1 * w), h), tuple(0.7 * base), 2, cv2.LINE_AA)
    hose(picture, random, c)
    return cv2.GaussianBlur(picture, (0, 0), random.uniform(0.5, 4) * scale / 1280)


def hose(picture, random, c):
    w, h = c["size"]
    start = np.array(c["middle"])
    way = random.uniform(0, 2 * np.pi)
    bend = random.uniform(-0.15, 0.15)
    points = []
    for _ in range(40):
        points.append(start.copy())
        start += 0.06 * max(w, h) * np.array([np.cos(way), np.sin(way)])
        way += bend
    line = np.array(points, np.int32)
    thick = max(3, int(0.28 * c["radius_px"]))
    cv2.polylines(picture, [line], False, (35.0, 35.0, 38.0), thick, cv2.LINE_AA)
    cv2.polylines(picture, [line - thick // 5], False, (80.0, 80.0, 84.0), max(1, thick // 6), cv2.LINE_AA)


def hand(picture, random, c):
    """Fingers that hold the case, reaching a little over its rim."""
    side = random.uniform(0, 2 * np.pi)
    skin = np.array([random.uniform(70, 150), random.uniform(90, 175), random.uniform(130, 215)])
    for k in range(int(random.integers(1, 4))):
        a = side + 0.22 * k
        way = np.array([np.cos(a), np.sin(a)])
        end = np.array(c["middle"]) + way * c["radius_px"] * random.uniform(1.0, 1.12)
        far = end + way * c["radius_px"] * 1.6
        thick = int(0.19 * c["radius_px"])
        for shade, part in ((0.75, 1.0), (1.0, 0.8)):
            cv2.line(picture, [int(v) for v in end], [int(v) for v in far], tuple(float(v) for v in skin * shade), max(2, int(thick * part)), cv2.LINE_AA)


def glass(picture, random, c, camera, s):
    """Light on the glass and dirt on it, and shadows over everything."""
    h, w = picture.shape[:2]
    r = c["radius_px"]
    if c["glare"] > 0:
        light = np.zeros((h, w), np.float32)
        for _ in range(int(random.integers(1, 4))):
            at = camera.seen(drawing.on_circle(random.uniform(0.1, 0.95), random.uniform(0, 360)), 0.08)
            axes = (int(random.uniform(0.06, 0.3) * r), int(random.uniform(0.04, 0.16) * r))
            cv2.ellipse(light, [int(v) for v in at], axes, random.uniform(0, 180), 0, 360, random.uniform(0.5, 1), -1, cv2.LINE_AA)
        if random.uniform() < 0.5:  # a window
            at = camera.seen(drawing.on_circle(random.uniform(0.1, 0.7), random.uniform(0, 360)), 0.08)
            box = cv2.boxPoints((tuple(float(v) for v in at), (0.45 * r, 0.6 * r), float(random.uniform(0, 180))))
            cv2.fillConvexPoly(light, box.astype(np.int32), random.uniform(0.15, 0.6), cv2.LINE_AA)
        light = cv2.GaussianBlur(light, (0, 0), random.uniform(0.01, 0.06) * r)
        picture += 235 * c["glare"] * light[..., None]
    if c["dirt"] > 0:
        grime = np.zeros((h, w), np.float32)
        for _ in range(int(60 * c["dirt"])):
            at = camera.seen(drawing.on_circle(random.uniform(0, 0.98), random.uniform(0, 360)), 0.08)
            cv2.circle(grime, [int(v) for v in at], max(1, int(random.uniform(0.008, 0.055) * r)), random.uniform(0.1, 0.7), -1, cv2.LINE_AA)
        smear = np.clip(texture(random, h, w, max(8, int(0.4 * r))) - 0.8, 0, 1) * 0.35 * c["dirt"]
        grime = cv2.GaussianBlur(grime, (0, 0), 0.006 * r + 0.3) + smear
        grime = np.clip(grime, 0, 0.85)[..., None]
        picture[:] = picture * (1 - grime) + np.array([45, 60, 70]) * grime
    if "smear" in c:
        c["smear"](picture, random, c, camera)
    y, x = np.mgrid[0:h, 0:w].astype(np.float32)
    if c["shadow"] > 0:
        a = random.uniform(0, 2 * np.pi)
        edge = (x - c["middle"][0]) * np.cos(a) + (y - c["middle"][1]) * np.sin(a) - random.uniform(-0.5, 0.5) * r
        dark = 1 / (1 + np.exp(np.clip(-edge / (random.uniform(0.01, 0.15) * r), -50, 50)))
        picture *= (1 - c["shadow"] * dark)[..., None]
    a = random.uniform(0, 2 * np.pi)
    slope = 1 + c["uneven"] * ((x / w - 0.5) * np.cos(a) + (y / h - 0.5) * np.sin(a))
    picture *= slope[..., None]


def phone(picture, random, c):
    """Exposure, white balance, blur, shake, noise, sharpening: an 8 bit picture."""
    picture = picture * (c["light"] * np.array(c["balance"]))
    scale = max(c["size"]) / 1280
    if c["blur"] > 0:
        picture = cv2.GaussianBlur(picture, (0, 0), c["blur"] * scale)
    if c["shake"] > 0:
        n = int(c["shake"] * scale) | 1
        if n >= 3:
            kernel = np.zeros((n, n), np.float32)
            a = random.uniform(0, np.pi)
            d = np.array([np.cos(a), np.sin(a)]) * (n // 2)
            m = n // 2
            cv2.line(kernel, [int(round(m - d[0])), int(round(m - d[1]))], [int(round(m + d[0])), int(round(m + d[1]))], 1.0, 1, cv2.LINE_AA)
            picture = cv2.filter2D(picture, -1, kernel / kernel.sum())
    noise = random.standard_normal(picture.shape).astype(np.float32)
    if c["noise"] > 6:  # what a phone leaves of it is blotchy
        noise = 0.6 * noise + 1.2 * cv2.GaussianBlur(random.standard_normal(picture.shape).astype(np.float32), (0, 0), 1.1)
    picture = picture + noise * c["noise"]
    if c["sharpen"] > 0:
        picture = picture + c["sharpen"] * (picture - cv2.GaussianBlur(picture, (0, 0), 1.2))
    return np.clip(picture, 0, 255).astype(np.uint8)


def take(s, c, value, held, random):
    """The photo (8 bit BGR) of a gauge of style `s` under conditions `c`, and the camera that took it."""
    camera = Camera(c)
    picture = c.get("background", background)(random, c)
    if c["pair"] or c.get("other"):  # the tester's other gauge, further off, of the same style or not
        way = c["pair_way"]
        reach = c["radius_px"] * s["case_radius"] * (1.75 + c["gap"])
        other = dict(c, radius_px=0.72 * c["radius_px"], middle=(c["middle"][0] + reach * np.cos(way), c["middle"][1] + reach * np.sin(way)))
        dial = s if c["pair"] else c["other_style"]
        first = dial["scales"][0]
        gauge(picture, dial, other, Camera(other), first["min"] + (first["max"] - first["min"]) * random.uniform(0, 1), None, random)
    gauge(picture, s, c, camera, value, held, random)
    if c["hand"]:
        hand(picture, random, c)
    glass(picture, random, c, camera, s)
    return phone(picture, random, c), camera


def gauge(picture, s, c, camera, value, held, random):
    """Lays a gauge that shows `value` into the picture."""
    side = int(min(2600, max(700, 2.9 * c["radius_px"] * 1.25)))
    first = s["scales"][0]

    def angle_of(v):
        return s["start"] + s["sweep"] * (v - first["min"]) / (first["max"] - first["min"])

    mask, case = drawing.draw_case(side, s, random)
    lay(picture, case, mask, sheet_map(camera, s["rim_height"], side))
    face = drawing.draw_face(side, s)
    plate = drawing.Sheet(side)
    plate.disc((0, 0), 1.0)
    lay(picture, face, plate.picture, sheet_map(camera, 0.0, side))
    if s["rim_shade"] > 0:  # the rim throws a shadow on the plate
        shade = plate.picture.copy()
        moved = cv2.warpAffine(plate.picture, np.float32([[1, 0, 0.05 * side / 2.9], [0, 1, 0.06 * side / 2.9]]), (side, side))
        shade[moved > 0] = 0
        lay(picture, np.zeros_like(face), cv2.GaussianBlur(shade, (0, 0), side / 200), sheet_map(camera, 0.0, side), s["rim_shade"])
    if s["stop_pin"] is not None:
        pin = drawing.Sheet(side)
        pin.disc(drawing.on_circle(s["stop_pin"], s["start"] - 7, s["pivot"]), 0.018)
        lay(picture, np.full_like(face, 90), pin.picture, sheet_map(camera, 0.02, side))

    needles = []
    if held is not None:
        needles.append((s["held_needle"], angle_of(held), s["needle_height"] + 0.03))
    needles.insert(0, (s["needle"], angle_of(value), s["needle_height"]))
    for n, angle, height in needles:
        cover, paint = drawing.draw_needle(side, n, angle, s["pivot"])
        if c["needle_shadow"] > 0:
            by = c["needle_shadow"] * side / (2 * drawing.EDGE)
            a = np.radians(c["needle_shadow_way"])
            moved = cv2.warpAffine(cover, np.float32([[1, 0, by * np.cos(a)], [0, 1, by * np.sin(a)]]), (side, side))
            moved = cv2.GaussianBlur(moved, (0, 0), 0.004 * side)
            moved[plate.picture == 0] = 0
            lay(picture, np.full_like(paint, 15), moved, sheet_map(camera, 0.0, side), c["needle_shadow_depth"])
        lay(picture, paint, cover, sheet_map(camera, height, side))
    if s["cap"] > 0:
        for radius, tone in ((s["cap"], 1.0), (0.6 * s["cap"], 1.25)):
            cap = drawing.Sheet(side)
            cap.disc(s["pivot"], radius)
            paint = np.empty_like(face)
            paint[:] = np.clip(np.array(s["cap_colour"]) * tone, 0, 255)
            lay(picture, paint, cap.picture, sheet_map(camera, s["needle_height"] + 0.05, side))
