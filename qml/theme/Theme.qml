// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

pragma Singleton
import QtQuick
import Lapwing.Theme

// The tokens of the two looks, and what is worked out from them. The app sets the writable ones; everything else
// follows.
Tokens {
    // What sheets lie on while one is open, or null.
    property Item sheets: null

    // Under an open sheet nothing is read out, and no screen reader presses anything.
    function isBehind(item: Item): bool {
        if (!sheets)
            return false;
        for (let up = item; up; up = up.parent)
            if (up === sheets)
                return false;
        return true;
    }

    function textSize(dp: real): int {
        return Math.round(dp * Math.min(2, Math.max(1, textScale)));
    }

    // Phones lying down and the smallest phones: shorter pad keys, fewer lines.
    function isCompact(width: real, height: real): bool {
        return height < 640 || width > height && height < 840;
    }

    // There with large text: every line of a head or a button is one of the page's few.
    function isCrowded(width: real, height: real): bool {
        return textScale > 1.3 && isCompact(width, height);
    }

    // The size of words that stand outside the page's own room, in a head or in a bar of buttons.
    function frameSize(dp: real, crowded: bool): int {
        return crowded ? Math.min(textSize(dp), Math.round(1.4 * dp)) : textSize(dp);
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
