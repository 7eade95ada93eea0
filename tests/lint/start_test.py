# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""platform/linux/start with a made-up app in a made-up tree: it reports what was written and fails when
something is missing."""

import os
import pathlib
import shutil
import subprocess
import tempfile
import unittest

import tree

# The build of the made-up tree copies this to where the app would be.
APP = """#!/bin/sh
[ "$1" = --demo-tour ] || { echo "window on $DISPLAY"; exit 0; }
[ "$QT_QPA_PLATFORM" = offscreen ] && [ "$XDG_DATA_HOME" != "$HOME/.local/share" ] || exit 9
for file in $(cat writes); do echo x > "$2/$file"; done
: > "$2/empty.pdf"
exit $(cat ends)
"""
CMAKE = """cmake_minimum_required(VERSION 3.25)
project(made_up LANGUAGES NONE)
add_custom_target(app ALL COMMAND ${CMAKE_COMMAND} -E copy ${CMAKE_SOURCE_DIR}/app qml/app/lapwing)
"""


class StartTest(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.top = pathlib.Path(folder.name) / "a tree"
        linux = self.top / "platform/linux"
        linux.mkdir(parents=True)
        for name in ("start", "lib.sh"):
            shutil.copy(tree.TOP / "platform/linux" / name, linux)
        shutil.copy(tree.TOP / "CMakePresets.json", self.top)
        (linux / "packages").write_text("[build]\nbash\n[run]\nlibc6\n", "utf-8")
        (self.top / "CMakeLists.txt").write_text(CMAKE, "utf-8")
        (self.top / "app").write_text(APP, "utf-8")
        (self.top / "app").chmod(0o755)
        self.tour("a.pdf b.lapwing c.png d.png")

    def tour(self, writes, ends=0):
        (self.top / "writes").write_text(writes, "utf-8")
        (self.top / "ends").write_text(str(ends), "utf-8")

    def start(self, *arguments, **display):
        environment = {k: v for k, v in os.environ.items() if k not in ("DISPLAY", "WAYLAND_DISPLAY")}
        run = subprocess.run(
            [self.top / "platform/linux/start", *arguments], cwd="/", env={**environment, **display},
            stdin=subprocess.DEVNULL, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True,
        )
        return run.returncode, run.stdout

    def test_without_a_display_it_says_what_it_wrote_and_does_so_again(self):
        for _ in range(2):
            code, said = self.start()
            self.assertEqual(code, 0, said)
            demo = self.top / ".build/demo"
            self.assertIn(f"Report:       {demo}/a.pdf\n", said)
            self.assertIn(f"Session file: {demo}/b.lapwing\n", said)
            self.assertIn(f"Screenshots:  2 in {demo}\n", said)

    def test_something_missing_fails(self):
        for writes, words in (("b.lapwing c.png", "No report"), ("a.pdf c.png", "No session file"),
                              ("a.pdf b.lapwing", "No screenshot")):
            shutil.rmtree(self.top / ".build/demo", ignore_errors=True)
            self.tour(writes)
            code, said = self.start()
            self.assertNotEqual(code, 0)
            self.assertIn(words, said)

    def test_what_an_earlier_run_wrote_does_not_count(self):
        self.assertEqual(self.start()[0], 0)
        self.tour("c.png")
        code, said = self.start()
        self.assertNotEqual(code, 0)
        self.assertIn("No report", said)
        self.assertIn("No session file", said)

    def test_an_app_that_fails_fails(self):
        self.tour("a.pdf b.lapwing c.png", ends=3)
        code, said = self.start()
        self.assertNotEqual(code, 0)
        self.assertIn("ended with code 3", said)

    def test_a_build_that_fails_fails(self):
        (self.top / "app").unlink()
        code, said = self.start()
        self.assertNotEqual(code, 0)
        self.assertIn("The build failed", said)

    def test_with_a_display_it_opens_the_app(self):
        code, said = self.start(DISPLAY=":7")
        self.assertEqual(code, 0, said)
        self.assertIn("window on :7", said)
        self.assertIn("Report: ", self.start("--headless", DISPLAY=":7")[1])

    def test_the_output_folder_is_the_callers(self):
        with tempfile.TemporaryDirectory() as folder:
            code, said = self.start("--output", folder)
            self.assertEqual(code, 0, said)
            self.assertTrue((pathlib.Path(folder) / "a.pdf").is_file())


if __name__ == "__main__":
    unittest.main()
