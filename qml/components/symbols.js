// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0
.pragma library

const circle = (x, y, r) => `M${x - r} ${y} a${r} ${r} 0 1 0 ${2 * r} 0 a${r} ${r} 0 1 0 ${-2 * r} 0`;

const paths = {
    back: "M15 5 L8 12 L15 19",
    forward: "M9 5 L16 12 L9 19",
    up: "M5 15 L12 8 L19 15",
    down: "M5 9 L12 16 L19 9",
    backspace: "M8 5 H21 V19 H8 L2 12 Z M11 9 L17 15 M17 9 L11 15",
    photo: "M4 7 H8 L10 4 H14 L16 7 H20 V19 H4 Z " + circle(12, 13, 3.5),
    voice: "M9 6 a3 3 0 0 1 6 0 V11 a3 3 0 0 1 -6 0 Z M6 11 a6 6 0 0 0 12 0 M12 17 V21 M9 21 H15",
    check: "M4 13 L10 19 L20 6",
    plus: "M12 4 V20 M4 12 H20",
    minus: "M4 12 H20",
    close: "M5 5 L19 19 M19 5 L5 19",
    more: "M4 7 H20 M4 12 H20 M4 17 H20",
    search: circle(10, 10, 6) + " M15 15 L20 20",
    share: "M12 15 V3 M7 8 L12 3 L17 8 M5 13 V21 H19 V13",
    open: "M3 19 V5 H9 L11 8 H21 V19 Z",
    undo: "M8 5 L3 10 L8 15 M3 10 H15 a5 5 0 0 1 0 10 H10",
    torch: "M8 3 H16 V8 L14 11 V21 H10 V11 L8 8 Z M12 14 V16",
    swap: "M4 8 H20 L16 4 M20 16 H4 L8 20",
    wipe: "M4 20 H20 M6 16 L15 4 L19 7 L12 16 Z",
    settings: "M4 7 H11 M17 7 H20 M4 17 H7 M13 17 H20 " + circle(14, 7, 3) + " " + circle(10, 17, 3),
    gauge: circle(12, 12, 9) + " M12 12 L7 8",
    turn: "M19 12 a7 7 0 1 1 -3 -5.7 M17 2 V7 H12",
    ear: "M7 10 a5 5 0 0 1 10 0 c0 4 -4 4 -4 8 a3 3 0 0 1 -5 1 M10 10 a2 2 0 0 1 4 0 c0 2 -2 2 -2 3",
    bin: "M4 7 H20 M9 7 V4 H15 V7 M6 7 L7 21 H17 L18 7",
    pencil: "M4 20 L5 15 L16 4 L20 8 L9 19 Z",
    question: "M8 9 a4 4 0 1 1 6 3.4 c-1.4 0.9 -2 1.6 -2 3 M12 19 V19.5",
    play: "M7 4 L19 12 L7 20 Z",
    stop: "M6 6 H18 V18 H6 Z"
};

function path(name) {
    return paths[name] ?? "";
}

function names() {
    return Object.keys(paths);
}
