// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T
import Lapwing.Theme
import Lapwing.Components

Window {
    id: window

    readonly property var scenes: ["pad", "tiles", "rows", "cards", "shares", "rails", "sheet", "grid", "rows-rtl", "tiles-rtl"]
    readonly property var words: ["nothing", "faint", "clear", "strong"]
    readonly property var paths: ["rings", "intake", "exhaust", "gasket", "other"]
    readonly property Samples samples: Samples {
    }

    function present(name: string, dark: bool, scale: real) {
        Theme.dark = dark;
        Theme.textScale = scale;
        Theme.reducedMotion = true;
        Theme.rightToLeft = name.endsWith("-rtl");
        stack.clear();
        stack.push(({
                    "pad": padScene,
                    "tiles": tilesScene,
                    "rows": rowsScene,
                    "cards": cardsScene,
                    "shares": sharesScene,
                    "rails": railsScene,
                    "sheet": sheetScene,
                    "grid": gridScene
                })[name.split("-")[0]]);
    }

    width: 412
    height: 915
    visible: true
    color: Theme.ground

    T.StackView {
        id: stack

        anchors.fill: parent
    }

    Component {
        id: padScene

        AppPage {
            id: page

            title: "Leak-down"
            subtitle: "Orchard V-twin · warm · breather open"

            CylinderRail {
                id: rail

                width: parent.width
                tileHeight: page.compact || Theme.textScale > 1.3 ? 56 : 128
                cylinders: window.samples.twin
            }

            ReadoutField {
                anchors.top: rail.bottom
                anchors.topMargin: Theme.space
                width: parent.width
                caption: "Cylinder 1 held, of 5.5 bar set"
                value: "3.50"
                unit: "bar"
                caret: true
                linesShown: page.compact || Theme.textScale > 1.3 ? 0 : 2
                lines: [{
                        "mark": "fault",
                        "figure": "36 %",
                        "text": "± 3 leakage on this tester"
                    }, {
                        "symbol": "swap",
                        "figure": "35 – 41 %",
                        "text": "on a 7 bar tester"
                    }]
            }

            NumberPad {
                width: parent.width
                height: implicitHeight
                anchors.bottom: parent.bottom
            }

            actions: [
                IconWord {
                    symbol: "photo"
                    text: "Photo"
                    targetKind: "primary"
                },
                IconWord {
                    symbol: "voice"
                    text: "Voice"
                    targetKind: "primary"
                },
                BigButton {
                    text: "Keep, listen"
                }
            ]
        }
    }

    Component {
        id: tilesScene

        AppPage {
            title: "Orchard V-twin"
            subtitle: "Session of 14 March · 240 m · 9 °C"

            ScrollColumn {
                anchors.fill: parent

                Tile {
                    width: parent.width
                    title: "Prepare"
                    detail: "Done, all but the battery charger"
                    state: "borderline"
                }

                Tile {
                    width: parent.width
                    title: "Dry test"
                    detail: "6.1 and 7.7 bar, factory limit 7.8 here"
                    state: "fault"
                    cylinders: window.samples.twin
                }

                Panel {
                    width: parent.width
                    selected: true

                    LText {
                        width: parent.width
                        role: "heading"
                        text: "Worth doing next"
                    }
                }

                Caution {
                    width: parent.width
                    text: "The engine can turn without warning: nobody near crank, fan, wheel or propeller, no tool left on the crank. Raise the pressure slowly."
                }

                Caution {
                    width: parent.width
                    read: true
                    text: "A little oil only: too much locks the engine and can bend a rod."
                }

                StateWord {
                    state: "good"
                }

                ProgressWord {
                    done: 3
                    total: 6
                }
            }

            Snack {
                id: snack

                anchors.bottom: parent.bottom
                width: parent.width
                Component.onCompleted: show("Cylinder 2 kept: 7.7 bar", "undo")
            }

            actions: BigButton {
                text: "Leak-down, cylinder 2"
            }
        }
    }

    Component {
        id: rowsScene

        AppPage {
            title: "Settings"

            ScrollColumn {
                anchors.fill: parent

                TextRow {
                    width: parent.width
                    label: "Name"
                    text: "Orchard V-twin"
                    hint: "As it stands on the engine card"
                }

                NumberRow {
                    width: parent.width
                    label: "Bore"
                    text: "84.0"
                    unit: "mm"
                    unitChoices: true
                }

                NumberRow {
                    width: parent.width
                    label: "Set pressure"
                    placeholder: "as on the dial"
                    unit: "bar"
                    problem: "This is over the dial's range of 10 bar. Check the figure."
                }

                ChoiceRow {
                    width: parent.width
                    label: "Exhaust"
                    options: window.words.map(word => ({
                                    "value": word,
                                    "text": word
                                }))
                    current: "clear"
                }

                CheckRow {
                    width: parent.width
                    text: "Throttle wide open"
                    detail: "Look down the intake: the plate stands level"
                    checked: true
                }

                SwitchRow {
                    width: parent.width
                    text: "Big keys"
                    detail: "For thick gloves"
                    checked: true
                }

                ListRow {
                    width: parent.width
                    text: "Units"
                    detail: "Pressure, length, temperature"
                    figure: "bar"
                }

                NoteRow {
                    width: parent.width
                    label: "Note"
                    placeholder: "What was seen or heard"
                }
            }
        }
    }

    Component {
        id: cardsScene

        AppPage {
            title: "A page with a long title that needs two lines and more"
            subtitle: "and a subtitle"

            ScrollColumn {
                anchors.fill: parent

                FieldTabs {
                    width: parent.width
                    current: "final"
                    fields: [{
                            "key": "first",
                            "label": "First",
                            "value": "3.1"
                        }, {
                            "key": "final",
                            "label": "Final",
                            "value": "9.25"
                        }, {
                            "key": "pulls",
                            "label": "Pulls",
                            "value": "6",
                            "stepper": true
                        }]
                }

                ErrorCard {
                    width: parent.width
                    heading: "The session file is cut short"
                    message: "orchard.lapwing ends in the middle of photo 3. Ask for it to be sent again."
                    action: "Open another file"
                }

                EmptyState {
                    width: parent.width
                    heading: "No engines yet"
                    text: "Add the first one, or look at the demo."

                    SideButton {
                        width: parent.width
                        text: "Open a session file"
                    }
                }
            }

            actions: [
                SideButton {
                    text: "Hand over"
                    targetKind: "primary"
                },
                BigButton {
                    text: "Plan"
                }
            ]
        }
    }

    Component {
        id: sharesScene

        AppPage {
            title: "Findings"

            ScrollColumn {
                anchors.fill: parent

                Panel {
                    width: parent.width

                    Column {
                        width: parent.width
                        spacing: 8

                        SplitBar {
                            width: parent.width
                            shares: window.paths.map((path, i) => ({
                                            "path": path,
                                            "name": path,
                                            "label": path + " " + [15, 10, 55, 8, 12][i] + " %",
                                            "share": [15, 10, 55, 8, 12][i] / 100
                                        }))
                        }

                        Row {
                            spacing: 8

                            Repeater {
                                model: ["rings", "intake", "exhaust", "gasket", "other"]

                                PathPattern {
                                    required property string modelData

                                    path: modelData
                                    width: 40
                                    height: 40
                                }
                            }
                        }
                    }
                }

                Row {
                    spacing: 12

                    Repeater {
                        model: ["good", "borderline", "fault", "none"]

                        BoreGlyph {
                            required property string modelData
                            required property int index

                            width: 24 + 12 * index
                            height: 40 + 27 * index
                            state: modelData
                            measured: modelData !== "none"
                            value: 0.7
                            limit: 0.6
                            low: 0.75
                            high: 0.95
                            u: 0.05
                        }
                    }
                }

                Row {
                    spacing: 12

                    Repeater {
                        model: ["good", "borderline", "fault", "none"]

                        StateMark {
                            required property string modelData

                            state: modelData
                            size: 40
                        }
                    }
                }

                Grid {
                    width: parent.width
                    columns: 4
                    spacing: 8

                    Repeater {
                        model: ["photo", "voice", "check", "share", "open", "undo", "torch", "swap", "wipe", "settings", "gauge", "turn", "ear", "bin", "pencil", "question", "play", "stop", "search", "more"]

                        IconWord {
                            required property string modelData

                            symbol: modelData
                            text: modelData
                        }
                    }
                }
            }
        }
    }

    Component {
        id: railsScene

        AppPage {
            title: "Rails"

            ScrollColumn {
                anchors.fill: parent

                Repeater {
                    model: [[1, 1], [4, 1], [6, 1], [6, 2], [16, 2]]

                    CylinderRail {
                        required property var modelData

                        width: parent.width
                        cylinders: window.samples.engine(modelData[0], modelData[1])
                        current: modelData[0] > 6 ? 8 : 1
                    }
                }
            }
        }
    }

    Component {
        id: sheetScene

        AppPage {
            title: "Sheet"

            DerivationSheet {
                visible: true
                steps: [{
                        "title": "Leakage on this tester",
                        "formula": "leakage = 1 - held / set",
                        "inputs": [{
                                "name": "set",
                                "value": "5.5 bar ± 0.1"
                            }, {
                                "name": "held",
                                "value": "3.50 bar ± 0.1"
                            }],
                        "source": "common practice of the trade",
                        "doubtsTitle": "Its ± comes from",
                        "doubts": [
                            {
                                "name": "gauge, its class and zero",
                                "value": "62 %"
                            },
                            {
                                "name": "the leak, from one reading to the next",
                                "value": "38 %"
                            }
                        ]
                    }]

                actions: SideButton {
                    text: "Copy"
                }
            }
        }
    }

    Component {
        id: gridScene

        AppPage {
            title: "Grid"

            CylinderGridSheet {
                visible: true
                cylinders: window.samples.engine(16, 2)
                columnCount: 8
                current: 4
            }
        }
    }
}
