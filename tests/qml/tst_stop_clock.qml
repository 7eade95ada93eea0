// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtTest
import Lapwing.Components

TestCase {
    name: "StopClock"

    StopClock {
        id: clock
    }

    SignalSpy {
        id: minutes

        target: clock
        signalName: "minute"
    }

    function test_nothing_runs_before_the_start_and_after_the_stop() {
        const tick = findChild(clock, "tick") ?? clock.resources[0];
        verify(!tick.running);
        clock.start();
        verify(tick.running);
        clock.stop();
        verify(!tick.running);
    }

    function test_counts_by_the_clock_on_the_wall() {
        clock.start();
        // As after a sleep of 75 seconds.
        clock.since -= 75000;
        tryCompare(clock, "seconds", 75, 2000);
        compare(clock.text, "1:15");
        compare(minutes.count, 1);
        clock.stop();
        compare(clock.seconds, 75);
        clock.start();
        compare(clock.text, "0:00");
        clock.stop();
    }

    function test_forgets_itself_after_an_hour() {
        clock.start();
        clock.since -= 3600000;
        tryCompare(clock, "running", false, 2000);
    }
}
