# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""lapwing-cli compare and history: the demo's three visits, two files, other testers and altitudes, wrong use."""

import copy
import json
import math
import unittest
import zipfile

from cli import CliTest, PSI, REFUSED, SOURCE, WRONG_USE

BAR = 1e5  # NIST SP 811


class Compare(CliTest):
    def demo(self):
        """session.json of the demo V-twin."""
        with zipfile.ZipFile(SOURCE / "assets/demo/orchard-v-twin.lapwing") as packed:
            name = next(n for n in packed.namelist() if n.endswith("/data/session.json"))
            return json.loads(packed.read(name))

    def file(self, document, name="a.json"):
        target = self.folder / name
        target.write_text(json.dumps(document))
        return target

    def two(self, before, after):
        """A one-cylinder engine with these readings at its two visits, everything else as in the demo."""
        document = self.demo()
        document["visits"] = document["visits"][:2]
        for visit, readings in zip(document["visits"], (before, after)):
            pattern = visit["readings"][0]
            visit["readings"] = []
            for number, reading in enumerate(readings):
                made = {k: pattern[k] for k in ("session", "taken_at", "from", "tester", "cranked_by") if k in pattern}
                made |= {"id": pattern["id"][:-2] + f"{number:02x}", "cylinder": 1, "tag": "as found", "oiled": "no"}
                if reading["test"] == "leak-down":
                    made["tester"] = document["testers"][1]["id"]
                    made["cranked_by"] = "unknown"
                visit["readings"].append(made | reading)
            for part in ("exits", "clearances", "plan", "notes"):
                visit[part] = []
        return document

    def pressure(self, text, unit="bar"):
        return {"digits": text, "unit": unit}

    def test_the_repair_of_the_demo(self):
        # Read off the demo's readings: cylinder 1 dry 6.8 and 6.4, then 10.4 and 10.2 bar; leak-down of 5.50 bar
        # 3.40, then 5.30 bar held. Cylinder 2: 7.9, then 10.0; 4.10, then 5.40.
        found = self.json("compare", SOURCE / "assets/demo/orchard-v-twin.lapwing", "--visits", "1", "2")
        one, two = found["cylinders"]
        self.assertEqual([one["number"], two["number"]], [1, 2])
        self.near(one["dry"]["before"], 6.6 * BAR, 1e-9)
        self.near(one["dry"]["after"], 10.3 * BAR, 1e-9)
        self.near(one["dry"]["difference"], 3.7 * BAR, 1e-9)
        self.near(one["leakdown"]["difference"], (5.5 - 5.3) / 5.5 - (5.5 - 3.4) / 5.5, 1e-9)
        self.near(two["leakdown"]["before"], 1.4 / 5.5, 1e-9)
        for cylinder in (one, two):
            for test in ("dry", "leakdown"):
                self.assertEqual(cylinder[test]["verdict"], "better beyond doubt")
                self.assertGreater(abs(cylinder[test]["difference"]), 3 * cylinder[test]["u"])
            # No wet test after the repair.
            self.assertIsNone(cylinder["wet"]["after"])
            self.assertIsNone(cylinder["wet"]["difference"])
            self.assertEqual(cylinder["wet"]["verdict"], "not measured")
        self.assertEqual(found["comparable"], {"ok": True, "reasons": []})

    def test_a_year_later_is_the_default_of_one_file(self):
        found = self.json("compare", SOURCE / "assets/demo/orchard-v-twin.lapwing")
        one, two = found["cylinders"]
        self.assertEqual(one["leakdown"]["verdict"], "no real change")
        self.near(two["dry"]["difference"], -0.9 * BAR, 1e-9)
        self.assertEqual(two["leakdown"]["verdict"], "worse")

    def test_two_files_are_the_same_as_one(self):
        document = self.demo()
        files = []
        for number in range(2):
            part = copy.deepcopy(document)
            part["visits"] = [document["visits"][number]]
            files.append(self.file(part, f"{number}.json"))
        both = self.json("compare", *files)
        self.assertEqual(both, self.json("compare", self.file(document), "--visits", "1", "2"))
        # The other way round every sign turns.
        back = self.json("compare", *reversed(files))
        for there, here in zip(both["cylinders"], back["cylinders"]):
            self.near(there["dry"]["difference"], -here["dry"]["difference"], 1e-9)
            self.assertEqual(here["dry"]["verdict"], "worse")
            self.assertTrue(here["dry"]["beyond_doubt"])

    def test_u_by_hand(self):
        # As in the unit test: class 1.6 on 0-16 bar, 9.1 and 10.0 bar; graduation 0.2 bar, so read to 0.1.
        document = self.two(
            [{"test": "dry", "final": self.pressure("9.1")}], [{"test": "dry", "final": self.pressure("10.0")}]
        )
        change = self.json("compare", self.file(document))["cylinders"][0]["dry"]
        whole = 0.256**2 / 3
        local = sum(whole * (0.6 - 0.2 * (p / 16) ** 2) for p in (9.1, 10.0))
        rest = 0.2 * whole * (0.9 / 16) ** 2 + 2 * 0.05**2 / 3 + (0.015**2 + 0.02**2) * (9.1**2 + 10**2)
        self.near(change["u"], math.sqrt(local + rest) * BAR, 1e-6)
        self.assertEqual(change["verdict"], "better")

    def test_another_set_pressure_is_converted_and_said(self):
        # One leak: 60 of 80 psi is 36.34 of 50 psi on the same restrictor (isentropic nozzle flow, computed apart
        # from this program).
        document = self.two(
            [{"test": "leak-down", "set": self.pressure("50", "psi"), "held": self.pressure("36.34", "psi")}],
            [{"test": "leak-down", "set": self.pressure("80", "psi"), "held": self.pressure("60.00", "psi")}],
        )
        for visit in document["visits"]:
            visit["session"]["conditions"]["station_pressure"] = self.pressure("1013.25", "hPa")
        found = self.json("compare", self.file(document))
        change = found["cylinders"][0]["leakdown"]
        self.near(change["before"], 0.25, 1e-3)
        self.near(change["before_as_measured"], 1 - 36.34 / 50, 1e-9)
        self.assertEqual(change["verdict"], "no real change")
        self.assertEqual([r["code"] for r in found["comparable"]["reasons"]], ["compare.set_pressure"])
        self.assertEqual(found["comparable"]["reasons"][0]["treatment"], "corrected")

    def test_another_altitude_is_converted_and_said(self):
        # A magazine letter: 120 psi at sea level is about 100 psi at 5000 ft; 99.85 by absolute scaling.
        document = self.two(
            [{"test": "dry", "final": self.pressure("120", "psi")}],
            [{"test": "dry", "final": self.pressure("100", "psi")}],
        )
        for visit, altitude in zip(document["visits"], ("0", "5000")):
            visit["session"]["conditions"]["altitude"] = {"digits": altitude, "unit": "ft"}
        found = self.json("compare", self.file(document))
        change = found["cylinders"][0]["dry"]
        self.near(change["before"] / PSI, 99.85, 5e-4)
        self.assertEqual(change["verdict"], "no real change")
        self.assertEqual(found["comparable"]["reasons"][0]["code"], "compare.air_pressure")

    def test_oil_from_the_assembly_is_not_comparable(self):
        document = self.two(
            [{"test": "dry", "final": self.pressure("6.8")}],
            [{"test": "dry", "final": self.pressure("10.4"), "tag": "after repair", "oiled": "before"}],
        )
        found = self.json("compare", self.file(document))
        self.assertEqual(found["cylinders"][0]["dry"]["verdict"], "not comparable")
        self.assertFalse(found["comparable"]["ok"])
        self.assertEqual(found["comparable"]["reasons"][0]["treatment"], "not comparable")
        self.assertIn("not comparable", self.done("compare", self.file(document)))

    def test_text(self):
        said = self.done("compare", SOURCE / "assets/demo/orchard-v-twin.lapwing", "--visits", "1", "2")
        self.assertIn("As found (2025-03-14) against After the repair (2025-04-12)", said)
        self.assertIn("better beyond doubt", said)
        self.assertIn("Nothing stands in the way", said)
        self.assertNotRegex(said, r"%\d|[a-z]+\.[a-z_]+\b(?<!\.json)")

    def test_history_says_that_the_ring_leak_is_coming_back(self):
        found = self.json("history", SOURCE / "assets/demo/orchard-v-twin.lapwing")
        self.assertEqual(len(found["visits"]), 3)
        one, two = found["cylinders"]
        self.assertIsNone(one["since_repair"])
        self.assertEqual(two["since_repair"]["code"], "history.coming_back")
        self.assertEqual(two["since_repair"]["path"], "rings")
        self.assertGreaterEqual(len(two["since_repair"]["evidence"]), 3)
        self.assertEqual([p["after_repair"] for p in two["leakdown"]["points"]], [False, True, False])
        self.assertIn("coming back", self.done("history", SOURCE / "assets/demo/orchard-v-twin.lapwing"))

    def test_findings_of_that_visit_say_so_too(self):
        demo = SOURCE / "assets/demo/orchard-v-twin.lapwing"
        for visit, code in ((2, None), (3, "history.coming_back")):
            one, two = self.json("findings", demo, "--visit", str(visit))["cylinders"]
            self.assertIsNone(one["since_repair"])
            self.assertEqual(two["since_repair"] and two["since_repair"]["code"], code)
        self.assertEqual(two["since_repair"]["path"], "rings")
        said = self.done("findings", demo, "--visit", "3")
        self.assertIn("is coming back", said)
        self.assertIn("worse beyond doubt", said)

    def test_wrong_use_and_refusals(self):
        demo = SOURCE / "assets/demo/orchard-v-twin.lapwing"
        self.assertIn("--visits", self.fails(WRONG_USE, "compare", demo, "--visits", "1", "9"))
        self.assertIn("--visits", self.fails(WRONG_USE, "compare", demo, "--visits", "one", "2"))
        self.assertIn("--visits", self.fails(WRONG_USE, "compare", demo, "--visits", "1"))
        self.assertIn("same visit", self.fails(WRONG_USE, "compare", demo, "--visits", "2", "2"))
        self.assertIn("same visit", self.fails(WRONG_USE, "compare", demo, demo))
        self.assertIn("BEFORE", self.fails(WRONG_USE, "compare"))
        self.assertIn("fewer than two", self.fails(REFUSED, "compare", SOURCE / "assets/demo/harbour-six.lapwing"))
        self.fails(REFUSED, "compare", demo, SOURCE / "assets/demo/harbour-six.lapwing")
        self.fails(REFUSED, "history", self.folder / "missing.lapwing")


if __name__ == "__main__":
    unittest.main()
