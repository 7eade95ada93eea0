// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QAccessible>
#include <QQuickItem>
#include <QQuickWindow>

#include "tests/app/walk/measure.h"

namespace lapwing::test {

/// Measures what a screen reader and the Tab key find on the screen now. Rules: "name" (nothing to say, a
/// bare sign, or a word of the program), "same name" (two things that can be told apart by nothing that is
/// said), "read order" and "tab order" (back up, or back within a row), "behind" (reached though a sheet lies
/// over it).
class Hearing {
public:
    /// `top` is the page or the sheet that has the screen; `back_to_front` where the language is read from
    /// the right.
    Hearing(QQuickWindow& window, const QQuickItem& top, bool right_to_left);

    /// Names of what can be touched or focused.
    QList<Offence> names();
    /// Order of the screen reader's tree and of the Tab key.
    QList<Offence> order();
    [[nodiscard]] int heard() const { return int(controls_.size()); }

private:
    struct Control {
        const QQuickItem* item;
        QRectF place;    ///< in the window, whole
        QRectF visible;  ///< what its surroundings leave of it
    };

    void collect(const QQuickItem* item, QRectF room, bool enabled);
    void listen(QAccessibleInterface* at, QList<const QQuickItem*>& all) const;
    void in_order(const char* rule, const QList<const QQuickItem*>& order);
    void nothing_behind(const char* how, const QList<const QQuickItem*>& order);

    QQuickWindow& window_;
    const QQuickItem& top_;
    bool right_to_left_;
    QList<Control> controls_;
    QHash<const QQuickItem*, qsizetype> at_;  ///< in controls_
    QList<Offence> offences_;
};

}  // namespace lapwing::test
