// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0
.pragma library

function circles(w, h, step, r) {
    let d = "";
    for (let y = step / 2; y + r <= h; y += step)
        for (let x = step / 2; x + r <= w; x += step)
            d += `O ${x} ${y} ${r} `;
    return d;
}

// Parallel lines across a rectangle, cut at its edges; `rising` from bottom left to top right.
function slants(w, h, step, rising) {
    let d = "";
    for (let c = step; c < w + h; c += step) {
        const x0 = Math.min(c, w), y0 = c - x0;
        const y1 = Math.min(c, h), x1 = c - y1;
        d += rising ? `M ${x0} ${y0} L ${x1} ${y1} ` : `M ${w - x0} ${y0} L ${w - x1} ${y1} `;
    }
    return d;
}

function lines(path, w, h) {
    if (w <= 0 || h <= 0)
        return "";
    switch (path) {
    case "intake":
        return circles(w, h, 8, 1.5);
    case "exhaust":
        return slants(w, h, 8, true);
    case "gasket":
        return slants(w, h, 7, true) + slants(w, h, 7, false);
    case "other":
        return circles(w, h, 11, 3.5);
    default:
        return "";
    }
}
