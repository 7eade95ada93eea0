#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""How long the app takes from nothing to a list of twenty engines, against a bare Qt Quick window.

start_bench.py APP BARE MAKE_LIBRARY [PAIRS]

Both are whole processes, started in turns on the same machine without a display and drawn by software. The bare window is
there with its first frame; the app with the frame in which engines stand and after which a key was taken (Tab led to
something that can be pressed). Of each pair the clock's time to that, the processors' time to it (all threads) and the
peak of resident memory are compared, and of the pairs' ratios the median is taken. The goal is twice at most; whether it was met is always said.
The guard, above which this fails, lies further off, since other programs make the clock's time chance, and threads
that work side by side count twice in the processors': the start holds when either of the two does.
"""
import os
import re
import statistics
import subprocess
import sys
import tempfile
import time

GOAL = 2.0
GUARD = 2.6
MEASURED = ("time to a usable list", "processors' time to it", "memory at the peak")
THERE = re.compile(rb"(?:first frame|usable list) after ([0-9.]+) ms of the processors' time\n")
UNITS = ("ms", "ms", "MiB")


def run(command, env):
    """What MEASURED names of one process, in UNITS."""
    start = time.perf_counter()
    process = subprocess.Popen(command, env=env, stdout=subprocess.PIPE)
    said = process.stdout.readline()
    wall = 1e3 * (time.perf_counter() - start)
    process.stdout.close()
    _, status, used = os.wait4(process.pid, 0)
    process.returncode = os.waitstatus_to_exitcode(status)
    there = THERE.fullmatch(said)
    if process.returncode != 0 or not there:
        sys.exit(f"{command[0]} said {said!r} and ended with code {process.returncode}")
    return wall, float(there.group(1)), used.ru_maxrss / 1024


def main():
    app, bare, make_library = sys.argv[1:4]
    pairs = int(sys.argv[4]) if len(sys.argv) > 4 else 15
    with tempfile.TemporaryDirectory() as folder:
        library = os.path.join(folder, "library")
        subprocess.run([make_library, library], check=True)
        env = dict(os.environ, QT_QPA_PLATFORM="offscreen", QT_QUICK_BACKEND="software", HOME=folder,
                   XDG_CACHE_HOME=os.path.join(folder, "cache"), LC_ALL="C.UTF-8")
        started_app = [app, "--data", library, "--usable-list"]
        rows = [(run([bare], env), run(started_app, env)) for _ in range(pairs + 1)]
    rows = rows[1:]  # the first pair fills the caches of the disk
    ratios = []
    for i, measured in enumerate(MEASURED):
        of_bare, of_app = ([row[which][i] for row in rows] for which in (0, 1))
        ratios.append(statistics.median(mine / bares for bares, mine in zip(of_bare, of_app)))
        print(f"{measured:24} bare {statistics.median(of_bare):6.1f} {UNITS[i]} ({min(of_bare):.0f} to {max(of_bare):.0f}), "
              f"app {statistics.median(of_app):6.1f} {UNITS[i]} ({min(of_app):.0f} to {max(of_app):.0f}), "
              f"median ratio of {pairs} pairs {ratios[i]:.2f}")
    worst = max(min(ratios[:2]), ratios[2])
    print(f"goal of {GOAL}: {'met' if worst <= GOAL else 'MISSED'}; guard of {GUARD}: {'held' if worst <= GUARD else 'BROKEN'}")
    return 0 if worst <= GUARD else 1


if __name__ == "__main__":
    sys.exit(main())
