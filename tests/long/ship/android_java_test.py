# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""The Android tree's Java under javac, and its C++ against what javac made of it. Android's own classes are stood in
for by android_api.txt; the JNI side is held against Qt's real headers. Nothing of it is run: that takes a phone."""

import pathlib
import re
import subprocess
import tempfile
import unittest

TOP = pathlib.Path(__file__).resolve().parents[3]
TREE = TOP / "platform/android"
STUBS = pathlib.Path(__file__).with_name("android_api.txt")
QT = pathlib.Path("/usr/include/x86_64-linux-gnu/qt6")


def run(*command, **options):
    return subprocess.run([str(c) for c in command], stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True,
                          **options)


def write_stubs(folder):
    for part in STUBS.read_text("utf-8").split("\n== ")[1:]:
        name, body = part.split("\n", 1)
        package, _, simple = name.rpartition(".")
        file = folder / package.replace(".", "/") / (simple + ".java")
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(f"package {package};\n{body}", "utf-8")
        yield file


class Java(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(cls.folder.cleanup)
        top = pathlib.Path(cls.folder.name)
        stubs = list(write_stubs(top / "stubs"))
        made = run("javac", "--release", "11", "-d", top / "android", *stubs)
        if made.returncode:
            raise AssertionError("the stand-ins themselves: " + made.stdout)
        ours = sorted(TREE.glob("src/**/*.java"))
        cls.compiled = run("javac", "--release", "11", "-Xlint:all", "-Werror", "-cp", top / "android", "-d",
                           top / "ours", *ours)
        described = run("javap", "-s", "-private", "-cp", f"{top / 'ours'}:{top / 'android'}",
                        *sorted((top / "ours").rglob("*.class")))
        cls.methods, owner = {}, None
        for line in described.stdout.splitlines():
            if found := re.search(r"\bclass ([\w.$]+)", line):
                owner = found.group(1).replace(".", "/")
            elif found := re.match(r"\s+(.*?)(\w+)\(.*\)", line):
                modifiers, method = found.groups()
            elif found := re.match(r"\s+descriptor: (\(.*)", line):
                cls.methods[owner, method, found.group(1)] = modifiers.split()

    def test_compiles_without_a_warning(self):
        self.assertEqual((self.compiled.returncode, self.compiled.stdout), (0, ""))

    def calls(self):
        for file in sorted(TREE.glob("*.cpp")):
            text = re.sub(r'"\s+"', "", file.read_text("utf-8"))
            owners = dict(re.findall(r'constexpr auto (\w+) = "([\w/]+)"', text))
            for owner, method, signature in re.findall(r'call\w*(?:<\w+>)?\(\s*(\w+),\s*"(\w+)",\s*"([^"]+)"', text):
                yield "static", owners[owner], method, signature
            for owner, body in re.findall(r"register_natives\(\s*(\w+),(.*?)\);", text, re.S):
                for method, signature in re.findall(r'\{\s*"(\w+)",\s*"([^"]+)"', body):
                    yield "native", owners[owner], method, signature

    def test_what_cpp_calls_and_what_it_answers_is_there(self):
        known, natives = set(), set()
        for kind, owner, method, signature in self.calls():
            self.assertIn((owner, method, signature), self.methods)
            self.assertIn(kind, self.methods[owner, method, signature])
            known.add(method)
            natives |= {(owner, method, signature)} if kind == "native" else set()
        self.assertGreaterEqual(len(known), 12)
        self.assertEqual(natives, {m for m, words in self.methods.items() if "native" in words})


class Cpp(unittest.TestCase):
    def test_compiles_against_qt_s_android_headers(self):
        home = pathlib.Path(run("readlink", "-f", "/usr/bin/javac").stdout.strip()).parents[1]
        modules = [f"-I{QT / m}" for m in ("QtCore", "QtGui", "QtQml", "QtNetwork")]
        for file in sorted(TREE.glob("*.cpp")):
            # The NDK's jni.h takes constant texts, the JDK's does not.
            said = run("g++", "-std=c++20", "-fPIC", "-fsyntax-only", "-Wall", "-Wextra", "-Wno-write-strings", "-Werror",
                       "-D__ANDROID__", "-D__ANDROID_API__=26", f"-I{TOP}", f"-I{QT}", *modules,
                       f"-I{home / 'include'}", f"-I{home / 'include/linux'}", file)
            self.assertEqual((said.returncode, said.stdout), (0, ""), file.name)


if __name__ == "__main__":
    unittest.main()
