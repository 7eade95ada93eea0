# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""How lapwing-cli is used: help, version, and each kind of wrong use with its exit code and one sentence."""

import re
import subprocess
import unittest

from cli import CLI, CliTest, REFUSED, SOURCE, WRONG_USE

ENGINE = "--bore 73.4mm --stroke 58.8mm --rod 118mm --cr 8.6 --ivc 65deg".split()


class Use(CliTest):
    def verbs(self):
        """Every line of the overview that names a verb."""
        found = re.findall(r"^  ((?:sums )?[a-z]+)  +\S", self.done("--help"), re.MULTILINE)
        self.assertGreaterEqual(len(found), 17, found)
        return found

    def test_help(self):
        for verb in self.verbs():
            said = self.done(*verb.split(), "--help")
            self.assertTrue(said.startswith("usage: lapwing-cli " + verb), said)
            for line in said.splitlines():
                self.assertLessEqual(len(line), 100, line)
                self.assertEqual(line, line.rstrip())

    def test_man_page_names_every_verb(self):
        page = (SOURCE / "platform/linux/lapwing-cli.1").read_text("utf-8").replace("\\-", "-")
        for verb in self.verbs():
            self.assertRegex(page, rf"\n\.BI? {verb}\b")

    def test_version(self):
        self.assertRegex(self.done("--version"), r"^lapwing-cli \d+\.\d+\.\d+\n$")

    def test_verb(self):
        self.assertIn("--help", self.fails(WRONG_USE))
        self.assertIn("sums leak", self.fails(WRONG_USE, "sum"))
        self.assertIn("sums crank", self.fails(WRONG_USE, "sums"))
        self.assertIn('"sums leek"', self.fails(WRONG_USE, "sums", "leek"))

    def test_options(self):
        self.assertIn("--sett", self.fails(WRONG_USE, "sums", "leak", "--sett", "80psi", "--held", "60psi"))
        self.assertIn("--held", self.fails(WRONG_USE, "sums", "leak", "--set", "80psi"))
        self.assertIn("PRESSURE", self.fails(WRONG_USE, "sums", "leak", "--set", "--held", "60psi"))
        self.assertIn("twice", self.fails(WRONG_USE, "sums", "leak", "--set", "80psi", "--set", "81psi", "--held", "60psi"))
        self.assertIn("extra", self.fails(WRONG_USE, "sums", "unit", "80psi", "extra"))
        self.assertIn("QUANTITY", self.fails(WRONG_USE, "sums", "unit"))
        self.assertIn("switch", self.fails(WRONG_USE, "sums", "unit", "80psi", "--json=yes"))
        self.assertIn("--cr-trapped", self.fails(WRONG_USE, "sums", "crank", *ENGINE[:6], "--ivc", "65deg"))
        self.assertIn("not both", self.fails(WRONG_USE, "sums", "crank", *ENGINE, "--cr-trapped", "7"))
        self.assertIn("not both", self.fails(WRONG_USE, "sums", "leak", "--set", "80psi", "--held", "60psi", "--altitude",
                                             "240m", "--ambient", "985hPa"))
        self.assertIn("plug, gauge", self.fails(WRONG_USE, "sums", "crank", *ENGINE, "--check-valve", "hose"))
        self.assertIn("whole number", self.fails(WRONG_USE, "sums", "crank", *ENGINE, "--strokes", "2.5"))
        self.assertIn("v-twin, six", self.fails(WRONG_USE, "demo", "--engine", "four", "-o", self.folder / "x"))

    def test_equals_sign_and_negative_numbers(self):
        self.assertAlmostEqual(self.json("sums", "leak", "--set=80psi", "--held=60psi")["leakage"], 0.25)
        self.assertGreater(self.json("sums", "altitude", "--altitude", "-100m")["value_pa"], 101325)

    def test_units(self):
        for text in ["80", "80bars", "80 PSI"]:
            sentence = self.fails(WRONG_USE, "sums", "leak", "--set", text, "--held", "60psi")
            self.assertIn("--set", sentence)
            for unit in ["Pa", "kPa", "hPa", "bar", "psi", "kgf/cm2", "inHg"]:
                self.assertIn(unit, sentence)
        for option, text, units in [("--bore", "73.4", ["mm", "in"]), ("--ivc", "65", ["rad", "deg"]),
                                    ("--rpm", "250", ["rpm"]), ("--leak", "0.5mm", ["mm2"]), ("--hose", "12", ["cm3"]),
                                    ("--air", "20C", ["degC", "degF"])]:
            words = [w for pair in zip(ENGINE[::2], ENGINE[1::2]) if pair[0] != option for w in pair]
            sentence = self.fails(WRONG_USE, "sums", "crank", *words, option, text)
            for unit in units:
                self.assertIn(unit, sentence)
        self.assertIn("psi", self.fails(WRONG_USE, "sums", "unit", "80"))
        self.assertIn("kPa", self.fails(WRONG_USE, "sums", "unit", "80psi", "--to", "mm"))

    def test_numbers(self):
        for text in ["eightypsi", "8..0psi", "psi", "1e3psi", "nanpsi", "1e400psi"]:
            said = self.fails(WRONG_USE, "sums", "leak", "--set", text, "--held", "60psi")
            self.assertIn(f'"{text}" is not a number', said)
        self.assertIn("without a unit", self.fails(WRONG_USE, "sums", "leak", "--set", "80psi", "--held", "60psi",
                                                   "--restrictor-cd", "0.85mm"))
        self.fails(REFUSED, "sums", "altitude", "--altitude", "40000m")
        self.fails(REFUSED, "sums", "leak", "--set", "80psi", "--held", "60psi", "--restrictor", "0mm")

    def test_impossible_numbers_are_refused_as_they_were_typed(self):
        said = self.fails(REFUSED, "sums", "leak", "--set", "80psi", "--held", "90psi")
        self.assertIn("The held pressure (90 psi) is above the set pressure (80 psi)", said)
        said = self.fails(REFUSED, "sums", "leak", "--set", "80psi", "--held", "60psi", "--restrictor", "40in")
        self.assertIn("A restrictor of 40 in cannot be right", said)
        said = self.fails(REFUSED, "sums", "leak", "--set", "80psi", "--held", "60psi", "--gauge-span", "70psi")
        self.assertIn("80 psi", said)
        self.assertIn("70 psi", said)
        for text in ["-300degC", "-1K", "-460degF"]:
            self.assertIn("colder than anything", self.fails(REFUSED, "sums", "unit", text))
        self.assertIn("--air", self.fails(REFUSED, "sums", "crank", *ENGINE, "--air", "-300degC"))
        self.done("sums", "unit", "-273.15degC")

    def test_output_that_is_lost_is_told(self):
        with open("/dev/full", "w") as full:
            ran = subprocess.run([CLI, "sums", "unit", "80psi"], stdout=full, stderr=subprocess.PIPE, text=True)
        self.assertEqual(ran.returncode, WRONG_USE)
        self.assertIn("Standard output", ran.stderr)

    def test_table_without_json(self):
        said = self.done("sums", "leak", "--set", "80psi", "--held", "60psi", "--to-set", "100psi")
        self.assertIn("25.0 %", said)
        self.assertIn("psi", said)


if __name__ == "__main__":
    unittest.main()
