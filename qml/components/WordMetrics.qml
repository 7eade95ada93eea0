// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick
import Lapwing.Theme

// How wide bold words are, for those who must not break one in two.
FontMetrics {
    font.family: Theme.family
    font.pixelSize: 100
    font.bold: true

    function widest(text: string, size: real): real {
        return Math.max(0, ...text.split(" ").map(word => advanceWidth(word))) / 100 * size;
    }

    // `size`, or as much smaller as the widest word needs to fit into `width`.
    function fitting(text: string, size: real, width: real): int {
        const needed = widest(text, size);
        return width > 0 && needed > width ? Math.floor(size * width / needed) : size;
    }
}
