// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtQuick.Templates as T
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// One visit to one engine: a tile a test, and what is worth doing next.
AppPage {
    id: page

    required property AppContext app
    required property string sessionId

    signal go(name: string, args: var)

    function explainFigure(from: int) {
        derivation.show(viewModel.derivation(from));
    }

    // One figure tells at once where it comes from, of several one is picked first.
    function figuresAsked(tile: var) {
        if (tile.lines.length === 1)
            return explainFigure(tile.lines[0].from);
        sheets.tile = tile;
        sheets.show(figures);
    }

    title: viewModel.engineName
    subtitle: viewModel.visitLine

    // The findings page may have worked out the odds meanwhile: both advise alike.
    T.StackView.onActivated: viewModel.lookAgain()

    SessionModel {
        id: viewModel

        app: page.app
        sessionId: page.sessionId
    }

    EvidenceModel {
        id: evidence

        app: page.app
        sessionId: page.sessionId
    }

    ScrollColumn {
        anchors.fill: parent

        SessionGone {
            width: parent.width
            visible: !viewModel.found
        }

        SessionAdvice {
            width: parent.width
            reason: viewModel.nextReason
            circumstances: viewModel.circumstances
            onHowTo: page.go("HowToCard", {
                card: viewModel.nextCard
            })
            onExplain: from => page.explainFigure(from)
        }

        SessionOpinions {
            id: opinions

            width: parent.width
            visible: viewModel.found
            app: page.app
            sessionId: page.sessionId
            engineId: viewModel.engineId
            onGo: (name, args) => page.go(name, args)
        }

        // The tiles stay while what they say changes: one that is being touched must not be made anew.
        Repeater {
            model: viewModel.found ? viewModel.tiles.length : 0

            SessionTile {
                required property int index

                tile: viewModel.tiles[index]
                width: parent.width
                onOpened: page.go(tile.page, tile.args)
                onFiguresAsked: page.figuresAsked(tile)
            }
        }

        ListRow {
            objectName: "beforeAfter"
            visible: viewModel.hasOthers
            width: parent.width
            symbol: "swap"
            text: qsTr("Before and after")
            detail: qsTr("Two visits, cylinder by cylinder")
            onClicked: page.go("Changes", {
                engineId: viewModel.engineId,
                afterId: page.sessionId
            })
        }

        ListRow {
            objectName: "evidence"
            visible: viewModel.found
            width: parent.width
            symbol: "photo"
            text: qsTr("Photos and voice notes")
            figure: evidence.items.length > 0 ? evidence.items.length : ""
            onClicked: page.go("Evidence", {
                sessionId: page.sessionId
            })
        }

        ListRow {
            objectName: "secondOpinion"
            visible: viewModel.found
            width: parent.width
            symbol: "pencil"
            text: qsTr("Second opinion")
            detail: opinions.remarks === "" ? qsTr("All of it with its photos, to remark on") : opinions.remarks
            onClicked: page.go("SecondOpinion", {
                sessionId: page.sessionId
            })
        }

        Repeater {
            model: viewModel.cautions

            Caution {
                required property string modelData

                width: parent.width
                text: modelData
                read: true
            }
        }

        Panel {
            width: parent.width
            visible: viewModel.remarks.length > 0

            Column {
                width: parent.width
                spacing: Theme.space

                LText {
                    width: parent.width
                    role: "heading"
                    text: qsTr("Remarks")
                }

                Repeater {
                    model: viewModel.remarks

                    LText {
                        required property string modelData

                        width: parent.width
                        text: modelData
                    }
                }
            }
        }

        // Not before the own call, when nothing is judged.
        SignsLegend {
            width: parent.width
            visible: viewModel.found && Array.from(viewModel.tiles).every(tile => tile.state !== "waiting")
            topPadding: Theme.space
            bottomPadding: Theme.space
        }

        SideButton {
            objectName: "howTo"
            width: parent.width
            text: qsTr("How to, all cards")
            onClicked: page.go("HowTo", {})
        }

        SideButton {
            objectName: "calculators"
            visible: viewModel.found
            width: parent.width
            text: qsTr("Calculators")
            onClicked: page.go("Calculators", {
                sessionId: page.sessionId
            })
        }

        SideButton {
            objectName: "deleteSession"
            visible: viewModel.found
            width: parent.width
            text: qsTr("Delete this session")
            onClicked: sheets.show(confirmation)
        }
    }

    Explainer {
        id: derivation
    }

    SheetLoader {
        id: sheets

        property var tile: ({})
    }

    Component {
        id: figures

        LinesSheet {
            title: sheets.tile.title
            lines: sheets.tile.lines
            onLineTapped: index => page.explainFigure(lines[index].from)
        }
    }

    Component {
        id: confirmation

        ConfirmSheet {
            title: qsTr("Delete this session?")
            text: qsTr("Its readings, photos and notes go with it. Undo brings them back, also later from More in the list of engines, until something else is done.")
            doIt: qsTr("Delete this session")
            onConfirmed: {
                viewModel.removeSession();
                page.back();
            }
        }
    }

    actions: [
        IconWord {
            objectName: "handOver"
            visible: viewModel.found
            symbol: "share"
            text: qsTr("Hand over")
            onClicked: page.go("HandOver", {
                engineId: viewModel.engineId,
                sessionId: page.sessionId
            })
        },
        BigButton {
            objectName: "next"
            visible: viewModel.found
            text: viewModel.nextText
            onClicked: page.go(viewModel.nextPage, viewModel.nextArgs)
        }
    ]
}
