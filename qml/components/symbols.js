// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0
.pragma library

// In LineDrawing's words, on a grid of 24 x 24.
const paths = {
    back: "M 15 5 L 8 12 L 15 19",
    forward: "M 9 5 L 16 12 L 9 19",
    up: "M 5 15 L 12 8 L 19 15",
    down: "M 5 9 L 12 16 L 19 9",
    backspace: "M 8 5 L 21 5 L 21 19 L 8 19 L 2 12 Z M 11 9 L 17 15 M 17 9 L 11 15",
    photo: "M 4 7 L 8 7 L 10 4 L 14 4 L 16 7 L 20 7 L 20 19 L 4 19 Z O 12 13 3.5",
    voice: "B 9 3 6 11 3 M 6 11 A 12 11 6 180 180 M 12 17 L 12 21 M 9 21 L 15 21",
    check: "M 4 13 L 10 19 L 20 6",
    plus: "M 12 4 L 12 20 M 4 12 L 20 12",
    minus: "M 4 12 L 20 12",
    close: "M 5 5 L 19 19 M 19 5 L 5 19",
    more: "M 4 7 L 20 7 M 4 12 L 20 12 M 4 17 L 20 17",
    search: "O 10 10 6 M 15 15 L 20 20",
    share: "M 12 15 L 12 3 M 7 8 L 12 3 L 17 8 M 5 13 L 5 21 L 19 21 L 19 13",
    open: "M 3 19 L 3 5 L 9 5 L 11 8 L 21 8 L 21 19 Z",
    undo: "M 8 5 L 3 10 L 8 15 M 3 10 L 15 10 A 15 15 5 90 -180 L 10 20",
    redo: "M 16 5 L 21 10 L 16 15 M 21 10 L 9 10 A 9 15 5 90 180 L 14 20",
    torch: "M 8 3 L 16 3 L 16 8 L 14 11 L 14 21 L 10 21 L 10 11 L 8 8 Z M 12 14 L 12 16",
    swap: "M 4 8 L 20 8 L 16 4 M 20 16 L 4 16 L 8 20",
    wipe: "M 4 20 L 20 20 M 6 16 L 15 4 L 19 7 L 12 16 Z",
    settings: "M 4 7 L 11 7 M 17 7 L 20 7 M 4 17 L 7 17 M 13 17 L 20 17 O 14 7 3 O 10 17 3",
    gauge: "O 12 12 9 M 12 12 L 7 8",
    turn: "M 19 12 A 12 12 7 0 -300 M 17 2 L 17 7 L 12 7",
    ear: "M 7 10 A 12 10 5 180 -180 Q 17 12 15 14 Q 13 16 13 18 A 10.5 18 2.5 0 -150 M 10 10 A 12 10 2 180 -180 Q 14 11 13 12.5 Q 12 13.5 12 15",
    bin: "M 4 7 L 20 7 M 9 7 L 9 4 L 15 4 L 15 7 M 6 7 L 7 21 L 17 21 L 18 7",
    pencil: "M 4 20 L 5 15 L 16 4 L 20 8 L 9 19 Z",
    question: "M 8 9 A 12 9 4 180 -250 Q 12 14 12 16 M 12 19.5 L 12 19.6",
    play: "M 7 4 L 19 12 L 7 20 Z",
    stop: "M 6 6 L 18 6 L 18 18 L 6 18 Z"
};

function path(name) {
    return paths[name] ?? "";
}
