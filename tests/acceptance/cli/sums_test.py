# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""The sums of lapwing-cli against published values; each names its source."""

import math
import unittest

from cli import PSI, CliTest, REFUSED, WRONG_USE

# Independent computation of this very case, 8 strokes, kPa gauge; not run by the code under test.
PUFFS_KPA = [522.8, 741.1, 838.2, 882.2, 902.4, 911.7, 916.0, 918.0]
V_TWIN = "--bore 73.4mm --stroke 58.8mm --rod 118mm --cr 8.6 --ivc 65deg --evo 60deg --rpm 250rpm".split()
SMALL = "--bore 70mm --stroke 65mm --rod 125mm --cr 9 --ivc 65deg --rpm 250rpm".split()


class Leak(CliTest):
    def leak(self, *words):
        return self.json("sums", "leak", *words)

    def test_mechanics_number(self):
        for set_to, held, percent, source in [
            ("80psi", "60psi", 25, "Jeep service manual 1982, cylinder leakage test"),
            ("6bar", "4.5bar", 25, "Rotax 914 maintenance manual"),
            ("87psi", "65psi", 25.29, "Rotax 914, printed 25, exact 25.29"),
            ("80psi", "72psi", 10, "Kohler ECV940 service manual, chart"),
            ("80psi", "48psi", 40, "Kohler ECV940 service manual, chart"),
            ("80psi", "32psi", 60, "Kohler ECV940 service manual, chart"),
        ]:
            with self.subTest(source):
                found = self.leak("--set", set_to, "--held", held)
                self.assertAlmostEqual(100 * found["leakage"], percent, delta=0.005)

    def test_area_ratio(self):
        # Isentropic nozzle at 14.696 psia: computed from the formula by hand, a second opinion and no source.
        for set_to, held, ratio in [("80psi", "60psi", 1.0586), ("80psi", "44psi", 1.583), ("100psi", "90psi", 0.6361),
                                    ("100psi", "80psi", 0.9420), ("80psi", "61.77psi", 1.0)]:
            found = self.leak("--set", set_to, "--held", held, "--ambient", "14.696psi")
            self.near(found["area_ratio"], ratio, 2e-4)

    def test_area_hole_and_flow_agree(self):
        found = self.leak("--set", "80psi", "--held", "60psi", "--ambient", "14.696psi", "--restrictor", "0.040in",
                          "--restrictor-cd", "0.85")
        restrictor = 0.85 * math.pi / 4 * (0.040 * 0.0254) ** 2
        self.near(found["leak_area_m2"], found["area_ratio"] * restrictor, 1e-9)
        self.near(math.pi / 4 * found["leak_hole_m"] ** 2, found["leak_area_m2"], 1e-9)
        # Choked flow, 0.0404 s sqrt(K)/m: the constant of air in gas dynamics texts (from memory).
        choked = found["leak_area_m2"] * (60 + 14.696) * PSI * 0.0404 / math.sqrt(293.15)
        self.near(found["flow_anr_m3s"] * 1.185, choked, 2e-3)

    def test_flow_of_a_known_hole(self):
        # Compressed-air handbook table: a hole of 1/32 in passes 1.06 cubic feet of free air a minute at 60 psi
        # gauge (14.7 psia, 70 degF); agreement wanted 1 %. Here it is the tester's restrictor that is chosen so that
        # 60 psi are held: flow and hole must then belong together.
        found = self.leak("--set", "80psi", "--held", "60psi", "--ambient", "14.7psi")
        cubic_feet = 1.06 * (found["leak_hole_m"] / (0.0254 / 32)) ** 2
        free_air_kg_m3 = 14.7 * PSI / (287.05 * 294.26)
        self.near(found["flow_anr_m3s"] * 1.185, cubic_feet * 0.028316846592 / 60 * free_air_kg_m3, 0.01)

    def test_other_tester(self):
        # Isentropic nozzle: computed, a second opinion and no source.
        for to_set, held_psi in [("100psi", 75.78), ("50psi", 36.34)]:
            found = self.leak("--set", "80psi", "--held", "60psi", "--ambient", "14.696psi", "--to-set", to_set)
            self.near(found["converted_held_pa"]["orifice"] / PSI, held_psi, 2e-4)
        # The same leak that shows 40 % at 35 psi shows about 33 % at 80 psi, 57 % under the laminar law.
        found = self.leak("--set", "35psi", "--held", "21psi", "--to-set", "80psi")
        self.assertAlmostEqual(100 * found["converted"]["orifice"], 33, delta=0.5)
        self.assertAlmostEqual(100 * found["converted"]["laminar"], 57, delta=0.5)

    def test_wider_restrictor(self):
        # 80/60 behind 0.040 in is 75.3/80 behind 0.060 in (isentropic nozzle, computed).
        found = self.leak("--set", "80psi", "--held", "60psi", "--restrictor", "0.040in", "--to-restrictor", "0.060in")
        self.near(found["converted_held_pa"]["orifice"] / PSI, 75.3, 1e-3)

    def test_uncertainty(self):
        # JCGM 100, first order: 80/60 psi, +-2 psi rectangular on both gauges: u = 1.80 percentage points.
        found = self.leak("--set", "80psi", "--held", "60psi", "--gauge-class", "2.5", "--gauge-span", "80psi", "--gauges", "two")
        self.assertAlmostEqual(100 * found["leakage_u"], 1.80, delta=0.005)
        # ASME B40.100 grade B: 3-2-3 % of span (from memory); 80 of 100 psi lies in the upper quarter, 60 in the middle.
        graded = self.leak("--set", "80psi", "--held", "60psi", "--gauge-class", "B", "--gauge-span", "100psi", "--gauges", "two")
        u = math.hypot(3 / math.sqrt(3) * 60 / 80**2, 2 / math.sqrt(3) / 80)
        self.near(graded["leakage_u"], u, 1e-6)

    def test_one_gauge_has_the_regulators_sag_in_its_doubt(self):
        # By hand, first order: one gauge of class 2.5 and 80 psi; of its variance 40 % is an offset, 20 % a gain and
        # the rest local; the regulator may sag by 3 % of 80 psi (working assumptions, all limits rectangular).
        whole = 2 / math.sqrt(3)
        offset, gain = math.sqrt(0.4) * whole, math.sqrt(0.2) * whole
        by_offset = offset * (60 / 80**2 - 1 / 80)
        local_set = math.sqrt(whole**2 - offset**2 - gain**2)
        local_held = math.sqrt(whole**2 - offset**2 - (0.75 * gain)**2)
        sag = 0.03 * 80 / math.sqrt(3) * 60 / 80**2
        wanted = math.hypot(by_offset, local_set * 60 / 80**2, local_held / 80, sag)
        found = self.leak(*"--set 80psi --held 60psi --gauge-class 2.5 --gauge-span 80psi --gauges one".split())
        self.near(found["leakage_u"], wanted, 1e-6)

    def test_one_gauge_and_no_known_restrictor_unless_told(self):
        # As the app's calculator takes its empty sheet.
        plain = self.leak("--set", "80psi", "--held", "60psi")
        one = self.leak("--set", "80psi", "--held", "60psi", "--gauges", "one")
        self.assertEqual(plain["leakage_u_all"], one["leakage_u_all"])
        self.assertNotEqual(plain["leakage_u"], self.leak("--set", "80psi", "--held", "60psi", "--gauges", "two")["leakage_u"])
        known = self.leak("--set", "80psi", "--held", "60psi", "--restrictor", "0.040in")
        self.assertLess(known["leak_area_u_m2"], 0.7 * plain["leak_area_u_m2"])

    def test_everything_doubtful_is_in_the_table(self):
        # The leak's area changes by 10 % from one reading to the next (working assumption); where 80/60 is read the
        # leakage moves by 0.402 for each share of it (isentropic nozzle, own sum). Student's t for ten degrees of
        # freedom is 2.28, table G.2 of JCGM 100 (from memory); one psi that can be told apart adds to each gauge.
        found = self.leak(*"--set 80psi --held 60psi --gauge-class 2.5 --gauge-span 80psi --ambient 14.696psi --gauges two".split())
        step = 0.5 / math.sqrt(3) * math.hypot(60 / 80**2, 1 / 80)
        self.assertGreater(found["leakage_u_all"], math.hypot(found["leakage_u"], step, 0.0402))
        self.assertLess(found["leakage_u_all"], math.hypot(found["leakage_u"], step, 0.0402) * 1.14)
        for key in ("leak_area_u_m2", "leak_hole_u_m", "flow_u_anr_m3s"):
            self.assertGreater(found[key], 0, key)
        # Half of an area's share of doubt is its diameter's.
        self.near(found["leak_hole_u_m"] / found["leak_hole_m"], found["leak_area_u_m2"] / found["leak_area_m2"] / 2, 0.1)
        other = self.leak("--set", "80psi", "--held", "60psi", "--to-set", "100psi")
        self.assertGreater(other["converted_u"]["orifice"], 0)
        self.assertGreater(other["converted_u"]["laminar"], 0)
        self.assertIn("±", self.done("sums", "leak", "--set", "80psi", "--held", "60psi"))

    def test_what_was_assumed_is_told(self):
        self.assertEqual(len(self.leak("--set", "80psi", "--held", "60psi")["assumed"]), 5)
        self.assertEqual(self.leak(*"--set 80psi --held 60psi --gauge-class 1.6 --gauge-span 10bar --restrictor 1mm "
                                    "--restrictor-cd 0.8 --altitude 240m".split())["assumed"], [])

    def test_ends_of_the_scale(self):
        self.assertEqual(self.leak("--set", "80psi", "--held", "80psi")["leak_area_m2"], 0)
        self.assertIsNone(self.leak("--set", "80psi", "--held", "0psi")["leak_area_m2"])

    def test_impossible_numbers(self):
        for set_to, held in [("80psi", "90psi"), ("0psi", "0psi"), ("80psi", "-1psi")]:
            self.fails(REFUSED, "sums", "leak", "--set", set_to, "--held", held)


