// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma Singleton
import QtQuick
import Lapwing.Theme

// The tokens of the two looks. The app sets the writable properties; everything else follows.
QtObject {
    id: theme

    property bool dark: true
    // The system's text size, 1.0 to 2.0.
    property real textScale: 1
    property bool bigKeys: false
    property bool leftHand: false
    property bool reducedMotion: false
    property bool rightToLeft: Qt.locale().textDirection === Qt.RightToLeft

    readonly property color ground: dark ? "#14181B" : "#F6F3EA"
    readonly property color panel: dark ? "#1F262A" : "#FFFFFF"
    readonly property color key: dark ? "#2A3237" : "#E6DFCD"
    readonly property color keyPressed: dark ? "#353F46" : "#D2C8AF"
    readonly property color hairline: dark ? "#1F262A" : "#D8D0BC"
    readonly property color chosen: dark ? "#1A2731" : "#EEF5FA"
    readonly property color scrim: "#99000000"
    readonly property color ink: dark ? "#F4F1E6" : "#14181B"
    readonly property color quietInk: dark ? "#D8D4C6" : "#3A382F"
    readonly property color act: "#F2B134"
    readonly property color actPressed: "#D99A1E"
    readonly property color actInk: "#14181B"
    readonly property color actOutline: dark ? "transparent" : "#14181B"
    readonly property color good: dark ? "#38D3A6" : "#00563F"
    readonly property color borderline: dark ? "#F5E663" : "#5E5200"
    readonly property color fault: dark ? "#FF9466" : "#8F2D06"
    readonly property color info: dark ? "#7CC4F2" : "#064C78"

    // Leak paths look the same in both looks, and so does the ink on them.
    readonly property color rings: "#7FB8DD"
    readonly property color intake: "#B9A6E8"
    readonly property color exhaust: "#F2A0B5"
    readonly property color gasket: "#CFC7A8"
    readonly property color other: "#9FD8C0"
    readonly property color inkOnPath: "#14181B"

    readonly property int space: 8
    readonly property int gap: 12
    readonly property int corner: 14
    readonly property int outline: 2

    readonly property int primaryTarget: 76
    readonly property int secondaryTarget: 56
    readonly property int minorTarget: 48
    readonly property int gloveKey: 120

    readonly property int motion: reducedMotion ? 0 : 150

    readonly property string family: Typeface.family

    readonly property int titleSize: textSize(20)
    readonly property int headingSize: textSize(18)
    readonly property int bodySize: textSize(16)
    readonly property int labelSize: textSize(14)
    readonly property int buttonSize: textSize(20)
    readonly property int keySize: textSize(28)
    readonly property int numeralSize: textSize(36)
    readonly property int readoutSize: Math.min(textSize(80), 112)
    // No readout may shrink below this to fit, whatever the screen.
    readonly property int readoutFloor: 44
    // Marks grow with the text, but not as far.
    readonly property real markSize: 22 * Math.min(1.5, Math.max(1, textScale))

    function textSize(dp: real): int {
        return Math.round(dp * Math.min(2, Math.max(1, textScale)));
    }

    // Phones lying down and the smallest phones: shorter pad keys, fewer lines.
    function isCompact(width: real, height: real): bool {
        return height < 640 || width > height && height < 840;
    }

    // Tablets and desktop windows: two panes side by side.
    function isWide(width: real): bool {
        return width >= 840;
    }

    function padKeyHeight(width: real, height: real): int {
        if (bigKeys)
            return gloveKey;
        return isCompact(width, height) ? secondaryTarget : primaryTarget;
    }

    // `state` is "good", "borderline", "fault" or "none".
    function stateColor(state: string): color {
        switch (state) {
        case "good":
            return good;
        case "borderline":
            return borderline;
        case "fault":
            return fault;
        default:
            return quietInk;
        }
    }

    // `path` is "rings", "intake", "exhaust", "gasket" (and "next_cylinder", "coolant", which it seals) or "other".
    function pathColor(path: string): color {
        switch (path) {
        case "rings":
            return rings;
        case "intake":
            return intake;
        case "exhaust":
            return exhaust;
        case "gasket":
        case "next_cylinder":
        case "coolant":
            return gasket;
        default:
            return other;
        }
    }
}
