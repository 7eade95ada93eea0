# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""What the iOS tree tells a phone and the store about the app. The app itself is not built here: that takes Xcode."""

import json
import pathlib
import plistlib
import re
import unittest

TOP = pathlib.Path(__file__).resolve().parents[2]
TREE = TOP / "platform/ios"
MEDIA_TYPE = re.search(r'session_media_type = "([^"]+)"', (TOP / "core/exchange/session_file.h").read_text("utf-8")).group(1)
BACKUP_ENDING = re.search(r'backup_file_ending = "\.([^"]+)"', (TOP / "core/exchange/backup_file.h").read_text("utf-8")).group(1)
# developer.apple.com, "Describing use of required reason API": the reasons that each category knows.
REASONS = {
    "NSPrivacyAccessedAPICategoryFileTimestamp": {"DDA9.1", "C617.1", "3B52.1", "0A2A.1"},
    "NSPrivacyAccessedAPICategorySystemBootTime": {"35F9.1", "8FFB.1", "3D61.1"},
    "NSPrivacyAccessedAPICategoryDiskSpace": {"85F4.1", "E174.1", "7D9E.1", "B728.1"},
    "NSPrivacyAccessedAPICategoryUserDefaults": {"CA92.1", "1C8F.1", "C56D.1", "AC6B.1"},
}


def read(name):
    return plistlib.loads((TREE / name).read_bytes())


class Info(unittest.TestCase):
    def setUp(self):
        self.info = read("Info.plist")

    def test_a_purpose_for_each_permission_and_for_nothing_else(self):
        api = (TOP / "platform/api/permissions.h").read_text("utf-8")
        asked = re.search(r"enum class Permission \{([^}]*)\}", api).group(1).replace(" ", "").split(",")
        purposes = {k for k in self.info if k.endswith("UsageDescription")}
        self.assertEqual(purposes, {f"NS{name.capitalize()}UsageDescription" for name in asked})
        for purpose in purposes:
            self.assertGreater(len(self.info[purpose]), 40)

    def test_no_way_to_the_network_is_asked_for(self):
        for key in ("NSAppTransportSecurity", "NSLocalNetworkUsageDescription", "NSBonjourServices", "UIBackgroundModes"):
            self.assertNotIn(key, self.info)

    def test_session_files_and_backups_are_the_app_s_own_types(self):
        types = {t["UTTypeIdentifier"]: t for t in self.info["UTExportedTypeDeclarations"]}
        tags = types["org.lapwing.session"]["UTTypeTagSpecification"]
        self.assertEqual(tags["public.filename-extension"], ["lapwing"])
        self.assertEqual(tags["public.mime-type"], [MEDIA_TYPE])
        self.assertEqual(types["org.lapwing.backup"]["UTTypeTagSpecification"]["public.filename-extension"], [BACKUP_ENDING])
        opened = [t for d in self.info["CFBundleDocumentTypes"] for t in d["LSItemContentTypes"]]
        self.assertEqual(set(opened), set(types))
        self.assertEqual({d["LSHandlerRank"] for d in self.info["CFBundleDocumentTypes"]}, {"Owner"})

    def test_documents_can_be_looked_at_and_are_copied_in(self):
        self.assertIs(self.info["UIFileSharingEnabled"], True)
        self.assertIs(self.info["LSSupportsOpeningDocumentsInPlace"], False)
        # What can be looked at is not the library.
        code = (TREE / "ios_devices.mm").read_text("utf-8")
        self.assertRegex(code, r"IosPaths::data\(\) const \{[^}]*AppDataLocation")
        self.assertRegex(code, r"IosPaths::documents\(\) const \{[^}]*DocumentsLocation")

    def test_both_ways_up_and_a_launch_screen_that_is_there(self):
        ways = set(self.info["UISupportedInterfaceOrientations"])
        self.assertLessEqual({"UIInterfaceOrientationPortrait", "UIInterfaceOrientationLandscapeLeft"}, ways)
        colour = self.info["UILaunchScreen"]["UIColorName"]
        self.assertTrue((TREE / f"Assets.xcassets/{colour}.colorset/Contents.json").is_file())

    def test_cmake_fills_in_every_place_holder(self):
        holders = set(re.findall(r"\$\{(\w+)\}", (TREE / "Info.plist").read_text("utf-8")))
        # cmake.org, MACOSX_BUNDLE_INFO_PLIST: those that its templates know, and the executable's name.
        known = {"MACOSX_BUNDLE_EXECUTABLE_NAME", "MACOSX_BUNDLE_GUI_IDENTIFIER", "MACOSX_BUNDLE_SHORT_VERSION_STRING",
                 "MACOSX_BUNDLE_BUNDLE_VERSION"}
        self.assertEqual(holders, known)


class Privacy(unittest.TestCase):
    def test_no_tracking_nothing_collected_a_known_reason_for_each_call(self):
        privacy = read("PrivacyInfo.xcprivacy")
        self.assertIs(privacy["NSPrivacyTracking"], False)
        self.assertEqual(privacy["NSPrivacyTrackingDomains"], [])
        self.assertEqual(privacy["NSPrivacyCollectedDataTypes"], [])
        for call in privacy["NSPrivacyAccessedAPITypes"]:
            reasons = set(call["NSPrivacyAccessedAPITypeReasons"])
            self.assertTrue(reasons)
            self.assertLessEqual(reasons, REASONS[call["NSPrivacyAccessedAPIType"]])


class Pictures(unittest.TestCase):
    def test_the_catalogue_names_files_that_are_there(self):
        for contents in TREE.glob("Assets.xcassets/**/Contents.json"):
            for image in json.loads(contents.read_text("utf-8")).get("images", []):
                self.assertTrue((contents.parent / image["filename"]).is_file())

    def test_the_icon_is_1024_pixels_and_opaque(self):
        head = (TREE / "Assets.xcassets/AppIcon.appiconset/AppIcon.png").read_bytes()[:26]
        # PNG (ISO/IEC 15948): width and height at 16, bit depth at 24, colour type at 25 (2: no alpha).
        self.assertEqual((int.from_bytes(head[16:20]), int.from_bytes(head[20:24]), head[25]), (1024, 1024, 2))


if __name__ == "__main__":
    unittest.main()
