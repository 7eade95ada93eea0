// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QImage>
#include <QQuickItem>
#include <QQuickWindow>
#include <QStringList>
#include <tuple>

namespace lapwing::test {

/// Something on a screen that breaks a rule of the house.
struct Offence {
    QString rule;    ///< "target", "gap", "amber", "overlap", "outside", "clipped", "text over text",
                     ///< "contrast", "readout"; what is heard: Hearing
    QString item;    ///< where in the page, from the inside out
    QString detail;  ///< what was measured

    bool operator<(const Offence& other) const {
        return std::tie(rule, item, detail) < std::tie(other.rule, other.item, other.detail);
    }
};

/// Where an item stands, from the inside out, with its text.
QString item_name(const QQuickItem* item);

/// Measures what stands on the screen now: targets, gaps, places, text, contrast. Lengths in dp.
class Measure {
public:
    /// `top` is the page or the sheet that has the screen; `picture` is the window as it looks now.
    Measure(const QQuickWindow& window, const QQuickItem& top, QImage picture);

    QList<Offence> offences();
    [[nodiscard]] int targets() const { return int(targets_.size()); }
    [[nodiscard]] int texts() const { return int(texts_.size()); }

private:
    struct Seen {
        const QQuickItem* item;
        QRectF place;    ///< in the window, whole
        QRectF visible;  ///< what its surroundings leave of it
        bool scrolls = false;
    };

    void collect(const QQuickItem* item, QRectF room, bool scrolls, bool enabled, double opacity);
    void measure_targets();
    void measure_neighbours();
    void measure_texts();
    void measure_contrast(const Seen& text, QColor ink);
    void blame(const char* rule, const QQuickItem* item, const QString& detail);
    [[nodiscard]] QList<QColor> ground_around(QRectF rect) const;
    [[nodiscard]] static QRectF painted_text(const QQuickItem* text);
    [[nodiscard]] static QRectF inked(const Seen& text);
    [[nodiscard]] static bool cut(const Seen& target);

    const QQuickWindow& window_;
    const QQuickItem& top_;
    QImage picture_;
    QList<Seen> targets_;
    QList<Seen> texts_;
    QList<Seen> marks_;
    QList<Seen> ambers_;
    QList<Offence> offences_;
};

/// Contrast of two opaque colours as WCAG 2.2 defines it, 1 to 21.
double contrast(QColor a, QColor b);

}  // namespace lapwing::test
