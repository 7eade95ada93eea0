# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""Nothing leaves the phone by itself: neither program asks the system for a socket of any network.

The system calls of both are watched (strace), through every verb of lapwing-cli and through the app's tour of all its
screens. Sockets between programs of the same device (AF_UNIX: the display, the desktop's services) are allowed.
"""

import os
import pathlib
import re
import subprocess
import sys
import tempfile
import unittest

CLI = os.environ["LAPWING_CLI"]
APP = os.environ["LAPWING_APP"]
SOURCE = pathlib.Path(os.environ["LAPWING_SOURCE"])

# AF_UNIX stays on the device, AF_NETLINK asks the kernel, AF_UNSPEC is no family.
NETWORK = re.compile(r"\bAF_(?!(?:UNIX|LOCAL|NETLINK|UNSPEC)\b)\w+")
ENGINE = "--bore 73.4mm --stroke 58.8mm --rod 118mm --cr 8.6 --ivc 65deg".split()


class AtHome(unittest.TestCase):
    """A home of its own, and a screen that nobody sees."""

    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = pathlib.Path(folder.name)
        runtime = self.folder / "runtime"
        runtime.mkdir(mode=0o700)
        self.env = dict(os.environ, HOME=str(self.folder), XDG_RUNTIME_DIR=str(runtime),
                        QT_QPA_PLATFORM="offscreen", QT_QUICK_BACKEND="software")


class Watched(AtHome):
    def network_calls(self, *command, code=0, timeout=60):
        """What the command and all its children asked of the network, one line a call."""
        log = self.folder / "calls"
        ran = subprocess.run(["strace", "-f", "-qq", "--seccomp-bpf", "-e", "trace=%network", "-o", log, "--",
                              *map(str, command)], env=self.env, capture_output=True, text=True, timeout=timeout)
        self.assertEqual(ran.returncode, code, f"{command}: {ran.stderr}")
        return [line for line in log.read_text(errors="replace").splitlines() if NETWORK.search(line)]

    def stays_off(self, *command, **how):
        self.assertEqual(self.network_calls(*command, **how), [])

    def test_a_socket_would_be_seen(self):
        for family in ["AF_INET", "AF_INET6"]:
            ask = f"import socket; socket.socket(socket.{family})"
            child = f"import subprocess, sys; subprocess.run([sys.executable, '-c', {ask!r}])"
            for script in [ask, child]:
                seen = self.network_calls(sys.executable, "-c", script)
                self.assertTrue(any(f"socket({family}," in line for line in seen), seen)
        self.stays_off(sys.executable, "-c", "import socket; socket.socket(socket.AF_UNIX)")

    def test_cli(self):
        file, other = self.folder / "twin.lapwing", self.folder / "six.lapwing"
        photo = next((SOURCE / "tests/fixtures/gauge-photos").rglob("*.jpg"))
        for command in [
            ["--help"],
            ["--version"],
            ["sums", "leak", "--set", "80psi", "--held", "60psi"],
            ["sums", "crank", *ENGINE],
            ["sums", "altitude", "--altitude", "240m"],
            ["sums", "unit", "80psi"],
            ["sums", "hose", *ENGINE, "--hose", "12cm3"],
            ["sums", "oil", *ENGINE, "--put-in", "5cm3"],
            ["sums", "healthy", *ENGINE],
            ["sums", "torque", "--bore", "73.4mm", "--stroke", "58.8mm", "--rod", "118mm", "--pressure", "5bar",
             "--angle", "2deg"],
            ["demo", "-o", file],
            ["demo", "--engine", "six", "-o", other],
            ["check", file],
            ["findings", file],
            ["history", file],
            ["compare", file],
            ["csv", file, "-o", self.folder / "out.csv"],
            ["merge", file, file, "-o", self.folder / "merged.lapwing"],
            ["report", file, "-o", self.folder / "out.pdf"],
        ]:
            with self.subTest(command=command[0]):
                self.stays_off(CLI, *command)
        needle = [CLI, "needle", photo, "--min", "0bar", "--max", "16bar"]
        # Whether it can be read is another test's question.
        answer = subprocess.run(needle, capture_output=True, timeout=60).returncode
        self.stays_off(*needle, code=answer)

    def test_app(self):
        shots = self.folder / "shots"
        self.stays_off(APP, "--data", self.folder / "data", "--demo-tour", shots, timeout=280)
        self.assertGreater(len(list(shots.glob("*.png"))), 10)


class CutOff(AtHome):
    def test_app_where_there_is_no_network(self):
        # Not even a loopback that is up: whatever asked for a network would fail.
        for alone in [["unshare", "--net"], ["unshare", "--map-root-user", "--net"]]:
            if subprocess.run([*alone, "true"], capture_output=True).returncode == 0:
                break
        else:
            self.skipTest("This system lets nobody have a network namespace of their own; Watched sees the calls.")
        shots = self.folder / "shots"
        ran = subprocess.run([*alone, APP, "--data", self.folder / "data", "--demo-tour", shots], env=self.env,
                             capture_output=True, text=True, timeout=200)
        self.assertEqual(ran.returncode, 0, ran.stderr)
        self.assertGreater(len(list(shots.glob("*.png"))), 10)


if __name__ == "__main__":
    unittest.main()
