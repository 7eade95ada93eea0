# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""Made-up styles of pressure gauges. Each family draws its styles by chance within its own habits; ranges and
graduations are such as gauges have (common practice, no source). Colours are BGR."""

import numpy as np

BLACK, WHITE, RED, ORANGE = (28, 26, 25), (240, 242, 242), (38, 36, 190), (35, 110, 240)
YELLOW, BLUE, GREEN = (45, 205, 235), (150, 80, 30), (70, 150, 50)
CREAM, GREY, DARK, NAVY = (214, 232, 240), (205, 208, 210), (32, 30, 29), (60, 38, 25)

# unit, min, max, divisions, from one long line to the next, from one middle line to the next
GRADUATIONS = {
    "usual": [("bar", 0, 6, 60, 10, 5), ("bar", 0, 10, 50, 5, 0), ("bar", 0, 10, 100, 10, 5), ("bar", 0, 16, 80, 10, 5),
              ("bar", 0, 25, 50, 10, 5), ("bar", 0, 2.5, 50, 10, 5), ("bar", 0, 4, 40, 5, 0), ("psi", 0, 100, 50, 10, 5),
              ("psi", 0, 160, 80, 10, 5), ("psi", 0, 60, 60, 10, 5), ("psi", 0, 200, 40, 4, 2), ("kPa", 0, 1000, 50, 5, 0),
              ("kPa", 0, 600, 60, 10, 5), ("kgf/cm2", 0, 10, 50, 5, 0), ("psi", 0, 300, 60, 10, 5), ("psi", 0, 15, 75, 10, 5)],
    "cranking": [("psi", 0, 300, 60, 10, 0), ("psi", 0, 300, 30, 5, 0), ("bar", 0, 20, 40, 4, 2), ("bar", 0, 20, 100, 10, 5),
                 ("psi", 0, 250, 50, 10, 5), ("kPa", 0, 2000, 40, 4, 0), ("kgf/cm2", 0, 20, 40, 10, 5)],
    "coarse": [("bar", 0, 6, 12, 2, 0), ("bar", 0, 10, 20, 2, 0), ("psi", 0, 100, 20, 2, 0), ("psi", 0, 200, 20, 2, 0),
               ("bar", 0, 4, 16, 4, 0), ("psi", 0, 160, 16, 2, 0), ("bar", 0, 16, 16, 2, 0), ("psi", 0, 60, 12, 2, 0)],
    "fine": [("bar", 0, 10, 200, 20, 10), ("psi", 0, 100, 100, 10, 5), ("bar", 0, 6, 120, 10, 5), ("psi", 0, 300, 150, 10, 5),
             ("bar", 0, 16, 160, 10, 5), ("kPa", 0, 1000, 100, 10, 5)],
    "percent": [("%", 0, 100, 50, 5, 0), ("%", 0, 100, 20, 2, 0), ("%", 0, 100, 100, 10, 5), ("%", 0, 100, 40, 4, 2)],
    "compound": [("bar", -1, 3, 40, 5, 0), ("bar", -1, 5, 60, 10, 5), ("bar", -1, 1.5, 50, 10, 5), ("bar", -1, 9, 50, 5, 0),
                 ("kPa", -100, 300, 40, 5, 0)],
}
SECOND = {"psi": ("bar", 14.5038), "bar": ("psi", 0.0689476), "kPa": ("psi", 6.89476), "kgf/cm2": ("psi", 0.070307)}

# What a family takes its choices from. "own" families are looked at while the reader is mended; the others only measured.
FAMILIES = {
    "bench": dict(graduations="usual", faces=[(WHITE, BLACK), (CREAM, BLACK), (GREY, BLACK)], needles=["taper", "baton"],
                  colours=[BLACK], tails=["bar", "none", "fan"], sweeps=[270], bezels=["chrome", "plain"]),
    "twin": dict(graduations="usual", faces=[(WHITE, BLACK), (CREAM, BLACK)], needles=["taper", "thin", "leaf"],
                 colours=[BLACK, RED], tails=["bar", "disc", "moon"], sweeps=[270, 260, 240], bezels=["rubber", "plain"],
                 second=1.0),
    "night": dict(graduations="usual", faces=[(DARK, WHITE), (NAVY, WHITE), (DARK, YELLOW)], needles=["taper", "thin", "baton"],
                  colours=[WHITE, ORANGE, RED, YELLOW], tails=["none", "bar"], sweeps=[270, 240, 300], bezels=["plain", "chrome"],
                  second=0.3),
    "zones": dict(graduations="usual", faces=[(WHITE, BLACK), (GREY, BLACK)], needles=["baton", "arrow", "taper"],
                  colours=[BLACK, RED], tails=["disc", "fan"], sweeps=[270, 300, 180], bezels=["chrome", "plain"], zones=1.0),
    "cranker": dict(graduations="cranking", faces=[(WHITE, BLACK), (YELLOW, BLACK)], needles=["thin", "taper", "arrow"],
                    colours=[RED, BLACK, ORANGE], tails=["bar", "fan", "none"], sweeps=[270, 250, 300], bezels=["rubber"],
                    second=0.8, held=0.35),
    "inner": dict(graduations="usual", faces=[(WHITE, BLACK), (CREAM, BLACK)], needles=["taper", "thin", "leaf"],
                  colours=[BLACK, RED], tails=["bar", "disc", "moon"], sweeps=[270, 260, 240], bezels=["rubber", "plain"],
                  second=1.0, tell_inner=1.0),
    # measured only, but for half, whose pivot below the middle was looked into
    "percent": dict(graduations="percent", faces=[(WHITE, BLACK), (DARK, WHITE)], needles=["taper", "leaf", "thin"],
                    colours=[BLACK, RED, ORANGE], tails=["bar", "moon", "none"], sweeps=[270, 250, 225], bezels=["plain", "chrome"],
                    zones=0.8),
    "compound": dict(graduations="compound", faces=[(WHITE, BLACK), (CREAM, BLACK)], needles=["taper", "spade"],
                     colours=[BLACK, BLUE], tails=["bar", "disc"], sweeps=[270, 290], bezels=["chrome", "rubber"], zones=0.4),
    "coarse": dict(graduations="coarse", faces=[(WHITE, BLACK), (DARK, WHITE), (YELLOW, BLACK)], needles=["arrow", "baton", "window"],
                   colours=[BLACK, RED, ORANGE], tails=["fan", "none", "moon"], sweeps=[270, 240, 220, 180], bezels=["plain", "rubber"],
                   figures_outside=0.5),
    "fine": dict(graduations="fine", faces=[(WHITE, BLACK), (CREAM, BLACK)], needles=["thin", "leaf"], colours=[BLACK, RED, BLUE],
                 tails=["moon", "disc", "fan"], sweeps=[270, 300], bezels=["plain", "chrome"], second=0.3, held=0.15),
    "spade": dict(graduations="usual", faces=[(WHITE, BLACK), (DARK, CREAM), (GREY, BLUE)], needles=["spade", "leaf"],
                  colours=[BLACK, BLUE, ORANGE], tails=["moon", "disc"], sweeps=[260, 280, 300], bezels=["chrome"], starts=[-180, -90, -225],
                  figures_outside=0.3),
    "half": dict(graduations="usual", faces=[(WHITE, BLACK), (DARK, WHITE)], needles=["taper", "arrow"], colours=[BLACK, RED, WHITE],
                 tails=["bar", "none"], sweeps=[180, 190, 200], bezels=["plain", "rubber"], pivot=0.28),
    "banded": dict(graduations="usual", faces=[(WHITE, BLACK), (GREY, BLACK)], needles=["arrow", "window", "leaf"], colours=[BLACK, RED],
                   tails=["fan", "disc"], sweeps=[270, 230], bezels=["plain", "chrome"], ring=1.0, zones=0.5, second=0.4, dots=0.4),
}
# The same kinds with two scales on every plate, of which the inner one's range is told; measured only.
FAMILIES |= {f"inner-{name}": FAMILIES[name] | dict(second=1.0, tell_inner=1.0) for name in ("night", "cranker", "fine", "banded")}
OWN = ["bench", "twin", "night", "zones", "cranker", "inner"]
WORDS = ["bar", "psi", "CL 1.6", "OIL FILLED", "NORTH QUAY", "TESTER No 4", "CYL", "kPa x 100", "DO NOT HIT", "AIR"]


def style(family, random):
    """One style of a family."""
    f = FAMILIES[family]

    def of(choices):
        return choices[int(random.integers(0, len(choices)))]

    def chance(share):
        return random.uniform() < share

    between = random.uniform
    unit, low, high, divisions, major_every, middle_every = of(GRADUATIONS[f["graduations"]])
    face, ink = of(f["faces"])
    sweep = of(f["sweeps"])
    start = of(f["starts"]) if "starts" in f else -sweep / 2
    pivot = (0.0, f.get("pivot", 0.0) * between(0.8, 1.2))
    font = int(random.integers(0, 5))
    outside = chance(f.get("figures_outside", 0.08))
    ring = between(0.80, 0.92) if not outside else between(0.66, 0.72)
    if pivot[1]:
        ring = between(0.78, 0.86)
    minor = between(0.035, 0.065) * (0.8 if divisions > 90 else 1.0)
    spacing = np.radians(sweep) * ring / divisions
    scale = dict(min=low, max=high, divisions=divisions, major_every=major_every, middle_every=middle_every, ring=ring,
                 outwards=False, colour=ink, arcs=of([[], [], [0], [0], [1], [0, 1]]), minor=minor,
                 width=min(between(0.007, 0.016), 0.38 * spacing), major=minor * between(1.4, 2.3), bold=between(1.0, 2.2),
                 wedge=of([1.0, 1.0, 1.0, 0.5]), dots=chance(f.get("dots", 0.0)), font=font,
                 figure_every=1 if divisions / major_every <= 13 else 2, figure_height=between(0.06, 0.1))
    scale["figures_at"] = 0.1 if outside else -scale["major"] - between(0.08, 0.11)
    if sweep * major_every / divisions < 22:
        scale["figure_height"] = min(scale["figure_height"], 0.062)
    scales = [scale]
    if chance(f.get("second", 0.0)) and unit in SECOND:
        scales.append(second_scale(scale, SECOND[unit], of, between))
    colours = [c for c in f["colours"] if np.abs(np.array(c, float) - face).max() > 90] or [ink]
    needle = needle_of(of(f["needles"]), of(colours), of(f["tails"]), between(0.0, 1.0), ring, minor, of, between)
    held = None
    if chance(f.get("held", 0.0)):
        held = needle_of("thin", of([c for c in (RED, BLACK, BLUE) if c != needle["colour"]]), "none", 0.5, ring, minor, of, between)
    words = []
    for at, height in (((0, 0.36), 0.085), ((0, 0.5), 0.05), ((0, -0.34), 0.06), ((0, 0.6), 0.04)):
        if chance(0.65):
            words.append(dict(text=of(WORDS), at=(pivot[0] + at[0], pivot[1] * 0.6 + at[1]), height=height, colour=of([ink, ink, RED, BLUE]), font=int(random.integers(0, 5))))
    blobs = [dict(at=(between(-0.3, 0.3), of([-0.28, 0.28])), size=between(0.04, 0.09), corners=int(random.integers(3, 8)), turn=between(0, 90),
                  colour=of([RED, BLUE, GREEN, ink]), ring=chance(0.4)) for _ in range(int(random.integers(0, 3)))]
    kind = of(f["bezels"])
    return dict(
        family=family, unit=unit, tell_inner=len(scales) > 1 and chance(f.get("tell_inner", 0.0)), face=face, start=start, sweep=sweep, pivot=pivot, scales=scales, words=words, blobs=blobs,
        figures_lean=chance(0.2), zones=zones_of(ring, minor, of, between) if chance(f.get("zones", 0.06)) else [],
        outer_ring=of([BLACK, BLUE, (60, 60, 60)]) if chance(f.get("ring", 0.0)) else None, outer_ring_depth=-0.02,
        screws=[dict(at=(x, 0.0), size=0.03, turn=between(0, 180)) for x in (-0.4, 0.4)] if chance(0.25) else [],
        needle=needle, held_needle=held, needle_height=between(0.02, 0.08), cap=between(0.05, 0.15),
        cap_colour=of([BLACK, (120, 125, 130), needle["colour"], (70, 140, 170)]), stop_pin=ring - between(0.02, 0.2) if chance(0.4) else None,
        bezel_kind=kind, bezel={"chrome": (165, 168, 170), "rubber": of([(30, 30, 32), (30, 30, 120), (130, 70, 25)]), "plain": of([(35, 35, 36), (110, 115, 120), (60, 125, 160), (50, 50, 150)])}[kind],
        case_radius=between(1.18, 1.36) if kind == "rubber" else between(1.06, 1.2), ribs=int(random.integers(16, 60)),
        case_screws=[between(0, 90) + 120 * k for k in range(3)] if chance(0.2) else [], rim_height=between(0.02, 0.16), rim_shade=between(0, 0.35))


def second_scale(first, second, of, between):
    """A scale in another unit on the same plate: further in, or back to back with the first."""
    unit, factor = second
    top = first["max"] / factor
    step = min((1, 2, 5, 10, 20, 50, 0.5, 0.2, 0.1, 0.05, 100), key=lambda d: abs(np.log(top / d / 40)))
    major_every = of([5, 10])
    count = int(top / step + 1e-9)
    if of([False, True]):  # many such scales end at a long line, short of the first one's end
        count -= count % major_every
    back_to_back = of([False, True])
    out = dict(first, min=0, max=count * step, divisions=count, major_every=major_every, middle_every=0, in_first=factor, unit=unit,
               colour=of([first["colour"], RED, BLUE]), minor=0.8 * first["minor"], major=0.75 * first["major"],
               width=0.8 * first["width"], figure_height=0.7 * first["figure_height"], dots=False, figure_every=1)
    if back_to_back:  # the first scale's lines stand on a shared arc, the second one's hang below
        first["outwards"] = True
        first["ring"] -= first["major"]
        first["arcs"] = out["arcs"] = [0]
        first["figures_at"] = first["major"] + 0.06
        first["figure_height"] = min(0.06, first["figure_height"])
        out["ring"] = first["ring"]
        first["ring"], out["ring"] = first["ring"] - 0.05, first["ring"] - 0.05
    else:
        out["ring"] = first["ring"] - first["major"] - between(0.19, 0.24)
    out["figures_at"] = -out["major"] - 0.07
    return out


def needle_of(shape, colour, tail, length, ring, minor, of, between):
    return dict(shape=shape, colour=colour, width=between(0.05, 0.10), tip=ring - minor * 2.4 * length + 0.02, head=between(0.14, 0.26),
                tail_shape=tail, tail=between(0.16, 0.42), ridge=of([False, False, True]),
                tip_colour=of([None, None, None, RED, ORANGE]), tail_colour=of([None, None, None, BLACK]))


def zones_of(ring, minor, of, between):
    inner, outer = of([(ring + 0.01, ring + 0.05), (ring - minor, ring), (ring - 0.2, ring - 0.13)])
    a = between(0.3, 0.6)
    b = between(a + 0.1, 0.9)
    parts = of([[(0, a, GREEN), (a, b, YELLOW), (b, 1, RED)], [(b, 1, RED)], [(a, b, GREEN)], [(0, a, RED), (a, b, YELLOW), (b, 1, GREEN)]])
    return [{"from": p, "to": q, "colour": c, "inner": inner, "outer": outer} for p, q, c in parts]
