# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""The stored demo: it is what its maker makes now, and it holds the invented engines as they are described."""

import json
import os
import subprocess
import unittest
import zipfile

from cli import CliTest, SOURCE


def entries(file):
    with zipfile.ZipFile(file) as packed:
        return {name: packed.read(name) for name in packed.namelist()}


def session(name):
    return json.loads(entries(SOURCE / f"assets/demo/{name}.lapwing")[f"{name}/data/session.json"])


class Demo(CliTest):
    def test_made_anew(self):
        subprocess.run([os.environ["LAPWING_MAKE_DEMO"], self.folder], check=True, timeout=60)
        for name in ["orchard-v-twin.lapwing", "harbour-six.lapwing"]:
            # Entry by entry: how tightly they are packed is up to the packing library's version.
            self.assertEqual(entries(self.folder / name), entries(SOURCE / "assets/demo" / name))

    def test_in_order(self):
        for name in ["orchard-v-twin", "harbour-six"]:
            self.assertTrue(self.json("check", SOURCE / f"assets/demo/{name}.lapwing")["ok"])

    def test_orchard_v_twin(self):
        found = session("orchard-v-twin")
        engine = found["engine"]
        self.assertEqual(engine["bore"]["value"], {"digits": "73.4", "unit": "mm"})
        self.assertEqual(engine["firing_intervals"], [{"digits": "270", "unit": "deg"}, {"digits": "450", "unit": "deg"}])
        self.assertEqual(engine["limits"]["lowest"], {"digits": "8.0", "unit": "bar"})
        self.assertEqual(engine["owner"]["name"], "Mill Lane Engine Club")
        self.assertEqual([v["session"]["opened_at"][:7] for v in found["visits"]], ["2025-03", "2025-04", "2026-03"])
        first = found["visits"][0]
        not_done = [m["step"] for m in first["session"]["prepare"] if m["state"] == "not done"]
        self.assertEqual(not_done, ["battery"])
        self.assertEqual({r["test"] for r in first["readings"]}, {"dry", "leak-down", "wet"})
        # Oil comes last: it stays on the rings.
        tests = [r["test"] for r in sorted(first["readings"], key=lambda r: r["taken_at"])]
        self.assertEqual(tests, sorted(tests, key=["dry", "leak-down", "wet"].index))

    def test_harbour_six(self):
        found = session("harbour-six")
        self.assertEqual(found["engine"]["firing_order"], [1, 5, 3, 6, 2, 4])
        self.assertEqual(len(found["visits"]), 1)

    def test_read_as_gauges_are_read(self):
        for name in ["orchard-v-twin", "harbour-six"]:
            for visit in session(name)["visits"]:
                for reading in visit["readings"]:
                    for field, step in [("first", 0.1), ("final", 0.1), ("set", 0.05), ("held", 0.05)]:
                        if field in reading:
                            steps = float(reading[field]["digits"]) / step
                            self.assertAlmostEqual(steps, round(steps), places=6)


if __name__ == "__main__":
    unittest.main()
