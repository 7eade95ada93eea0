# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""Session files through lapwing-cli: demo, check, csv, findings and report, and files that are refused."""

import csv
import hashlib
import io
import json
import os
import re
import shutil
import subprocess
import unittest
import zipfile

from cli import CliTest, NO, REFUSED, SOURCE, WRONG_USE, run


class RoundTrip(CliTest):
    def demo(self, engine="v-twin"):
        target = self.folder / f"{engine}.lapwing"
        self.assertEqual(self.done("demo", "--engine", engine, "-o", target), "")
        return target

    def session(self, file):
        with zipfile.ZipFile(file) as packed:
            name = next(n for n in packed.namelist() if n.endswith("/data/session.json"))
            return packed.read(name).decode()

    def test_demo_is_the_stored_file(self):
        for engine, name in [("v-twin", "orchard-v-twin"), ("six", "harbour-six")]:
            self.assertEqual(self.demo(engine).read_bytes(), (SOURCE / f"assets/demo/{name}.lapwing").read_bytes())
        default = self.folder / "default.lapwing"
        self.done("demo", "-o", default)
        self.assertEqual(default.read_bytes(), self.demo("v-twin").read_bytes())

    def test_files_of_every_earlier_version_open(self):
        for file in sorted((SOURCE / "tests/fixtures/session-files").glob("*/*.lapwing")):
            with self.subTest(file=file.parent.name + "/" + file.name):
                self.assertTrue(self.json("check", file)["ok"])
                self.assertTrue(self.json("findings", file)["cylinders"])
                table = self.folder / "readings.csv"
                self.done("csv", file, "-o", table)
                self.assertGreater(len(table.read_text().splitlines()), 10)

    def test_check(self):
        file = self.demo()
        found = self.json("check", file)
        self.assertEqual(found, {"ok": True, "problems": [], "missing": [], "whereabouts": [],
                                 "signature": {"state": "not signed", "fingerprint": None}})
        self.assertIn("Orchard V-twin", self.done("check", file))

    def test_merge_with_itself_changes_nothing(self):
        file = self.demo()
        out = self.folder / "merged.lapwing"
        self.assertEqual(self.json("merge", file, file, "-o", out), {"visits": 3, "conflicts": 0, "missing": [], "whereabouts": []})
        self.assertTrue(self.json("check", out)["ok"])
        before, after = json.loads(self.session(file)), json.loads(self.session(out))
        before["version"] = after["version"]
        self.assertEqual(after, before)

    def test_photos_that_tell_where_they_were_taken(self):
        """The position's tag is laid out by hand: Exif 2.32, 4.5.4 and 4.6.2; acceptance.session_file_media asks exiftool."""
        exif = bytes.fromhex("ffe10022457869660000" "4d4d002a00000008000188250004000000010000001a00000000")
        photos = {}

        def tag(document):
            plain = (SOURCE / "tests/fixtures/gauge-photos/g008.jpg").read_bytes()
            for number, photo in enumerate((plain, plain[:2] + exif + plain[2:])):
                name = hashlib.sha256(photo).hexdigest()
                photos[f"data/photos/{name}.jpg"] = photo
                visit = document["visits"][0]
                visit.setdefault("attachments", []).append({
                    "id": f"019d0000-0000-7000-8000-00000000000{number}", "session": visit["session"]["id"], "kind": "photo",
                    "tie": {"to": "session"}, "media_type": "image/jpeg", "sha256": name, "bytes": len(photo),
                    "taken_at": "2026-03-14T09:30:00.000+01:00"})

        file = self.changed("where.lapwing", tag, photos)
        self.assertEqual(len(self.json("check", file)["whereabouts"]), 1)
        self.assertIn("These photos tell where they were taken:\n  a photo of ", self.done("check", file))
        out = self.folder / "merged.lapwing"
        self.assertEqual(len(self.json("merge", file, file, "-o", out)["whereabouts"]), 1)
        self.assertIn("Tells where it was taken: a photo of ", self.done("merge", file, file, "-o", out))

    def changed(self, name, change, photos=None):
        """The demo file with one thing changed in its session.json, packed by Python's zipfile."""
        document = json.loads(self.session(self.demo()))
        photos = {} if photos is None else photos
        change(document)
        files = {"bagit.txt": b"BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n"}
        with zipfile.ZipFile(self.demo()) as packed:
            for entry in packed.namelist():
                if "/data/photos/" in entry or "/data/voice/" in entry:
                    files[entry.split("/", 1)[1]] = packed.read(entry)
        files.update(photos)
        files["data/session.json"] = json.dumps(document).encode()
        files["manifest-sha256.txt"] = "".join(
            f"{hashlib.sha256(data).hexdigest()}  {path}\n" for path, data in files.items() if path.startswith("data/")
        ).encode()
        target = self.folder / name
        with zipfile.ZipFile(target, "w") as packed:
            for path, data in files.items():
                packed.writestr("bag/" + path, data)
        return target

    def test_merge_keeps_both_sides_in_any_order(self):
        def mine(document):
            document["engine"]["description"] = "mine"
            document["visits"][0]["notes"] = []

        def theirs(document):
            document["engine"]["description"] = "theirs"
            document["visits"][2]["readings"].pop()

        a, b = self.changed("a.lapwing", mine), self.changed("b.lapwing", theirs)
        for first, second, out in [(a, b, "ab.lapwing"), (b, a, "ba.lapwing")]:
            self.assertEqual(self.json("merge", first, second, "-o", self.folder / out),
                             {"visits": 3, "conflicts": 1, "missing": [], "whereabouts": []})
        together = json.loads(self.session(self.folder / "ab.lapwing"))
        self.assertEqual(together, json.loads(self.session(self.folder / "ba.lapwing")))
        whole = json.loads(self.session(self.demo()))
        for before, after in zip(whole["visits"], together["visits"]):
            self.assertEqual(before, after)  # what one side lacks is not taken away
        versions = {together["engine"]["description"],
                    *(json.loads(text)["description"] for text in together["engine"]["other_versions"])}
        self.assertEqual(versions, {"mine", "theirs"})

    def test_merge_refuses_two_engines(self):
        out = self.folder / "out.lapwing"
        self.fails(REFUSED, "merge", self.demo("v-twin"), self.demo("six"), "-o", out)
        self.assertFalse(out.exists())

    def test_csv(self):
        file = self.demo()
        out = self.folder / "out.csv"
        self.done("csv", file, "-o", out)
        rows = list(csv.DictReader(io.StringIO(out.read_bytes().decode("utf-8"))))
        readings = [r for v in json.loads(self.session(file))["visits"] for r in v["readings"]]
        self.assertEqual([r["id"] for r in readings], [row["reading_id"] for row in rows])
        for reading, row in zip(readings, rows):
            for field in ["first", "final", "set", "held"]:
                self.assertEqual(row[field + "_typed"], reading.get(field, {}).get("digits", ""))
        for row in rows:
            if row["final_typed"]:
                self.assertEqual(row["final_unit"], "bar")
                self.assertAlmostEqual(float(row["final_pa"]), 1e5 * float(row["final_typed"]), delta=1e-3)

    def test_findings(self):
        file = self.demo()
        found = self.json("findings", file, "--visit", "1")
        self.assertEqual([c["number"] for c in found["cylinders"]], [1, 2])
        self.assertEqual([c["points_at"] for c in found["cylinders"]], ["exhaust", "rings"])
        self.assertEqual([c["state"] for c in found["cylinders"]], ["fault", "fault"])
        self.assertEqual(found["visit"]["title"], "As found")
        self.assertIn("exhaust valve", found["cylinders"][0]["headline"])
        text = self.done("findings", file, "--visit", "1")
        for cylinder in found["cylinders"]:
            self.assertIn(cylinder["headline"], text)
            for rule in cylinder["rules_of_thumb"]:
                self.assertIn(rule["text"], text)
        self.assertEqual(self.json("findings", file, "--visit", "2")["engine"]["state"], "in range")
        newest = self.json("findings", file)
        self.assertEqual(newest["visit"]["number"], 3)
        self.assertEqual([c["state"] for c in newest["cylinders"]], ["in range", "borderline"])
        self.assertIn("1 to 3", self.fails(WRONG_USE, "findings", file, "--visit", "4"))

    def test_odds_of_where_it_leaks(self):
        file = self.demo()
        found = self.json("findings", file, "--visit", "1", "--seed", "3")
        self.assertEqual(found, self.json("findings", file, "--visit", "1", "--seed", "3"))
        paths = {"rings", "intake", "exhaust", "gasket", "next_cylinder", "coolant"}
        for cylinder in found["cylinders"]:
            self.assertEqual(set(cylinder["path_share"]), paths)
            self.assertEqual(set(cylinder["fault_probability"]), paths)
            self.assertEqual(set(cylinder["main_path_probability"]), paths | {"seals_well"})
            self.assertAlmostEqual(sum(cylinder["main_path_probability"].values()), 1.0, places=6)
            self.assertAlmostEqual(sum(share["mean"] for share in cylinder["path_share"].values()), 1.0, places=4)
            for after in cylinder["expected_after"].values():
                self.assertLess(after["lo"], after["value"])
                self.assertLess(after["value"], after["hi"])
                self.check_derivation(after)
            self.assertIs(cylinder["depends_on_assumptions"], False)
        # The story of the invented engine: a burnt exhaust valve in cylinder 1, worn rings in cylinder 2.
        self.assertGreater(found["cylinders"][0]["main_path_probability"]["exhaust"], 0.9)
        self.assertGreater(found["cylinders"][1]["main_path_probability"]["rings"], 0.9)
        self.assertGreater(found["cylinders"][0]["expected_after"]["exhaust"]["value"], 8e5)
        self.assertIn("not yet counted on real engines", self.done("findings", file, "--visit", "1"))
        # On paper: a sentence a cylinder, never above 95 %, and a table of shares.
        text = self.done("findings", file, "--visit", "1", "--seed", "3")
        for cylinder, part in zip(found["cylinders"], ["the exhaust valve", "the rings"]):
            self.assertIn(part, cylinder["odds_headline"])
            self.assertIn(cylinder["odds_headline"], text)
            for reason in cylinder["reasons"] + cylinder["contradictions"]:
                if reason["code"] != "odds.clearance_first":  # the sentence may say it already
                    self.assertIn(reason["text"], text)
        for chance in re.findall(r"odds (\d+) %", text):
            self.assertLessEqual(int(chance), 95)
            self.assertEqual(int(chance) % 5, 0)
        self.assertIn("share of the leak", text)
        self.assertIn("Working assumptions version", text)
        for test in found["next_tests"]:
            self.assertIn("gain_bits", test)
        # An old report is worked out again under the assumptions that it was made under.
        assumed = (SOURCE / "assets/reference/odds.json").read_text()
        old = self.folder / "old.json"
        version = json.loads(assumed)["version"]
        self.assertEqual(found["engine"]["assumptions_version"], version)
        old.write_text(
            assumed.replace(f'"version": {version}', '"version": 990').replace(
                '"id": "rings-fault", "value": 25', '"id": "rings-fault", "value": 90'
            )
        )
        again = self.json("findings", file, "--visit", "1", "--seed", "3", "--assumptions", old)
        self.assertEqual(again["engine"]["assumptions_version"], 990)
        self.assertNotEqual(again["cylinders"], found["cylinders"])
        # A file of an earlier version lacks what is asked for since: it is taken from this program, and named.
        self.assertEqual(found["engine"]["filled_in"], [])
        older = json.loads(assumed)
        older["numbers"] = [one for one in older["numbers"] if one["id"] not in ("slip-seen", "does-not-fit")]
        old.write_text(json.dumps(older))
        filled = self.json("findings", file, "--visit", "1", "--seed", "3", "--assumptions", old)
        self.assertEqual(sorted(one["what"] for one in filled["engine"]["filled_in"]), ["does-not-fit", "slip-seen"])
        self.assertEqual({one["file"] for one in filled["engine"]["filled_in"]}, {"odds.json"})
        for one, other in zip(filled["cylinders"], found["cylinders"]):
            self.assertEqual(one["path_share"], other["path_share"])
        text = self.done("findings", file, "--visit", "1", "--assumptions", old)
        self.assertIn('odds.json: "slip-seen" is missing there and was taken from this program.', text)
        # Shares and odds say where they come from, as readings to expect do.
        for cylinder in found["cylinders"]:
            came = cylinder["odds_derivation"]
            for said in (came["formula"], came["formula_in_words"], came["source"]):
                self.assertTrue(said)
            inputs = {one["name"]: one for one in came["inputs"]}
            self.assertIn("bar", inputs["final"]["text"])
            self.assertLess(inputs["held"]["value"], inputs["set"]["value"])
            self.assertIn("exhaust", inputs)  # what was heard there
            self.assertEqual(came["assumptions_version"], version)
            self.assertEqual(came["reference_sum"], found["engine"]["reference_sum"])
        # The same of the other files: what they were stands with the result.
        data = found["engine"]["reference_data"]
        shelf = self.folder / "reference"
        shutil.copytree(SOURCE / "assets/reference", shelf)
        for one in shelf.iterdir():
            self.assertEqual(data[one.name]["sha256"], hashlib.sha256(one.read_bytes()).hexdigest())
        same = self.json("findings", file, "--visit", "1", "--seed", "3", "--reference", shelf)
        self.assertEqual(same, found)
        rise = (shelf / "wet.json").read_text()
        (shelf / "wet.json").write_text(rise.replace('"rise": 0.10', '"rise": 0.30'))
        other = self.json("findings", file, "--visit", "1", "--seed", "3", "--reference", shelf)
        self.assertNotEqual(other["engine"]["reference_data"], data)
        self.assertNotEqual(other["cylinders"], found["cylinders"])
        numbers = json.loads((shelf / "assumptions.json").read_text())
        numbers["assumptions"] = [one for one in numbers["assumptions"] if one["id"] != "named-from"]
        (shelf / "assumptions.json").write_text(json.dumps(numbers))
        lacking = self.json("findings", file, "--visit", "1", "--seed", "3", "--reference", shelf)
        self.assertEqual(lacking["engine"]["filled_in"], [{"file": "assumptions.json", "what": "named-from"}])
        numbers["assumptions"][0]["value"] = "much"
        (shelf / "assumptions.json").write_text(json.dumps(numbers))
        self.assertIn("assumptions.json", self.fails(REFUSED, "findings", file, "--reference", shelf))
        self.fails(REFUSED, "findings", file, "--reference", self.folder / "none")
        old.write_text("{}")
        self.assertIn("odds.json", self.fails(REFUSED, "findings", file, "--assumptions", old))
        self.fails(REFUSED, "findings", file, "--assumptions", self.folder / "none.json")
        six = self.json("findings", self.demo("six"))["cylinders"]
        for cylinder in (six[1], six[2]):
            self.assertGreater(cylinder["main_path_probability"]["next_cylinder"], 0.9)
            self.assertGreater(cylinder["fault_probability"]["next_cylinder"], 0.9)

    def check_derivation(self, after):
        """Of a reading to expect: what its range is made of, and what it was worked out from."""
        shares = after["doubt_share"]
        self.assertLessEqual(set(shares), {"rest_of_engine", "sound_part", "day", "gauge_and_test"})
        self.assertAlmostEqual(sum(shares.values()), 1.0, places=6)
        # Nine cases of ten of a normal spread: the day's 3 % (odds.json) is the share of it that is said.
        spread = (after["hi"] - after["lo"]) / (2 * 1.645)
        self.assertAlmostEqual(shares["day"], (0.03 * after["value"] / spread) ** 2, delta=0.15)
        came = after["derivation"]
        inputs = {one["name"]: one for one in came["inputs"]}
        self.assertEqual(inputs["expected_least"]["value"], after["lo"])
        self.assertEqual(inputs["expected_most"]["value"], after["hi"])
        self.assertLessEqual(inputs["sound_least"]["value"], inputs["sound_most"]["value"])
        self.assertIn("bar", inputs["reads_now"]["text"])
        for said in (came["formula"], came["formula_in_words"], came["source"]):
            self.assertTrue(said)
        hone = [note["code"] for note in came["notes"]]
        self.assertEqual(hone == ["odds.fresh_hone"], not after["comparable_at_once"])

    def test_six(self):
        found = self.json("findings", self.demo("six"))
        low = [c["number"] for c in found["cylinders"] if c["state"] == "fault"]
        self.assertEqual(low, [2, 3])
        self.assertEqual({c["points_at"] for c in found["cylinders"] if c["number"] in low}, {"next_cylinder"})
        self.assertIn("joint", found["engine"]["headline"])

    def test_session_json_says_the_same(self):
        file = self.demo()
        plain = self.folder / "session.json"
        plain.write_text(self.session(file), "utf-8")
        self.assertEqual(self.done("findings", plain, "--json"), self.done("findings", file, "--json"))

    def test_report(self):
        self.assertTrue(shutil.which("pdftotext"), "pdftotext is missing")
        file = self.demo()
        out = self.folder / "out.pdf"
        self.done("report", file, "-o", out, "--visit", "1")
        said = subprocess.run(["pdftotext", out, "-"], capture_output=True, text=True, check=True).stdout
        words = " ".join(said.split())
        found = self.json("findings", file, "--visit", "1")
        self.assertIn(found["engine"]["headline"], words)
        for cylinder in found["cylinders"]:
            self.assertIn(cylinder["headline"], words)
            # In words: odds are the mentor's.
            self.assertIn(cylinder["odds_headline"].split(": odds")[0], words)
        self.assertNotRegex(words, r"odds \d+ %")
        self.assertIn("not yet counted on real engines", words)
        self.assertNotIn("Assumptions, version", words)
        self.assertNotIn("Mill Lane Engine Club", words)
        self.assertNotIn("notice board", words)
        self.done("report", file, "-o", out, "--visit", "1", "--owner")
        said = subprocess.run(["pdftotext", out, "-"], capture_output=True, text=True, check=True).stdout
        self.assertIn("Mill Lane Engine Club", " ".join(said.split()))
        self.assertNotIn("notice board", " ".join(said.split()))
        self.done("report", file, "-o", out, "--appendix")
        said = subprocess.run(["pdftotext", out, "-"], capture_output=True, text=True, check=True).stdout
        self.assertIn("Assumptions, version", " ".join(said.split()))
        self.done("report", file, "-o", out, "--owner-contact", "--letter")
        said = subprocess.run(["pdftotext", out, "-"], capture_output=True, text=True, check=True).stdout
        self.assertIn("notice board", " ".join(said.split()))