class Cranking(CliTest):
    def test_independent_computation(self):
        found = self.json("sums", "crank", *V_TWIN, "--leak", "0.5mm2", "--ambient", "101325Pa")
        self.assertEqual(len(found["puffs_pa"]), 8)
        for puff, wanted in zip(found["puffs_pa"], PUFFS_KPA):
            self.near(puff, 1e3 * wanted, 1e-3)
        self.assertEqual(found["last_pa"], found["puffs_pa"][-1])
        self.assertGreater(found["limit_pa"], found["last_pa"])
        # What the model itself may be out by: 5 % (working assumption).
        self.near(found["last_u_pa"], 0.05 * found["last_pa"], 1e-9)
        self.near(found["limit_u_pa"], 0.05 * found["limit_pa"], 1e-9)
        # 1.2 to 1.3 as makers and textbooks print it, 1.24 to 1.35 in others (from memory).
        self.assertTrue(1.2 < found["polytropic_exponent"] < 1.35)

    def test_settling(self):
        few = self.json("sums", "crank", *V_TWIN, "--strokes", "3")
        many = self.json("sums", "crank", *V_TWIN, "--strokes", "20")
        self.assertFalse(few["settled"])
        self.assertTrue(many["settled"])
        self.assertEqual(few["puffs_pa"], many["puffs_pa"][:3])
        self.near(many["last_pa"], few["limit_pa"], 1e-3)

    def test_hose(self):
        # Given with the model's description: 172 psi, with 8 cm3 of hose before the check valve 130 psi.
        self.assertAlmostEqual(self.json("sums", "crank", *SMALL)["last_pa"] / PSI, 172, delta=1)
        self.assertAlmostEqual(self.json("sums", "crank", *SMALL, "--fitting", "8cm3")["last_pa"] / PSI, 130, delta=1)
        found = self.json("sums", "hose", *SMALL, "--fitting", "8cm3")
        self.assertAlmostEqual(found["shown_pa"] / PSI, 130, delta=1)
        self.assertAlmostEqual(found["value_pa"] / PSI, 172, delta=1)
        self.near(found["shown_pa"] * found["correction"], found["value_pa"], 1e-9)
        # 30 % of what is put back, as a share of it (working assumption); 42 of 172 psi are a loss of 24 %.
        self.near(found["correction_u"], 0.3 * 0.244 * (172 / 130)**2, 0.03)
        self.near(found["u_pa"], found["correction_u"] * found["shown_pa"], 1e-9)

    def test_check_valve_at_the_gauge_reads_lower(self):
        # Thermo King manual: small volume and check valve at the chamber end, or it reads low.
        chamber = self.json("sums", "crank", *SMALL, "--hose", "8cm3")["last_pa"]
        gauge = self.json("sums", "crank", *SMALL, "--hose", "8cm3", "--check-valve", "gauge", "--gauge-volume", "2cm3")
        self.assertLess(gauge["last_pa"], 0.9 * chamber)

    def test_tyre_valve_core(self):
        # Given with the model's description: a core that opens at 100 to 150 kPa reads 11 to 19 psi low.
        plain = self.json("sums", "crank", *SMALL)["last_pa"]
        tyre = self.json("sums", "crank", *SMALL, "--crack", "100kPa")["last_pa"]
        self.assertTrue(9 < (plain - tyre) / PSI < 20, (plain - tyre) / PSI)

    def test_oil(self):
        # Given with the model's description: 1.5 cm3 kept reads 183 psi, 5 cm3 214 psi.
        self.assertAlmostEqual(self.json("sums", "crank", *SMALL, "--oil", "1.5cm3")["last_pa"] / PSI, 183, delta=1)
        self.assertAlmostEqual(self.json("sums", "crank", *SMALL, "--oil", "5cm3")["last_pa"] / PSI, 214, delta=1)
        found = self.json("sums", "oil", *SMALL, "--put-in", "5cm3", "--kept-least", "0.3", "--kept-most", "1")
        self.assertAlmostEqual(found["dry_pa"] / PSI, 172, delta=1)
        self.assertAlmostEqual(found["low_pa"] / PSI, 183, delta=1)
        self.assertAlmostEqual(found["high_pa"] / PSI, 214, delta=1)
        self.assertGreater(found["u_pa"], 0)
        # pi/4 0.7^2 0.65 / 8 dm3 = 31.3 cm3 of chamber (arithmetic).
        self.near(found["chamber_share"], 5 / 31.27, 1e-3)
        self.assertIs(found["may_lock"], False)
        much = self.json("sums", "oil", *SMALL, "--put-in", "22cm3")
        self.assertIs(much["may_lock"], True)

    def test_healthy(self):
        # Makers' ranges come to about 17 to 21 psi for each unit of compression ratio (makers' manuals, several).
        found = self.json("sums", "healthy", *SMALL)
        self.assertTrue(17 < found["value_pa"] / PSI / 9 < 21, found)
        self.assertTrue(found["low_pa"] < found["value_pa"] < found["high_pa"])
        # The model itself, 5 % standard, is in the band; near top dead centre the starter runs at 85 % of its mean
        # speed (working assumptions): no reading can be as high as at the full speed.
        self.assertGreater(found["u_pa"], 0.05 * found["value_pa"])
        full = self.json("sums", "crank", *SMALL)["last_pa"]
        dipped = self.json("sums", "crank", *SMALL[:-1], "212.5rpm")["last_pa"]
        self.assertLess(found["value_pa"], full)
        self.near(found["value_pa"], dipped, 1e-6)
        high_up = self.json("sums", "healthy", *SMALL, "--altitude", "5000ft")
        # By absolute scaling 120 psi at sea level is 99.85 psi at 5000 ft (computed; a magazine letter says 100).
        self.near(high_up["value_pa"] / found["value_pa"], 99.85 / 120, 1e-3)
        self.fails(REFUSED, "sums", "healthy", *SMALL[:6], "--cr", "21", "--ivc", "50deg")

    def test_law(self):
        # Equal effective areas behind 0.040 in at 14.696 psi: 80 psi holds 61.77 (isentropic nozzle, published with the
        # formula); the same hole at 30 psi is found by the tool's own conversion.
        tester = ["--ambient", "14.696psi", "--restrictor", "0.040in", "--gauges", "two", "--gauge-class", "0.1", "--gauge-span", "100psi"]
        there = self.json("sums", "leak", "--set", "80psi", "--held", "61.77psi", "--to-set", "30psi", *tester)["converted_held_pa"]
        first = ["--set", "80psi", "--held", "61.77psi", "--second-set", "30psi"]
        hole = self.json("sums", "law", *first, "--second-held", f"{there['orifice'] / PSI:.3f}psi", *tester)
        self.assertEqual(hole["verdict"], ["hole"])
        self.assertAlmostEqual(hole["exponent"], 0, delta=0.01)
        self.assertAlmostEqual(hole["leak_area_m2"] / hole["second_leak_area_m2"], 1, delta=0.01)
        gap = self.json("sums", "law", *first, "--second-held", f"{there['laminar'] / PSI:.3f}psi", *tester)
        self.assertEqual(gap["verdict"], ["gap"])
        self.assertAlmostEqual(gap["exponent"], gap["gap_exponent"], delta=0.02)
        # One usual gauge can't tell them apart.
        usual = self.json("sums", "law", *first, "--second-held", f"{there['laminar'] / PSI:.1f}psi")
        self.assertEqual(usual["verdict"], ["undecided"])
        self.assertIn("restrictor", usual["assumed"])
        self.assertIn("narrow gap", self.done("sums", "law", *first, "--second-held", "21psi"))
        self.assertIn("well apart", self.fails(REFUSED, "sums", "law", "--set", "80psi", "--held", "60psi", "--second-set", "79psi",
                                               "--second-held", "59psi"))
        self.fails(WRONG_USE, "sums", "law", "--set", "80psi", "--held", "60psi")

    def test_turning(self):
        found = self.json("sums", "turning", *SMALL, "--slow", "120rpm", "--fill-least", "0.7")
        healthy = self.json("sums", "healthy", *SMALL)
        self.assertAlmostEqual(found["value_pa"] / healthy["value_pa"], 1, delta=0.002)
        self.assertLess(found["slow_pa"], found["value_pa"])
        self.assertAlmostEqual(found["slow_pa"], found["value_pa"] * (1 - found["slow_loss"]), delta=1)
        # p V^n: with 70 % of the air the absolute peak is 70 % of it; the gauge reading, and what is left of less air
        # between cold walls, is less than that.
        self.assertEqual(found["throttle_loss"]["least"], found["throttle_loss"]["most"])
        self.assertGreater(found["throttle_loss"]["most"], 0.28)
        self.assertLess(found["throttle_loss"]["most"], 0.42)
        # At its own speed and wide open nothing is lost.
        same = self.json("sums", "turning", *SMALL, "--slow", "250rpm", "--fill-least", "1")
        self.assertAlmostEqual(same["slow_loss"], 0, delta=0.002)
        self.assertAlmostEqual(same["throttle_loss"]["most"], 0, delta=1e-6)
        self.fails(REFUSED, "sums", "turning", *SMALL, "--slow", "0rpm")
        self.fails(REFUSED, "sums", "turning", *SMALL, "--fill-least", "0.9", "--fill-most", "0.5")

    def test_impossible_engine(self):
        sentence = self.fails(REFUSED, "sums", "crank", "--bore", "73mm", "--stroke", "59mm", "--rod", "20mm", "--cr",
                              "8.6", "--ivc", "65deg")
        self.assertIn("rod", sentence)


