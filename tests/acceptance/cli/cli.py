# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""Runs the built lapwing-cli for the tests beside this file."""

import json
import os
import pathlib
import subprocess
import tempfile
import unittest

CLI = os.environ["LAPWING_CLI"]
SOURCE = pathlib.Path(os.environ["LAPWING_SOURCE"])
PSI = 4.4482216152605 / 0.00064516  # NIST SP 811: lbf and inch, both exact

DONE, NO, WRONG_USE, REFUSED, INTERNAL = range(5)


def run(*words):
    return subprocess.run([CLI, *map(str, words)], capture_output=True, text=True, timeout=60)


class CliTest(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = pathlib.Path(folder.name)

    def done(self, *words):
        """Standard output of a run that must succeed and say nothing else."""
        ran = run(*words)
        self.assertEqual(ran.returncode, DONE, ran.stderr)
        self.assertEqual(ran.stderr, "")
        return ran.stdout

    def json(self, *words):
        return json.loads(self.done(*words, "--json"))

    def fails(self, code, *words):
        """The one sentence that a run must fail with."""
        ran = run(*words)
        self.assertEqual(ran.returncode, code, f"{words}\n{ran.stdout}{ran.stderr}")
        self.assertEqual(ran.stdout, "")
        lines = ran.stderr.splitlines()
        self.assertEqual(len(lines), 1, ran.stderr)
        self.assertTrue(lines[0].startswith("lapwing-cli: "), lines[0])
        self.assertTrue(lines[0].endswith("."), lines[0])
        return lines[0]

    def near(self, value, wanted, relative):
        self.assertLessEqual(abs(value - wanted), relative * abs(wanted), f"{value} is not {wanted} within {relative}")
