// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// The pad of one test: digits and one touch a cylinder.
KeyedPage {
    id: page

    required property string test

    readonly property bool turns: test === "leak-down"

    // The cylinder's last reading that stands, and digits typed beside it.
    readonly property var standing: Array.from(viewModel.history).filter(reading => !reading.replaced && !reading.asOne).pop() ?? null
    readonly property bool retyping: standing !== null && !viewModel.empty && !viewModel.redoing

    function showNextTdc() {
        go("NextTdc", {
            sessionId: sessionId,
            cylinder: viewModel.cylinder
        });
    }

    // Of the reading that stands, or of the cylinder: a photo may come first, to read the number off it.
    function takeEvidence(name: string) {
        go(name, {
            sessionId: sessionId,
            to: standing ? "reading" : "cylinder",
            record: standing ? standing.id : "",
            cylinder: viewModel.cylinder,
            kind: "gauge",
            test: test,
            pending: standing === null && !viewModel.empty && ["final", "held"].includes(viewModel.field) ? viewModel.typed + " " + viewModel.unit : ""
        });
    }

    // How long the crankcase held, and how long the air has had to settle.
    readonly property bool timed: test === "leak-down" || test === "crankcase"

    function clockTouched() {
        if (!clock.running)
            return clock.start();
        clock.stop();
        if (test === "crankcase")
            viewModel.enterHold(clock.seconds);
    }

    heading: viewModel.title
    about: viewModel.subtitle
    keyed: viewModel
    shut: viewModel.refused
    onAsked: what => questions.ask(what)

    PadModel {
        id: viewModel

        app: page.app
        sessionId: page.sessionId
        test: page.test
        onListenTo: cylinder => page.go("LeakHunt", {
            sessionId: page.sessionId,
            cylinder: cylinder
        })
    }

    onVisibleChanged: if (!visible)
        clock.stop()

    StopClock {
        id: clock

        onMinute: page.app.tick()
    }

    betweenBeside: test === "leak-down"
    between: timed ? clockButton : null

    Component {
        id: clockButton

        SideButton {
            objectName: "clock"
            targetKind: page.tight ? "minor" : "secondary"
            padding: page.tight ? 4 : Theme.space
            horizontalPadding: 4
            chosen: clock.running
            text: clock.running ? qsTr("Stop %1").arg(clock.text) : clock.seconds > 0 ? qsTr("Clock %1").arg(clock.text) : qsTr("Start clock")
            onClicked: page.clockTouched()
        }
    }

    seldom: Column {
        spacing: Theme.space

        SideButton {
            objectName: "more"
            width: parent.width
            text: qsTr("More")
            onClicked: {
                page.closeFold();
                more.active = true;
            }
        }

        SideButton {
            objectName: "nextTdc"
            visible: page.turns
            width: parent.width
            text: qsTr("Next TDC")
            onClicked: {
                page.closeFold();
                page.showNextTdc();
            }
        }
    }

    buttons: [
        IconWord {
            objectName: "more"
            visible: !page.crowded
            symbol: "more"
            text: qsTr("More")
            onClicked: more.active = true
        },
        IconWord {
            objectName: "nextTdc"
            visible: page.turns && !page.crowded && !page.retyping
            symbol: "turn"
            text: qsTr("Next TDC")
            onClicked: page.showNextTdc()
        },
        // A second reading counts beside the first; who mistyped wants it in place of the first.
        IconWord {
            objectName: "instead"
            visible: page.retyping && !page.crowded
            symbol: "swap"
            text: qsTr("Redo")
            onClicked: viewModel.startRedo(page.standing.id)
        },
        // Where there is no room for it, More has it.
        IconWord {
            objectName: "photo"
            visible: !page.turns && !page.crowded && !page.retyping
            symbol: "photo"
            text: qsTr("Photo")
            onClicked: page.takeEvidence("Photo")
        },
        BigButton {
            objectName: "keep"
            text: viewModel.keepText
            onClicked: viewModel.keep()
        }
    ]

    ErrorCard {
        visible: viewModel.refused
        width: parent.width
        anchors.verticalCenter: parent.verticalCenter
        heading: qsTr("No wet test on a diesel")
        message: qsTr("Oil does not compress. In a diesel's small chamber it can lock the engine and bend a rod. Use leak-down instead.")
        action: qsTr("Back to the session")
        onActed: page.back()
    }

    Loader {
        id: more

        active: false
        sourceComponent: PadMoreSheet {
            model: viewModel
            onClosed: more.active = false
            onWipe: page.go("Wipe", {})
            onEvidence: name => page.takeEvidence(name)
            onHowTo: page.go("HowToCard", {
                card: page.test
            })
            Component.onCompleted: open()
        }
    }

    PadQuestions {
        id: questions

        model: viewModel
        standing: page.standing?.id ?? ""
        onFresh: page.go("Again", {
            sessionId: page.sessionId,
            test: page.test,
            cylinder: viewModel.cylinder,
            other: true
        })
    }

    TesterAsk {
        id: whichTester

        app: page.app
        sessionId: page.sessionId
        test: page.test
    }

    CautionGate {
        known: viewModel.oilAmount
        onPassed: {
            if (!viewModel.refused)
                whichTester.ask();
        }
        onTurnedBack: page.back()
        app: page.app
        sessionId: page.sessionId
        place: page.test
        // Where the test is refused there is nothing to be careful with.
        cautions: viewModel.refused ? [] : viewModel.cautions
    }
}