class BadInput(CliTest):
    """Impossible numbers: exit code 3 and one sentence that names what is wrong."""

    ENGINE = dict(zip(SMALL[::2], SMALL[1::2]))

    def refuses(self, option, text, word, verb="crank", **more):
        given = {**self.ENGINE, **{f"--{name.replace('_', '-')}": value for name, value in more.items()}, option: text}
        sentence = self.fails(REFUSED, "sums", verb, *[f"{name}={value}" for name, value in given.items()])
        self.assertIn(word, sentence)

    def test_volumes(self):
        self.refuses("--hose", "-1cm3", "hose")
        self.refuses("--fitting", "-1cm3", "fitting")
        self.refuses("--gauge-volume", "-1cm3", "gauge")
        self.refuses("--oil", "-1cm3", "oil")
        self.refuses("--put-in", "-15cm3", "oil", verb="oil")

    def test_oil_that_fills_the_chamber_locks_the_engine(self):
        self.refuses("--oil", "40cm3", "lock")
        # pi/4 0.7^2 0.65 / 8 dm3 = 31.3 cm3 of chamber (arithmetic): all of it is in the way before any runs off,
        # wherever the check valve sits.
        for put_in in ("30cm3", "40cm3", "60cm3"):
            self.refuses("--put-in", put_in, "lock", verb="oil")
            self.refuses("--put-in", put_in, "lock", verb="oil", check_valve="gauge", hose="12cm3")
        self.assertIn("bend a rod", self.done("sums", "oil", *SMALL, "--put-in", "22cm3"))
        self.assertNotIn("bend a rod", self.done("sums", "oil", *SMALL, "--put-in", "10cm3"))

    def test_engine(self):
        self.refuses("--cr", "0.9", "compression ratio")
        self.refuses("--cr", "1", "compression ratio")
        self.refuses("--cr", "-9", "compression ratio")
        self.refuses("--rod", "30mm", "rod")  # shorter than half the stroke
        self.refuses("--bore", "-70mm", "bore")
        self.refuses("--stroke", "0mm", "stroke")
        self.refuses("--ivc", "200deg", "closing")

    def test_circumstances(self):
        self.refuses("--rpm", "0rpm", "speed")
        self.refuses("--rpm", "-250rpm", "speed")
        self.refuses("--fill", "0", "filling")
        self.refuses("--heat", "-1", "heat")
        self.refuses("--leak", "-1mm2", "leak")
        self.refuses("--crack", "-5kPa", "cracking")
        self.refuses("--wall", "-300degC", "wall")
        self.refuses("--ambient", "0hPa", "air pressure")
        self.refuses("--rpm", "99999999999999999999rpm", "speed")

    def test_torque(self):
        torque = "--bore 70mm --stroke 65mm --rod 125mm --pressure 80psi".split()
        self.assertIn("angle", self.fails(REFUSED, "sums", "torque", *torque, "--angle", "400deg"))
        self.assertIn("pressure", self.fails(REFUSED, "sums", "torque", *torque[:-1], "-5psi", "--angle", "5deg"))
        self.assertIn("bar", self.fails(REFUSED, "sums", "torque", *torque, "--angle", "5deg", "--bar", "0mm"))

    def test_what_is_no_number_is_wrong_use(self):
        for text in ["nan", "inf", "-inf", "1e400"]:
            self.fails(WRONG_USE, "sums", "crank", *SMALL[:-2], f"--rpm={text}rpm")
            self.fails(WRONG_USE, "sums", "crank", *SMALL, f"--fill={text}")


