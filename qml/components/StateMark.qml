// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import QtQuick.Shapes
import Lapwing.Theme

// The shape of a state: "good" a filled disc, "borderline" a half disc, "fault" an open triangle and "none" a
// dashed ring.
Item {
    id: mark

    required property string state
    property real size: 22
    property bool silent: false
    property color color: Theme.stateColor(state)

    implicitWidth: size
    implicitHeight: size

    Accessible.role: Accessible.Graphic
    Accessible.name: States.word(state)
    Accessible.ignored: silent

    Shape {
        width: 24
        height: 24
        scale: mark.size / 24
        transformOrigin: Item.TopLeft

        ShapePath {
            strokeColor: mark.color
            strokeWidth: 2.5
            strokeStyle: mark.state === "none" ? ShapePath.DashLine : ShapePath.SolidLine
            dashPattern: [1.35, 1.1]
            capStyle: ShapePath.FlatCap
            joinStyle: ShapePath.RoundJoin
            fillColor: mark.state === "good" ? mark.color : "transparent"

            PathSvg {
                path: mark.state === "fault" ? "M12 3 L22 20.5 H2 Z" : "M2.5 12 a9.5 9.5 0 1 1 19 0 a9.5 9.5 0 1 1 -19 0"
            }
        }

        ShapePath {
            strokeColor: "transparent"
            fillColor: mark.state === "borderline" ? mark.color : "transparent"

            PathSvg {
                path: "M12 2.5 a9.5 9.5 0 0 0 0 19 Z"
            }
        }
    }
}
