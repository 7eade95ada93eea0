# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""lapwing-cli needle on the photos of tests/fixtures/gauge-photos, whose truth.csv says what they show."""

import csv
import json
import os
import subprocess
import unittest

from cli import CLI, CliTest, DONE, NO, PSI, REFUSED, SOURCE, WRONG_USE, run

PHOTOS = SOURCE / "tests/fixtures/gauge-photos"


def truth(file):
    with open(PHOTOS / "truth.csv", newline="") as table:
        return next(row for row in csv.DictReader(table) if row["file"] == file)


class Needle(CliTest):
    photo = PHOTOS / "g008.jpg"

    def test_reads_in_si(self):
        row = truth("g008.jpg")
        self.assertEqual(row["unit"], "psi")
        found = self.json("needle", self.photo, "--min", "0psi", "--max", row["scale_max"] + "psi")
        span = float(row["scale_max"]) * PSI
        self.assertLess(abs(found["value"] - float(row["true_value"]) * PSI), 0.005 * span)
        self.assertGreater(found["u"], 0)
        self.assertLess(found["u"], 0.01 * span)
        self.assertGreater(found["confidence"], 0.8)
        self.assertLess(abs(found["needle_angle_deg"] - float(row["true_angle_deg"])), 1.5)
        for got, wanted in zip(found["centre_px"], (row["centre_x"], row["centre_y"])):
            self.assertLess(abs(got - float(wanted)), 4)
        self.assertNotIn("why", found)

    def test_speaks_the_unit_of_the_scale(self):
        row = truth("g008.jpg")
        said = self.done("needle", self.photo, "--min", "0psi", "--max", row["scale_max"] + "psi", "--sweep", "270deg",
                         "--start", "-135deg")
        self.assertRegex(said, r"^reads [0-9.]+ psi ± [0-9.]+ psi, confidence [0-9]+ %\n$")
        self.assertLess(abs(float(said.split()[1]) - float(row["true_value"])), 0.005 * float(row["scale_max"]))

    def test_draws_what_it_saw(self):
        target = self.folder / "overlay.png"
        self.done("needle", self.photo, "--min", "0psi", "--max", "30psi", "--overlay", target)
        self.assertEqual(target.read_bytes()[:8], b"\x89PNG\r\n\x1a\n")

    def test_declines_with_a_reason(self):
        # A picture without a gauge; it stands for itself, no source.
        plain = SOURCE / "platform/linux/screenshots/03-session.png"
        ran = run("needle", plain, "--min", "0bar", "--max", "6bar", "--json")
        self.assertEqual(ran.returncode, NO, ran.stderr)
        found = json.loads(ran.stdout)
        self.assertIsNone(found["value"])
        self.assertTrue(found["why"].endswith("."))
        self.assertLess(found["confidence"], 0.5)

    def test_refuses_what_is_no_photo(self):
        self.fails(REFUSED, "needle", SOURCE / "README.md", "--min", "0bar", "--max", "6bar")
        self.fails(REFUSED, "needle", self.folder / "missing.jpg", "--min", "0bar", "--max", "6bar")
        short = self.folder / "short.jpg"
        short.write_bytes(self.photo.read_bytes()[:5000])
        self.assertIn("cut short", self.fails(REFUSED, "needle", short, "--min", "0bar", "--max", "6bar"))
        self.fails(REFUSED, "needle", self.photo, "--min", "6bar", "--max", "0bar")

    def test_wrong_use(self):
        self.fails(WRONG_USE, "needle", self.photo, "--min", "0bar")
        self.assertIn("psi", self.fails(WRONG_USE, "needle", self.photo, "--min", "0", "--max", "6"))
        self.fails(WRONG_USE, "needle", self.photo, "--min", "0bar", "--max", "6bar", "--sweep", "270")

    def test_memory_stays_bounded(self):
        """On the photos that ask most of the reader, and as a phone with 50 megapixels takes one."""
        large = self.folder / "large.jpg"
        subprocess.run(["ffmpeg", "-v", "error", "-i", PHOTOS / "g050.jpg", "-vf", "scale=8160:6120", large], check=True)
        for photo in (self.photo, PHOTOS / "g040.jpg", PHOTOS / "g050.jpg", large):
            with subprocess.Popen([CLI, "needle", photo, "--min", "0psi", "--max", "30psi"], stdout=subprocess.DEVNULL,
                                  stderr=subprocess.DEVNULL) as ran:
                _, ended, used = os.wait4(ran.pid, 0)
                ran.returncode = os.waitstatus_to_exitcode(ended)
            self.assertIn(ran.returncode, (DONE, NO))
            # Sanitizers add their own.
            self.assertLess(used.ru_maxrss, 150 * 1024, photo)


if __name__ == "__main__":
    unittest.main()
