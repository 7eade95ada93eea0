# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""What the Android tree tells a phone about the app, packed and read back by Android's own tool (aapt). The app itself
is not built here: that takes Android's NDK and Qt for Android."""

import pathlib
import re
import shutil
import subprocess
import tempfile
import unittest
import xml.etree.ElementTree as xml

TOP = pathlib.Path(__file__).resolve().parents[2]
TREE = TOP / "platform/android"
FRAMEWORK = "/usr/share/android-framework-res/framework-res.apk"
MEDIA_TYPE = re.search(r'session_media_type = "([^"]+)"', (TOP / "core/exchange/session_file.h").read_text("utf-8")).group(1)
ANDROID = "{http://schemas.android.com/apk/res/android}"
# All that may be asked for; a library that wants more has to be argued about here.
PERMISSIONS = {"android.permission.CAMERA", "android.permission.RECORD_AUDIO"}
# As androiddeployqt fills them in.
FILLED_IN = {"VERSION_CODE": "1", "VERSION_NAME": "0.1.0", "APP_LIB_NAME": "lapwing", "APP_ARGUMENTS": ""}
NO_SUCH_PLACE = re.compile(r"%%[A-Z_]+%%")


def run(*command):
    return subprocess.run([str(c) for c in command], stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True)


class Packed(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(cls.folder.cleanup)
        tree = pathlib.Path(cls.folder.name) / "android"
        shutil.copytree(TREE, tree)
        manifest = (tree / "AndroidManifest.xml").read_text("utf-8")
        for place, value in FILLED_IN.items():
            manifest = manifest.replace(f"-- %%INSERT_{place}%% --", value)
        if NO_SUCH_PLACE.search(manifest):
            raise AssertionError("a place holder that nobody fills in: " + NO_SUCH_PLACE.search(manifest).group())
        (tree / "AndroidManifest.xml").write_text(manifest, "utf-8")
        cls.package = pathlib.Path(cls.folder.name) / "lapwing.apk"
        # Without --auto-add-overlay and with -f: a resource that is named and not there is an error.
        made = run("aapt", "package", "-f", "-M", tree / "AndroidManifest.xml", "-S", tree / "res", "-I", FRAMEWORK,
                   "--min-sdk-version", "26", "--target-sdk-version", "34", "-F", cls.package)
        if made.returncode or "rror" in made.stdout:
            raise AssertionError(made.stdout)
        cls.badging = run("aapt", "dump", "badging", cls.package).stdout

    def test_asks_for_camera_and_microphone_and_nothing_else(self):
        said = run("aapt", "dump", "permissions", self.package).stdout
        self.assertEqual(set(re.findall(r"uses-permission: name='([^']+)'", said)), PERMISSIONS)
        self.assertEqual(set(re.findall(r"uses-permission[\w-]*: name='([^']+)'", self.badging)), PERMISSIONS)
        self.assertNotIn("INTERNET", said + self.badging)

    def test_needs_no_hardware(self):
        needed = set(re.findall(r"^  uses-feature: name='([^']+)'", self.badging, re.MULTILINE))
        implied = set(re.findall(r"^  uses-implied-feature: name='([^']+)'", self.badging, re.MULTILINE))
        self.assertEqual((needed, implied), (set(), set()))
        spared = set(re.findall(r"uses-feature-not-required: name='([^']+)'", self.badging))
        self.assertLessEqual({"android.hardware.camera", "android.hardware.microphone"}, spared)

    def test_starts_the_activity_of_the_tree_and_has_an_icon_in_every_size(self):
        activity = re.search(r"launchable-activity: name='([^']+)'", self.badging).group(1)
        self.assertTrue((TREE / "src" / (activity.replace(".", "/") + ".java")).is_file())
        for density in (160, 240, 320, 480, 640, 65534):
            self.assertIn(f"application-icon-{density}:'res/mipmap", self.badging)


class Manifest(unittest.TestCase):
    def setUp(self):
        self.root = xml.parse(TREE / "AndroidManifest.xml").getroot()
        self.application = self.root.find("application")

    def filters(self, action):
        for one in self.application.iter("intent-filter"):
            if action in {a.get(ANDROID + "name") for a in one.iter("action")}:
                yield one

    def test_opens_session_files_by_type_and_by_name(self):
        for action in ("android.intent.action.VIEW", "android.intent.action.SEND"):
            types = {d.get(ANDROID + "mimeType") for f in self.filters(action) for d in f.iter("data")}
            self.assertIn(MEDIA_TYPE, types)
        patterns = [d.get(ANDROID + "pathPattern") for d in self.application.iter("data")]
        for name in ("/files/one.lapwing", "/a.b/one.two.lapwing", "/files/all.lapwing-backup"):
            # Android's pattern is a simple glob: ".*" any characters, "\\." a dot (developer.android.com, PatternMatcher).
            self.assertTrue(any(p and re.fullmatch(p.replace("\\\\", "\\"), name) for p in patterns), name)

    def test_lets_in_no_file_paths_and_no_web(self):
        schemes = {d.get(ANDROID + "scheme") for d in self.application.iter("data")} - {None}
        self.assertEqual(schemes, {"content"})

    def test_only_the_activity_can_be_called_from_outside(self):
        exported = [e.get(ANDROID + "name") for e in self.application if e.get(ANDROID + "exported") == "true"]
        self.assertEqual(exported, ["org.lapwing.lapwing.LapwingActivity"])
        self.assertEqual(self.application.get(ANDROID + "allowBackup"), "false")
        self.assertIsNone(self.application.get(ANDROID + "usesCleartextTraffic"))
        self.assertIsNone(self.application.get(ANDROID + "debuggable"))

    def test_lends_files_of_one_folder_only(self):
        provider = self.application.find("provider")
        self.assertEqual(provider.get(ANDROID + "exported"), "false")
        name = provider.find("meta-data").get(ANDROID + "resource").removeprefix("@xml/")
        paths = xml.parse(TREE / f"res/xml/{name}.xml").getroot()
        self.assertEqual({(p.tag, p.get("path")) for p in paths},
                         {("external-files-path", "Documents/Lapwing/"), ("files-path", "Documents/Lapwing/")})
        java = (TREE / "src/org/lapwing/lapwing/Phone.java").read_text("utf-8")
        self.assertIn(f'AUTHORITY = "{provider.get(ANDROID + "authorities")}"', java)
        self.assertIn('"Lapwing"', java)


if __name__ == "__main__":
    unittest.main()
