# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""What a Linux desktop or phone reads about the app before it starts it: menu entry, store page, file type, icons,
man pages. Judged by the desktops' own tools."""

import configparser
import json
import os
import pathlib
import re
import subprocess
import tempfile
import unittest
import xml.etree.ElementTree as xml

TOP = pathlib.Path(__file__).resolve().parents[2]
SHARE = TOP / "platform/linux/share"
MEDIA_TYPE = re.search(r'session_media_type = "([^"]+)"', (TOP / "core/exchange/session_file.h").read_text("utf-8")).group(1)
BACKUP_TYPE = "application/vnd.lapwing.backup+zip"
VERSION = re.search(r"project\(lapwing VERSION ([\d.]+)", (TOP / "CMakeLists.txt").read_text("utf-8")).group(1)


def run(*command, **options):
    return subprocess.run(command, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, **options)


class Metainfo(unittest.TestCase):
    file = SHARE / "org.lapwing.Lapwing.metainfo.xml"

    def setUp(self):
        self.root = xml.parse(self.file).getroot()

    def test_appstreamcli_finds_no_fault(self):
        said = run("appstreamcli", "validate", "--no-net", "--explain", str(self.file))
        self.assertEqual(said.returncode, 0, said.stdout)

    def test_names_this_version_first(self):
        self.assertEqual(self.root.find("releases/release").get("version"), VERSION)

    def test_names_desktop_file_and_file_type_that_are_there(self):
        self.assertTrue((SHARE / self.root.findtext("launchable")).is_file())
        self.assertEqual(self.root.findtext("provides/mediatype"), MEDIA_TYPE)

    def test_phone_and_desktop(self):
        # 320 is the smallest window that the screens are made for (tests/app walks them at 320x568).
        length = self.root.find("requires/display_length")
        self.assertEqual((length.get("compare"), length.text), ("ge", "320"))
        controls = {c.text for c in self.root.iter("control")}
        self.assertEqual(controls, {"touch", "pointing", "keyboard"})


class Versions(unittest.TestCase):
    def test_one_version_everywhere(self):
        libraries = json.loads((TOP / "platform/vcpkg.json").read_text("utf-8"))
        self.assertEqual(libraries["version-string"], VERSION)
        self.assertEqual((TOP / "platform/linux/debian/changelog").read_text("utf-8").split()[1], f"({VERSION})")


class Desktop(unittest.TestCase):
    file = SHARE / "lapwing.desktop"

    def setUp(self):
        parser = configparser.ConfigParser(interpolation=None, delimiters=("=",))
        parser.optionxform = str
        parser.read(self.file, "utf-8")
        self.entry = parser["Desktop Entry"]

    def test_desktop_file_validate_finds_no_fault(self):
        said = run("desktop-file-validate", str(self.file))
        self.assertEqual((said.returncode, said.stdout), (0, ""))

    def test_is_the_name_that_the_window_gives(self):
        main = (TOP / "qml/app/main.cpp").read_text("utf-8")
        self.assertEqual(re.search(r'setDesktopFileName\(QStringLiteral\("([^"]+)"', main).group(1), self.file.stem)

    def test_opens_session_files_and_has_an_icon(self):
        self.assertEqual(self.entry["MimeType"], f"{MEDIA_TYPE};{BACKUP_TYPE};")
        self.assertTrue(self.entry["Exec"].endswith(" %f"))
        self.assertTrue((TOP / f"assets/icons/{self.entry['Icon']}.svg").is_file())


class FileType(unittest.TestCase):
    def type_of(self, name, content):
        # The shared MIME database as a desktop would build it, with nothing but our type in it.
        with tempfile.TemporaryDirectory() as folder:
            packages = pathlib.Path(folder) / "mime/packages"
            packages.mkdir(parents=True)
            (packages / "lapwing.xml").write_bytes((SHARE / "lapwing.xml").read_bytes())
            home = {**os.environ, "XDG_DATA_HOME": folder, "LC_ALL": "C.UTF-8"}
            built = run("update-mime-database", str(packages.parent), env=home)
            self.assertEqual((built.returncode, built.stdout), (0, ""))
            file = pathlib.Path(folder) / name
            file.write_bytes(content)
            said = run("gio", "info", "-a", "standard::content-type,standard::icon", str(file),
                       env=home)
            self.assertEqual(said.returncode, 0, said.stdout)
            return said.stdout

    def test_a_session_file_is_known_by_its_ending(self):
        demo = (TOP / "assets/demo/orchard-v-twin.lapwing").read_bytes()
        said = self.type_of("Orchard V-twin.lapwing", demo)
        self.assertIn(f"standard::content-type: {MEDIA_TYPE}\n", said)
        icon = MEDIA_TYPE.replace("/", "-")
        self.assertIn(icon, said)
        self.assertTrue((TOP / f"assets/icons/hicolor/scalable/mimetypes/{icon}.svg").is_file())

    def test_a_backup_is_known_by_its_ending(self):
        demo = (TOP / "assets/demo/orchard-v-twin.lapwing").read_bytes()
        self.assertIn(f"standard::content-type: {BACKUP_TYPE}\n", self.type_of("2026-03-14.lapwing-backup", demo))

    def test_another_zip_is_not(self):
        demo = (TOP / "assets/demo/orchard-v-twin.lapwing").read_bytes()
        self.assertIn("standard::content-type: application/zip\n", self.type_of("other.zip", demo))


class Icons(unittest.TestCase):
    def test_all_are_drawn_from_the_one_picture(self):
        said = run(str(TOP / "assets/icons/make"), "--check")
        self.assertEqual((said.returncode, said.stdout), (0, ""))


class ManPages(unittest.TestCase):
    def test_roff_is_sound(self):
        for page in ("lapwing.1", "lapwing-cli.1"):
            said = run("mandoc", "-T", "lint", "-W", "warning", str(TOP / "platform/linux" / page))
            self.assertEqual((said.returncode, said.stdout), (0, ""), page)

    def test_the_app_s_page_names_every_option(self):
        main = (TOP / "qml/app/main.cpp").read_text("utf-8")
        page = (TOP / "platform/linux/lapwing.1").read_text("utf-8").replace("\\-", "-")
        options = re.findall(r"QCommandLineOption \w+\(\s*QStringLiteral\(\"([a-z-]+)\"\)", main)
        self.assertGreaterEqual(len(options), 6)
        for option in options:
            self.assertIn("--" + option, page)


if __name__ == "__main__":
    unittest.main()
