// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

import QtQuick

// Made-up cylinders to draw; the figures are illustrative.
QtObject {
    readonly property var twin: [{
            "number": 1,
            "numeral": "1",
            "name": "front",
            "state": "fault",
            "value": 0.63,
            "limit": 0.75,
            "low": 0.8,
            "high": 0.95,
            "u": 0.03,
            "measured": true,
            "row": 0,
            "column": 0
        }, {
            "number": 2,
            "numeral": "2",
            "name": "rear",
            "state": "none",
            "limit": 0.75,
            "low": 0.8,
            "high": 0.95,
            "measured": false,
            "row": 0,
            "column": 1
        }]

    function engine(count: int, rows: int): var {
        const states = ["good", "fault", "borderline", "none"];
        const columns = Math.ceil(count / rows);
        const cylinders = [];
        for (let i = 0; i < count; ++i)
            cylinders.push({
                    "number": i + 1,
                    "numeral": String(i + 1),
                    "name": "",
                    "state": states[i % 4],
                    "value": 0.9 - 0.1 * (i % 4),
                    "limit": 0.7,
                    "low": 0.75,
                    "high": 0.95,
                    "u": 0.03,
                    "measured": i % 4 !== 3,
                    "row": Math.floor(i / columns),
                    "column": i % columns
                });
        return cylinders;
    }
}