class Others(CliTest):
    def test_standard_atmosphere(self):
        # ISO 2533 / ICAO, printed tables: 850 hPa at 1457 m, 700 at 3012, 600 at 4206, 950 at 540, 900 at 988.
        for hpa, metres in [(850, 1457), (700, 3012), (600, 4206), (950, 540), (900, 988)]:
            found = self.json("sums", "altitude", "--ambient", f"{hpa}hPa")
            self.assertAlmostEqual(found["value_m"], metres, delta=1)
            back = self.json("sums", "altitude", "--altitude", f"{metres}m")
            self.assertAlmostEqual(back["value_pa"], 100 * hpa, delta=10)

    def test_limit_at_altitude(self):
        # A magazine letter: 120 psi at sea level is about 100 psi at 5000 ft; 99.85 by absolute scaling.
        found = self.json("sums", "altitude", "--altitude", "5000ft", "--limit", "120psi")
        self.assertAlmostEqual(found["value_pa"] / PSI, 99.85, delta=0.01)
        # The weather moves the air pressure by 2 % at 95 % (working assumption), a barometer by less.
        self.near(found["u_pa"], 0.01 * found["value_pa"], 1e-9)
        measured = self.json("sums", "altitude", "--ambient", "843hPa", "--limit", "120psi")
        self.assertLess(measured["u_pa"], 0.5 * found["u_pa"])

    def test_units(self):
        # NIST SP 811.
        self.near(self.json("sums", "unit", "1psi")["value_kpa"], 6.894757, 1e-7)
        self.near(self.json("sums", "unit", "1kgf/cm2", "--to", "kPa")["value_kpa"], 98.0665, 1e-12)
        self.near(self.json("sums", "unit", "1bar")["value_pa"], 1e5, 1e-12)
        # From memory: conventional inch of mercury, 3.386389 kPa.
        self.near(self.json("sums", "unit", "1inHg")["value_kpa"], 3.386389, 1e-7)
        self.near(self.json("sums", "unit", "20degC", "--to", "K")["value_k"], 293.15, 1e-12)
        self.near(self.json("sums", "unit", "2.76in", "--to", "mm")["value_mm"], 70.104, 1e-12)
        # The Lycoming manual prints 441 kPa for 69 psi, a misprint: the rule gives 475.7.
        self.near(self.json("sums", "unit", "69psi")["value_kpa"], 475.7, 1e-4)

    def test_torque(self):
        # Virtual work: computed, a second opinion and no source. 80 psi, bore 4.0 in, stroke 3.48 in, rod 5.7 in.
        for degrees, torque in [(1, 4.50), (2, 9.00), (5, 22.5), (10, 44.7)]:
            found = self.json("sums", "torque", "--pressure", "80psi", "--bore", "4.0in", "--stroke", "3.48in", "--rod",
                              "5.7in", "--angle", f"{degrees}deg", "--bar", "500mm")
            self.near(found["value_nm"], torque, 2e-3)
            self.near(found["force_n"], found["value_nm"] / 0.5, 1e-9)
            # Half a degree either way, rectangular: the smaller the angle, the more that is of it.
            self.assertGreater(found["u_nm"] / found["value_nm"], 0.5 / math.sqrt(3) / degrees * 0.99)
            self.assertGreater(found["force_u_n"] / found["force_n"], 0.99 * found["u_nm"] / found["value_nm"])


if __name__ == "__main__":
    unittest.main()
