# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""While nothing happens nothing runs: no timer of the app wakes the processor and eats the battery.

The app is left alone on a page; once it has settled, the system calls of all its threads are watched for ten seconds
(strace). A thread that was woken shows at least one. The limit is the project's own.
"""

import contextlib
import os
import pathlib
import re
import sqlite3
import subprocess
import sys
import tempfile
import time
import unittest

CLI, APP, MAKE = (os.environ[name] for name in ("LAPWING_CLI", "LAPWING_APP", "LAPWING_MAKE"))
SETTLES_S, WATCHED_S = 6, 10
MOST_WAKE_UPS = 3  # the desktop's own messages may come in between


class Idle(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = pathlib.Path(folder.name)
        (self.folder / "runtime").mkdir(mode=0o700)

    def wake_ups(self, *command):
        """System calls that came back while the program was watched."""
        env = dict(os.environ, HOME=str(self.folder), XDG_RUNTIME_DIR=str(self.folder / "runtime"),
                   QT_QPA_PLATFORM="offscreen", QT_QUICK_BACKEND="software")
        log = self.folder / "calls"
        with open(self.folder / "said", "w") as said, \
                subprocess.Popen([str(part) for part in command], env=env, stdout=said, stderr=said) as program:
            try:
                time.sleep(SETTLES_S)
                self.assertIsNone(program.poll(), "the program ended by itself")
                with subprocess.Popen(["strace", "-f", "-qq", "-o", log, "-p", str(program.pid)],
                                      stderr=subprocess.DEVNULL) as watch:
                    time.sleep(WATCHED_S)
                    self.assertIsNone(watch.poll(), "strace could not watch the program")
                    watch.terminate()
            finally:
                program.kill()
        # A page that can't be built as it was asked for says so.
        self.assertNotIn(".qml", (self.folder / "said").read_text())
        calls = log.read_text(errors="replace").splitlines()
        # What was under way when the watch began or ended did not come back.
        return [line for line in calls if not re.search(r"<unfinished|detached|\?\?\?|ERESTART", line)]

    def sleeps(self, *command):
        calls = self.wake_ups(*command)
        self.assertLessEqual(len(calls), MOST_WAKE_UPS, "\n".join(calls[:40]))

    def test_a_timer_would_be_seen(self):
        ticking = "import time\nwhile True: time.sleep(0.5)"
        self.assertGreaterEqual(len(self.wake_ups(sys.executable, "-c", ticking)), WATCHED_S)

    def test_the_list_of_engines(self):
        subprocess.run([MAKE, self.folder / "library"], check=True)
        self.sleeps(APP, "--data", self.folder / "library")

    def test_pages_with_something_on_them(self):
        # The engine's card draws its History.
        for page in ["Pad", "Findings", "LeakHunt", "EngineCard"]:
            with self.subTest(page=page):
                library = self.folder / page
                subprocess.run([MAKE, library, page], check=True)
                self.sleeps(APP, "--data", library)
                # The app lets a place go that it could not open.
                with contextlib.closing(sqlite3.connect(library / "library.sqlite")) as kept:
                    self.assertIn(f'"{page}"', kept.execute("SELECT text FROM draft WHERE key = 'place'").fetchone()[0])

    def test_a_file_that_is_looked_at(self):
        file = self.folder / "twin.lapwing"
        subprocess.run([CLI, "demo", "-o", file], check=True, stdout=subprocess.DEVNULL)
        self.sleeps(APP, "--data", self.folder / "library", file)


if __name__ == "__main__":
    unittest.main()
