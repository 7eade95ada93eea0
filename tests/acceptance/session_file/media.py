# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""Photos and voice notes taken out of a session file, seen by tools that are not ours: exiftool finds no location
and no device in a photo that had both, ffprobe plays what was said. What is lost or damaged in the library is listed
in the file, and one damaged engine of a backup leaves the others.

media.py SESSION_FILE_TOOL LIBRARY_TOOL
"""

import hashlib
import json
import pathlib
import shutil
import subprocess
import sys
import tempfile
import unittest
import zipfile

TOOL, LIBRARY = sys.argv[1:3]


def run(*command, code=0):
    done = subprocess.run([str(part) for part in command], capture_output=True, text=True)
    if done.returncode != code:
        raise AssertionError(f"{command}: {done.returncode}\n{done.stdout}{done.stderr}")
    return done.stdout


class Media(unittest.TestCase):
    def setUp(self):
        self.folder = pathlib.Path(tempfile.mkdtemp())
        self.library = self.folder / "library"
        run(LIBRARY, "make", self.library, 3, 1, 5000)

    def tearDown(self):
        shutil.rmtree(self.folder)

    def handed_over(self):
        """The bag's files by path, of the first engine."""
        file = self.folder / "out.lapwing"
        file.unlink(missing_ok=True)
        self.said = run(LIBRARY, "hand-over", self.library, file)
        self.assertEqual(run(TOOL, "check", file), "")
        with zipfile.ZipFile(file) as packed:
            return {name.split("/", 1)[1]: packed.read(name) for name in packed.namelist()}

    def stored(self, sha256):
        return next(path for path in self.library.rglob("*") if path.is_file() and sha256 in path.name)

    def engines(self, library):
        """The engines' records, in the order of their names."""
        text, decoder, found = run(LIBRARY, "show", library).strip(), json.JSONDecoder(), []
        while text:
            one, end = decoder.raw_decode(text)
            text = text[end:].lstrip()
            if "format" not in one:
                found.append(one)
        return sorted(found, key=lambda one: one["id"])

    def tags(self, file):
        return json.loads(run("exiftool", "-json", "-G", "-a", "-u", file))[0]

    def test_a_photo_goes_out_without_where_and_what_it_was_taken_with(self):
        taken = self.folder / "taken.jpg"
        run("ffmpeg", "-v", "error", "-f", "lavfi", "-i", "testsrc=size=320x240", "-frames:v", "1", taken)
        run("exiftool", "-q", "-overwrite_original", "-GPSLatitude=52.1", "-GPSLatitudeRef=N", "-GPSLongitude=4.2",
            "-GPSLongitudeRef=E", "-GPSAltitude=3", "-Make=Somebody", "-Model=Something", "-SerialNumber=12345",
            "-XMP:City=Somewhere", "-XMP:Creator=Somebody", "-IPTC:Province-State=Somewhere",
            "-DateTimeOriginal=2026:03:14 09:30:00", taken)
        before = self.tags(taken)
        self.assertIn("Composite:GPSPosition", before)
        self.assertTrue({"EXIF:Make", "XMP:City", "IPTC:Province-State"} <= set(before))
        run(LIBRARY, "add", self.library, taken, "image/jpeg")
        photos = {name: data for name, data in self.handed_over().items() if name.startswith("data/photos/")}
        self.assertEqual(len(photos), 2)
        # The other one is no more than a header.
        photo = self.folder / "photo.jpg"
        photo.write_bytes(max(photos.values(), key=lambda data: b"\xff\xda" in data))
        after = self.tags(photo)
        self.assertEqual((after["File:ImageWidth"], after["File:ImageHeight"]), (320, 240))
        groups = {name.split(":")[0] for name in after if ":" in name}
        self.assertTrue(groups <= {"ExifTool", "File", "JFIF", "Composite"}, after)
        for name in after:
            self.assertNotRegex(name, "GPS|Make|Model|Serial|City|State|Creator|DateTimeOriginal")

    def brought_in(self, photo):
        """What a fresh library says of the bag with its photo replaced, and what it says when it hands it on."""
        bag = {name: data for name, data in self.handed_over().items()
               if not name.startswith(("tagmanifest", "bag-info", "signature", "manifest"))}
        old = next(name for name in bag if name.startswith("data/photos/"))
        sha256 = hashlib.sha256(photo).hexdigest()
        del bag[old]
        bag[f"data/photos/{sha256}.jpg"] = photo
        document = json.loads(bag["data/session.json"])
        document["visits"][0]["attachments"][0].update(sha256=sha256, bytes=len(photo))
        bag["data/session.json"] = json.dumps(document).encode()
        bag["manifest-sha256.txt"] = "".join(f"{hashlib.sha256(data).hexdigest()}  {name}\n" for name, data in bag.items()
                                             if name.startswith("data/")).encode()
        file, fresh = self.folder / "in.lapwing", self.folder / "fresh"
        with zipfile.ZipFile(file, "w") as packed:
            for name, data in bag.items():
                packed.writestr("bag/" + name, data)
        shutil.rmtree(fresh, ignore_errors=True)
        # The library's own engines would stand before the one that comes.
        run(LIBRARY, "make", fresh, 0, 0, 0)
        came = run(LIBRARY, "bring", fresh, file)
        went = run(LIBRARY, "hand-over", fresh, self.folder / "on.lapwing")
        with zipfile.ZipFile(self.folder / "on.lapwing") as packed:
            self.assertTrue([name for name in packed.namelist() if name.endswith(f"/data/photos/{sha256}.jpg")])
        return came, went

    def test_a_photo_that_comes_in_with_its_place_is_told_both_ways(self):
        taken = self.folder / "taken.jpg"
        run("ffmpeg", "-v", "error", "-f", "lavfi", "-i", "testsrc=size=320x240", "-frames:v", "1", taken)
        plain = taken.read_bytes()
        position = ["-GPSLatitude=52.1", "-GPSLatitudeRef=N", "-GPSLongitude=4.2", "-GPSLongitudeRef=E"]
        for tags, told in ((position, True), (["-XMP:GPSLatitude=52.1"], True), (["-XMP:City=Somewhere"], True),
                           (["-IPTC:City=Somewhere"], True), (["-IPTC:Sub-location=Yard"], True),
                           (["-Make=Somebody", "-Orientation#=6"], False), ([], False)):
            with self.subTest(tags=tags):
                taken.write_bytes(plain)
                if tags:
                    run("exiftool", "-q", "-overwrite_original", *tags, taken)
                # exiftool itself finds the place, or none.
                found = [name for name in self.tags(taken) if any(word in name for word in ("GPS", "City", "location"))]
                self.assertEqual(bool(found), told, found)
                for said in self.brought_in(taken.read_bytes()):
                    self.assertEqual(said.count("tells where: a photo of "), int(told), said)

    def test_voice_notes_of_every_kind_can_be_played(self):
        kinds = {"audio/ogg": ("opus", "libopus", "opus"), "audio/wav": ("wav", "pcm_s16le", "pcm_s16le"),
                 "audio/webm": ("webm", "libopus", "opus")}
        for media_type, (ending, encoder, codec) in kinds.items():
            spoken = self.folder / f"spoken.{ending}"
            run("ffmpeg", "-v", "error", "-f", "lavfi", "-i", "sine=frequency=440:duration=2", "-c:a", encoder, spoken)
            run(LIBRARY, "add", self.library, spoken, media_type)
            bag = self.handed_over()
            name = f"data/voice/{hashlib.sha256(spoken.read_bytes()).hexdigest()}.{ending}"
            self.assertIn(name, bag)
            heard = self.folder / f"heard.{ending}"
            heard.write_bytes(bag[name])
            found = json.loads(run("ffprobe", "-v", "error", "-show_format", "-show_streams", "-of", "json", heard))
            self.assertEqual([stream["codec_name"] for stream in found["streams"]], [codec])
            self.assertAlmostEqual(float(found["format"]["duration"]), 2, delta=0.1)
            run("ffmpeg", "-v", "error", "-xerror", "-i", heard, "-f", "null", "-")

    def test_a_lost_photo_is_listed_and_the_rest_goes_out(self):
        bag = self.handed_over()
        photo = next(name for name in bag if name.startswith("data/photos/"))
        self.stored(pathlib.PurePosixPath(photo).stem).unlink()
        bag = self.handed_over()
        self.assertNotIn(photo, bag)
        document = json.loads(bag["data/session.json"])
        attachment = document["visits"][0]["attachments"][0]
        self.assertEqual(document["missing"], [{"attachment": attachment["id"], "loss": "lost"}])
        self.assertRegex(self.said, f"lost: a photo of {attachment['taken_at'][:10]} .*{document['engine']['name']}")

        backup = self.folder / "all.lapwing-backup"
        self.assertEqual(run(LIBRARY, "back-up", self.library, backup).count("lost: "), 1)
        fresh = self.folder / "fresh"
        self.assertEqual(run(LIBRARY, "restore", fresh, backup).count("lost: "), 1)
        self.assertEqual(run(LIBRARY, "show", fresh), run(LIBRARY, "show", self.library))

    def test_one_damaged_engine_of_a_backup_leaves_the_others(self):
        backup = self.folder / "all.lapwing-backup"
        run(LIBRARY, "back-up", self.library, backup)
        with zipfile.ZipFile(backup) as packed:
            rest = json.loads(packed.read("lapwing-backup/data/backup.json"))
            hurt = rest["contents"][1]
            entry = packed.getinfo("lapwing-backup/" + hurt["file"])
        data = bytearray(backup.read_bytes())
        data[entry.header_offset + 30 + len(entry.filename) + entry.file_size // 2] ^= 1
        backup.write_bytes(data)
        fresh = self.folder / "fresh"
        said = run(LIBRARY, "restore", fresh, backup)
        self.assertRegex(said, f"damaged: {hurt['engine']}: ")
        self.assertEqual(said.count("damaged: "), 1)
        whole = [one for one in self.engines(self.library) if one["name"] != hurt["engine"]]
        self.assertEqual(len(whole), 2)
        self.assertEqual(self.engines(fresh), whole)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
