#!/usr/bin/python3
# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""Makes a folder of photos of made-up pressure gauges with a truth.csv, for tests/long/needle/run.

    make_dials.py FOLDER [--families own|held|testers-own|testers-held|all|NAME,...] [--styles N] [--photos N] [--seed N]
                  [--difficulties easy,medium,...] [--longest PX]

Shares no code with the reader nor with the gauges that the unit tests draw. Needs python3-opencv and numpy."""

import argparse
import csv
import pathlib

import cv2
import numpy as np

import dial_drawing as drawing
import dial_photo as photo
import dial_styles
import engine_scene
import tester_styles

COLUMNS = ["file", "scale_min", "scale_max", "unit", "angle_at_min_deg", "angle_at_max_deg", "true_value", "true_angle_deg", "centre_x",
           "centre_y", "zero_x", "zero_y", "full_x", "full_y", "tilt_deg", "upright_deg", "difficulty", "style", "conditions",
           "held_value", "width", "height"]
LENGTHS = [640, 960, 1280, 1280, 1600, 2048, 3000, 4000]  # px, longer side


def conditions(difficulty, s, random, largest):
    """How a photo is taken, and what is the matter with it (names for the table)."""
    between = random.uniform
    easy, hard = difficulty == "easy", difficulty == "hard"
    names = [] if easy else list(random.choice(
        ["glare", "dirt", "shadow", "blur", "shake", "noise", "cast", "clutter", "hand", "cropped", "far", "rolled", "dim", "pair"],
        size=int(random.integers(1, 3)) + hard, replace=False))

    def only(name, low, high, otherwise=0.0):
        return between(low, high) if name in names else otherwise

    longest = min(largest, int(random.choice(LENGTHS)))
    size = (longest, longest * 3 // 4)
    if random.uniform() < 0.5:
        size = size[::-1]
    short = min(size)
    fill = only("far", 0.3, 0.5, between(0.55, 0.92))  # of the width, with the case
    if longest == 640:
        fill = max(fill, 0.5)
    radius = 0.5 * fill * short / min(s["case_radius"], 1.2)
    slack = np.maximum(0, np.array(size) / 2 - radius * s["case_radius"])
    middle = np.array(size) / 2 + between(-0.9, 0.9, 2) * slack
    if "cropped" in names:  # part of the bezel is out of the picture, the scale is not
        way = between(0, 2 * np.pi)
        reach = np.array([np.cos(way), np.sin(way)])
        k = np.argmax(np.abs(reach) / np.array(size))
        middle[k] = radius * 1.02 if reach[k] < 0 else size[k] - radius * 1.02
    roll = between(0, 360) if "rolled" in names else between(-1, 1) * (8 if easy else 15 if not hard else 25)
    level = 0.6 if difficulty == "medium" else 1.0
    return dict(
        names=names, size=size, radius_px=radius, middle=tuple(middle), distance=between(3.5, 9), roll=roll, towards=between(0, 360),
        tilt=between(0, 10) if easy else between(4, 22) if not hard else between(18, 35),
        glare=only("glare", 0.5, 1.0) * level, dirt=only("dirt", 0.4, 1.0) * level, shadow=only("shadow", 0.3, 0.65) * level,
        uneven=between(0, 0.5), blur=only("blur", 1.2, 2.6, between(0.3, 0.9)) * level, shake=only("shake", 4, 11) * level,
        noise=only("noise", 9, 22, between(1, 5)) * level, balance=tuple(only("cast", 0.72, 1.25, 1.0) for _ in range(3)),
        light=only("dim", 0.25, 0.5, between(0.8, 1.05)), clutter=1.0 if "clutter" in names else 0.3, pair="pair" in names, pair_way=between(0, 2 * np.pi), gap=between(0.02, 0.4), hand="hand" in names, sharpen=between(0, 0.8),
        needle_shadow=between(0.01, 0.07) if random.uniform() < 0.6 else 0.0, needle_shadow_way=between(0, 360), needle_shadow_depth=between(0.15, 0.5),
        quality=int(between(30, 91)) if not easy else int(between(70, 93)))


def one(s, name, difficulty, random, largest):
    """A photo as JPEG bytes, and its row of the table. On some plates with two scales the range that is told is the inner one's."""
    if name in tester_styles.FAMILIES:
        c = engine_scene.conditions(difficulty, s, random, largest)
        c["other_style"] = tester_styles.style(str(random.choice(list(tester_styles.FAMILIES))), random)
    else:
        c = conditions(difficulty, s, random, largest)
    first = s["scales"][0]
    told = s["scales"][-1] if s["tell_inner"] else first
    span = first["max"] - first["min"]
    rest = 0.0 if first["min"] <= 0 else first["min"]
    value = rest if random.uniform() < 0.1 else first["min"] + span * random.uniform(0.0, 1.0)
    held = value + (first["max"] - value) * random.uniform(0, 1) if s["held_needle"] else None
    picture, camera = photo.take(s, c, value, held, random)
    file = cv2.imencode(".jpg", picture, [cv2.IMWRITE_JPEG_QUALITY, c["quality"]])[1].tobytes()
    angle = s["start"] + s["sweep"] * (value - first["min"]) / span
    k = told.get("in_first", 1.0)  # how much of the first scale's unit is one of the scale's that is told
    end = s["start"] + s["sweep"] * (told["max"] * k - first["min"]) / span
    outer = told["ring"] + (told["major"] if told["outwards"] else 0)
    points = [camera.seen(s["pivot"]), camera.seen(drawing.on_circle(outer, s["start"], s["pivot"])),
              camera.seen(drawing.on_circle(outer, end, s["pivot"]))]
    row = [told["min"], told["max"], told.get("unit", s["unit"]), s["start"], end, round(value / k, 5), round(angle, 3)]
    row += [round(float(v), 1) for p in points for v in p]
    tags = c["names"] + (["held"] if held is not None else []) + (["second"] if len(s["scales"]) > 1 else [])
    tags += ["inner"] if told is not first else []
    row += [round(c["tilt"], 1), round(c["roll"], 1), difficulty, name, "+".join(tags), "" if held is None else round(held, 4),
            c["size"][0], c["size"][1]]
    return file, row


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("folder", type=pathlib.Path)
    parser.add_argument("--families", default="all", help="own and testers-own (looked at while the reader was made), held and testers-held (measured only), all, or names")
    parser.add_argument("--styles", type=int, default=3, help="styles a family")
    parser.add_argument("--photos", type=int, default=4, help="photos a style")
    parser.add_argument("--difficulties", default="easy,medium,medium,hard", help="of a style's photos, in turn")
    parser.add_argument("--longest", type=int, default=max(LENGTHS), help="largest longer side, px")
    parser.add_argument("--seed", type=int, default=1)
    wanted = parser.parse_args()
    difficulties = wanted.difficulties.split(",")
    known = [*dial_styles.FAMILIES, *tester_styles.FAMILIES]
    groups = {"all": known}
    for group, styles in (("", dial_styles), ("testers-", tester_styles)):
        groups[group + "own"] = styles.OWN
        groups[group + "held"] = [f for f in styles.FAMILIES if f not in styles.OWN]
    families = groups.get(wanted.families) or wanted.families.split(",")
    unknown = [f for f in families if f not in known]
    if unknown:
        parser.error(f"no such family: {', '.join(unknown)}; there are {', '.join(known)}")
    wanted.folder.mkdir(parents=True, exist_ok=True)
    with open(wanted.folder / "truth.csv", "w", newline="") as table:
        write = csv.writer(table, lineterminator="\n").writerow
        write(COLUMNS)
        for family in families:
            styles = tester_styles if family in tester_styles.FAMILIES else dial_styles
            number = known.index(family)
            for i in range(wanted.styles):
                s = styles.style(family, np.random.default_rng([wanted.seed, number, i]))
                for k in range(wanted.photos):
                    random = np.random.default_rng([wanted.seed, number, i, k + 1])
                    file, row = one(s, family, difficulties[k % len(difficulties)], random, wanted.longest)
                    name = f"{family}{i:02}{chr(97 + k)}.jpg"
                    (wanted.folder / name).write_bytes(file)
                    write([name, *row])


if __name__ == "__main__":
    main()