class Refused(CliTest):
    def test_no_session_file(self):
        text = self.folder / "note.txt"
        text.write_text("Just a note.")
        for verb in [["check"], ["findings"], ["csv", "-o", self.folder / "o"], ["report", "-o", self.folder / "o"]]:
            for file in [text, self.folder / "nowhere.lapwing", self.folder]:
                self.assertIn(str(file), self.fails(REFUSED, verb[0], file, *verb[1:]))
        self.assertFalse((self.folder / "o").exists())

    def test_pipes_and_devices(self):
        """Whatever is read by name: nobody writes into the pipe, and the device never ends."""
        pipe = self.folder / "pipe"
        os.mkfifo(pipe)
        photo = ["--min", "0bar", "--max", "6bar"]
        good = self.folder / "good.lapwing"
        self.done("demo", "-o", good)
        for odd in (pipe, "/dev/zero", self.folder):
            for words in (["needle", odd, *photo], ["check", odd], ["findings", odd], ["history", odd], ["csv", odd, "-o", self.folder / "o.csv"],
                          ["compare", odd], ["compare", good, odd], ["merge", good, odd, "-o", self.folder / "o"],
                          ["report", odd, "-o", self.folder / "o.pdf"], ["findings", good, "--assumptions", odd]):
                self.assertRegex(self.fails(REFUSED, *words), "device|can't be read")

    def test_json_that_is_no_session(self):
        for text in ["{", "{}", '{"format": "lapwing-session", "version": "9.0"}']:
            file = self.folder / "session.json"
            file.write_text(text)
            self.fails(REFUSED, "findings", file)

    def changed(self, change):
        """The demo with its entries passed through change(name, bytes)."""
        file = self.folder / "changed.lapwing"
        with zipfile.ZipFile(SOURCE / "assets/demo/orchard-v-twin.lapwing") as old, zipfile.ZipFile(file, "w") as new:
            for entry in old.infolist():
                bytes_now = change(entry.filename, old.read(entry))
                if bytes_now is not None:
                    new.writestr(entry.filename, bytes_now, zipfile.ZIP_DEFLATED)
        return file

    def test_changed_on_its_way(self):
        def swap(name, data):
            return data.replace(b'"6.8"', b'"9.8"') if name.endswith("session.json") else data
        file = self.changed(swap)
        ran = run("check", file, "--json")
        self.assertEqual(ran.returncode, NO)
        found = json.loads(ran.stdout)
        self.assertFalse(found["ok"])
        self.assertIn("data/session.json", found["problems"][0])
        plain = run("check", file)
        self.assertEqual(plain.returncode, NO)
        self.assertIn("data/session.json", plain.stdout)
        self.assertIn("data/session.json", self.fails(REFUSED, "findings", file))

    def test_part_missing(self):
        file = self.changed(lambda name, data: None if name.endswith("readings.csv") else data)
        ran = run("check", file, "--json")
        self.assertEqual(ran.returncode, NO)
        self.assertIn("data/readings.csv", " ".join(json.loads(ran.stdout)["problems"]))

    def test_hostile(self):
        file = self.changed(lambda name, data: data)
        with zipfile.ZipFile(file, "a") as packed:
            packed.writestr("../outside.txt", "x")
        self.fails(REFUSED, "check", file)
        self.assertFalse((self.folder.parent / "outside.txt").exists())

    def test_nothing_stays_behind(self):
        here = self.folder / "scratch"
        here.mkdir()
        before = os.environ.get("TMPDIR")
        os.environ["TMPDIR"] = str(here)
        try:
            self.done("check", SOURCE / "assets/demo/harbour-six.lapwing")
            self.fails(REFUSED, "findings", self.changed(lambda name, data: data + b" "))
        finally:
            os.environ.pop("TMPDIR") if before is None else os.environ.update(TMPDIR=before)
        self.assertEqual(list(here.iterdir()), [])

    def test_output_that_cannot_be_written(self):
        nowhere = self.folder / "missing" / "out"
        demo = SOURCE / "assets/demo/harbour-six.lapwing"
        for words in [["demo"], ["csv", demo], ["report", demo]]:
            self.assertIn(str(nowhere), self.fails(WRONG_USE, *words, "-o", nowhere))


if __name__ == "__main__":
    unittest.main()
