#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
"""Runs a program in a room of its own with a microphone, a speaker and a camera that need no hardware.

studio.py PROGRAM [ARGUMENT...]

A private message bus and PipeWire session: what is played into the sink "fakemic" is heard by the program's
microphone, and what the program plays comes out of "speaker.monitor". The program starts the camera itself (see
capture_test.cpp): a camera of this kind shows its picture to one client only.
"""

import os
import pathlib
import shutil
import subprocess
import sys
import tempfile
import time

TOOLS = ["dbus-daemon", "pipewire", "wireplumber", "pipewire-pulse", "pactl"]


def wait_for(what, done, seconds=20):
    end = time.monotonic() + seconds
    while not done():
        if time.monotonic() > end:
            sys.exit(f"studio: {what} did not come up within {seconds} s")
        time.sleep(0.1)


def main():
    missing = [tool for tool in TOOLS if not shutil.which(tool)]
    if missing:
        sys.exit(f"studio: not installed: {', '.join(missing)}; platform/linux/packages lists them under tests")
    with tempfile.TemporaryDirectory(prefix="lapwing-studio-") as folder:
        sys.exit(run_in(pathlib.Path(folder)))


def run_in(folder):
    folder.chmod(0o700)
    bus = folder / "bus"
    environment = dict(
        os.environ,
        XDG_RUNTIME_DIR=str(folder),
        XDG_CONFIG_HOME=str(folder / "config"),
        XDG_STATE_HOME=str(folder / "state"),
        XDG_DATA_HOME=str(folder / "data"),
        HOME=str(folder),
        DBUS_SESSION_BUS_ADDRESS=f"unix:path={bus}",
        LC_ALL="C.UTF-8",
    )
    for name in ("PULSE_SERVER", "PIPEWIRE_REMOTE", "PIPEWIRE_RUNTIME_DIR"):
        environment.pop(name, None)
    running = []
    log = open(folder / "log", "w+")

    def start(*command):
        running.append(subprocess.Popen(command, env=environment, stdout=log, stderr=log))

    def pactl(*arguments):
        return subprocess.run(["pactl", *arguments], env=environment, capture_output=True, text=True)

    try:
        start("dbus-daemon", "--session", "--nofork", f"--address=unix:path={bus}")
        wait_for("the message bus", bus.exists)
        start("pipewire")
        wait_for("pipewire", (folder / "pipewire-0").exists)
        start("wireplumber")
        start("pipewire-pulse")
        wait_for("pipewire-pulse", lambda: pactl("info").returncode == 0)
        for module in (
            ["module-null-sink", "sink_name=fakemic"],
            ["module-null-sink", "sink_name=speaker"],
            # Qt does not list monitors, so the microphone is one step behind the monitor.
            ["module-remap-source", "source_name=mic", "master=fakemic.monitor"],
        ):
            made = pactl("load-module", *module)
            if made.returncode:
                sys.exit(f"studio: {' '.join(module)}: {made.stderr}")
        wait_for("the microphone", lambda: "mic" in pactl("list", "short", "sources").stdout)
        pactl("set-default-source", "mic")
        pactl("set-default-sink", "speaker")
        wait_for("the defaults", lambda: "Default Sink: speaker" in pactl("info").stdout)
        ended = subprocess.run(sys.argv[1:], env=environment).returncode
        if ended:
            log.seek(0)
            sys.stderr.write(log.read()[-3000:])
        return ended
    finally:
        for process in reversed(running):
            process.terminate()
            try:
                process.wait(5)
            except subprocess.TimeoutExpired:
                process.kill()
        log.close()


if __name__ == "__main__":
    main()
