// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Components
import Lapwing.Theme
import Lapwing.ViewModels

// What a pad types into, in one line, where large text leaves no room for rail and fields: the cylinder, which opens
// them all, and the field by its name, which opens a sheet with every field and what is needed seldom.
Row {
    id: line

    required property KeyedModel model
    // What stands between rail and fields, and what of it is chosen.
    property Component between
    property string betweenWord
    property Component seldom

    readonly property var field: Array.from(model.fields).find(one => one.key === model.field) ?? {}
    readonly property var cylinders: Array.from(model.cylinders)

    function close() {
        sheets.active = false;
    }

    spacing: Theme.space

    CylinderTile {
        id: tile

        objectName: "cylinderFold"
        visible: line.cylinders.length > 1
        width: visible ? Math.round(0.36 * line.width) : 0
        height: Theme.minorTarget
        cylinder: line.cylinders[line.model.currentIndex] ?? {}
        selected: true
        onClicked: {
            sheets.sourceComponent = grid;
            sheets.active = true;
        }
    }

    Pressable {
        id: button

        objectName: "fieldsFold"
        width: line.width - (tile.visible ? tile.width + line.spacing : 0)
        height: Theme.minorTarget
        targetKind: "minor"
        fill: Theme.panel
        outlineColor: Theme.hairline
        padding: 4
        horizontalPadding: 8
        text: [line.betweenWord, line.field.label ?? ""].filter(word => word !== "").join(", ")
        Accessible.description: qsTr("All fields and what else there is")
        onClicked: {
            sheets.sourceComponent = all;
            sheets.active = true;
        }

        inside: Item {
            LText {
                anchors.left: parent.left
                anchors.right: picture.left
                anchors.rightMargin: 4
                height: parent.height
                verticalAlignment: Text.AlignVCenter
                silent: true
                role: "figure"
                text: button.text
                wrapMode: Text.NoWrap
                fontSizeMode: Text.HorizontalFit
                minimumPixelSize: 16
                elide: Text.ElideRight
            }

            Symbol {
                id: picture

                name: "down"
                size: 22
                anchors.right: parent.right
                anchors.verticalCenter: parent.verticalCenter
            }
        }
    }

    Loader {
        id: sheets

        active: false
    }

    Component {
        id: grid

        CylinderGridSheet {
            cylinders: line.cylinders
            current: line.model.currentIndex
            columnCount: line.cylinders.reduce((most, cylinder, i) => Math.max(most, (cylinder.column ?? i) + 1), 1)
            onChosen: index => line.model.choose(index)
            onClosed: sheets.active = false
            Component.onCompleted: open()
        }
    }

    Component {
        id: all

        Sheet {
            id: sheet

            title: qsTr("Fields")
            onClosed: sheets.active = false
            Component.onCompleted: open()

            Loader {
                width: parent.width
                visible: status === Loader.Ready
                sourceComponent: line.between
            }

            FieldTabs {
                width: parent.width
                fields: line.model.fields
                current: line.model.field
                onChosen: key => {
                    line.model.focusField(key);
                    sheet.close();
                }
                onStepped: (key, by) => line.model.step(key, by)
            }

            Loader {
                width: parent.width
                visible: status === Loader.Ready
                sourceComponent: line.seldom
            }
        }
    }
}
