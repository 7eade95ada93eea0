// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/walk/measure.h"

#include <QFontMetricsF>
#include <QHash>
#include <cmath>

#include "tests/app/harness/thumb.h"

namespace lapwing::test {
namespace {

// Rules of the house (screens): targets in dp, gap between neighbours, contrast of text and marks, least
// readout.
constexpr double primary_target = 76;
constexpr double secondary_target = 56;
constexpr double minor_target = 48;
constexpr double least_gap = 8;
constexpr double least_contrast = 7.0;
constexpr double least_readout = 44;
constexpr double slack = 0.6;  // fractions of a dp

bool is_text(const QQuickItem* item) {
    return item->inherits("QQuickText");
}

bool is_target(const QQuickItem* item) {
    return item->property("targetKind").isValid() &&
           (item->inherits("QQuickAbstractButton") || item->inherits("QQuickTextInput") ||
            item->inherits("QQuickTextEdit"));
}

QString type_of(const QQuickItem* item) {
    return QString::fromLatin1(item->metaObject()->className()).section(QLatin1Char('_'), 0, 0);
}

QString short_text(const QQuickItem* item) {
    QString text = item->property("text").toString().simplified();
    return text.size() > 28 ? text.left(26) + QStringLiteral("..") : text;
}

double luminance(QColor color) {
    const auto part = [](double value) {
        return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * part(color.redF()) + 0.7152 * part(color.greenF()) + 0.0722 * part(color.blueF());
}

QString size_text(QSizeF size) {
    return QStringLiteral("%1 x %2").arg(size.width(), 0, 'f', 0).arg(size.height(), 0, 'f', 0);
}

}  // namespace

QString item_name(const QQuickItem* item) {
    QStringList parts;
    for (const auto* up = item; up && parts.size() < 3; up = up->parentItem()) {
        const QString type = type_of(up);
        if (type.startsWith(QLatin1String("QQuick")) && up->objectName().isEmpty() && up != item) continue;
        parts << type + (up->objectName().isEmpty() ? QString() : QLatin1Char('#') + up->objectName());
    }
    const QString text = short_text(item);
    return parts.join(QStringLiteral(" in ")) +
           (text.isEmpty() ? QString() : QStringLiteral(" \"%1\"").arg(text));
}

double contrast(QColor a, QColor b) {
    const double first = luminance(a), second = luminance(b);
    return (std::max(first, second) + 0.05) / (std::min(first, second) + 0.05);
}

Measure::Measure(const QQuickWindow& window, const QQuickItem& top, QImage picture)
    : window_(window), top_(top), picture_(std::move(picture)) {
    collect(&top_, QRectF(QPointF(), QSizeF(window.size())), false, true, 1.0);
}

void Measure::blame(const char* rule, const QQuickItem* item, const QString& detail) {
    offences_ << Offence{QString::fromLatin1(rule), item_name(item), detail};
}

void Measure::collect(const QQuickItem* item, QRectF room, bool scrolls, bool enabled, double opacity) {
    if (!item->isVisible() || item->opacity() <= 0.0) return;
    const QRectF place = item->mapRectToScene({0, 0, item->width(), item->height()});
    enabled = enabled && item->isEnabled();
    opacity *= item->opacity();
    const Seen seen{item, place, place & room, scrolls};
    if (is_target(item) && enabled) targets_ << seen;
    if (type_of(item) == QLatin1String("BigButton") && !item->property("yields").toBool()) ambers_ << seen;
    if (is_text(item) && !item->property("text").toString().isEmpty()) {
        const Seen text{item, painted_text(item), painted_text(item) & room, scrolls};
        // What can't be used now may stand back.
        if (enabled && opacity > 0.99) texts_ << text;
    }
    if (type_of(item) == QLatin1String("StateMark") && enabled && opacity > 0.99) marks_ << seen;
    const bool flickable = item->inherits("QQuickFlickable");
    if (item->clip() || flickable) room &= place;
    for (const auto* child : painted(item))
        collect(child, room, scrolls || flickable, enabled, opacity);
}

QRectF Measure::painted_text(const QQuickItem* text) {
    const double width = text->property("contentWidth").toDouble();
    const double height = text->property("contentHeight").toDouble();
    const int across = text->property("effectiveHorizontalAlignment").toInt();
    const int down = text->property("verticalAlignment").toInt();
    const double x = across & Qt::AlignHCenter ? (text->width() - width) / 2
                     : across & Qt::AlignRight ? text->width() - width
                                               : 0;
    const double y = down & Qt::AlignVCenter  ? (text->height() - height) / 2
                     : down & Qt::AlignBottom ? text->height() - height
                                              : 0;
    return text->mapRectToScene({x, y, width, height});
}

/// Where the letters themselves are, without the leading round them.
QRectF Measure::inked(const Seen& text) {
    if (text.item->property("lineCount").toInt() != 1) return text.visible;
    const QFontMetricsF metrics(text.item->property("font").value<QFont>());
    const QRectF tight = metrics.tightBoundingRect(text.item->property("text").toString());
    const double baseline =
        text.place.top() + (text.place.height() - metrics.height()) / 2 + metrics.ascent();
    return text.visible &
           QRectF(text.place.left(), baseline + tight.top(), text.place.width(), tight.height());
}

QList<Offence> Measure::offences() {
    measure_targets();
    measure_neighbours();
    measure_texts();
    // One amber action a screen, two panes or one.
    for (qsizetype i = 1; i < ambers_.size(); ++i)
        blame("amber", ambers_[i].item, QStringLiteral("beside %1").arg(item_name(ambers_[0].item)));
    for (const auto& text : texts_)
        measure_contrast(text, text.item->property("color").value<QColor>());
    for (const auto& mark : marks_)
        measure_contrast(mark, mark.item->property("color").value<QColor>());
    return offences_;
}

void Measure::measure_targets() {
    const QRectF screen(QPointF(), QSizeF(window_.size()));
    const bool small = window_.height() < 640 || window_.width() > window_.height();
    for (const auto& [item, place, visible, scrolls] : targets_) {
        const QString kind = item->property("targetKind").toString();
        double least = kind == QLatin1String("primary")     ? primary_target
                       : kind == QLatin1String("secondary") ? secondary_target
                                                            : minor_target;
        if (item->objectName().startsWith(QLatin1String("key_")))
            least = small ? secondary_target : primary_target;
        if (item->height() + slack < least || item->width() + slack < minor_target)
            blame("target", item,
                  QStringLiteral("%1 is %2, least height %3").arg(kind, size_text(item->size())).arg(least));
        if (!scrolls && !screen.adjusted(-slack, -slack, slack, slack).contains(place))
            blame("outside", item,
                  QStringLiteral("reaches from %1, %2 to %3, %4")
                      .arg(place.left(), 0, 'f', 0)
                      .arg(place.top(), 0, 'f', 0)
                      .arg(place.right(), 0, 'f', 0)
                      .arg(place.bottom(), 0, 'f', 0));
    }
}

bool Measure::cut(const Seen& target) {
    return target.visible.isEmpty() || target.visible.height() + slack < target.place.height() ||
           target.visible.width() + slack < target.place.width();
}

void Measure::measure_neighbours() {
    for (qsizetype i = 0; i < targets_.size(); ++i)
        for (qsizetype j = i + 1; j < targets_.size(); ++j) {
            const auto& a = targets_[i];
            const auto& b = targets_[j];
            // What slides under the edge of a list has no neighbour beyond it.
            if (cut(a) || cut(b)) continue;
            if (is_inside(a.item, b.item) || is_inside(b.item, a.item)) continue;
            const double across =
                std::max(a.visible.left(), b.visible.left()) - std::min(a.visible.right(), b.visible.right());
            const double down =
                std::max(a.visible.top(), b.visible.top()) - std::min(a.visible.bottom(), b.visible.bottom());
            if (across < -slack && down < -slack)
                blame("overlap", a.item,
                      QStringLiteral("lies %1 x %2 over %3")
                          .arg(-across, 0, 'f', 0)
                          .arg(-down, 0, 'f', 0)
                          .arg(item_name(b.item)));
            else if (std::min(across, down) <= 0 && std::max(across, down) + slack < least_gap)
                blame(
                    "gap", a.item,
                    QStringLiteral("%1 to %2").arg(std::max(across, down), 0, 'f', 1).arg(item_name(b.item)));
        }
}

void Measure::measure_texts() {
    const double width = window_.width();
    for (const auto& [item, place, visible, scrolls] : texts_) {
        // What is only a taste of something that one touch opens may be cut.
        if (item->property("preview").toBool()) continue;
        if (item->property("truncated").toBool())
            blame("clipped", item,
                  QStringLiteral("is cut short: \"%1\"").arg(item->property("text").toString()));
        else if (place.width() > item->width() + 1.5)
            blame("clipped", item,
                  QStringLiteral("needs %1 of width, has %2")
                      .arg(place.width(), 0, 'f', 0)
                      .arg(item->width(), 0, 'f', 0));
        if (place.left() < -1 || place.right() > width + 1) {
            bool sideways = false;
            for (const auto* up = item->parentItem(); up; up = up->parentItem())
                sideways = sideways || (up->inherits("QQuickFlickable") &&
                                        up->property("contentWidth").toDouble() > up->width() + 1);
            if (!sideways) blame("outside", item, QStringLiteral("text leaves the window sideways"));
        }
        for (const auto* up = item->parentItem(); up; up = up->parentItem()) {
            if (!up->inherits("QQuickAbstractButton")) continue;
            const QRectF button = up->mapRectToScene({0, 0, up->width(), up->height()});
            if (!button.adjusted(-1, -1, 1, 1).contains(place))
                blame("clipped", item,
                      QStringLiteral("text of %1 in a button of %2")
                          .arg(size_text(place.size()), size_text(button.size())));
            break;
        }
        if (item->property("role").toString() == QLatin1String("readout") &&
            item->property("font").value<QFont>().pixelSize() < least_readout)
            blame("readout", item,
                  QStringLiteral("%1 high").arg(item->property("font").value<QFont>().pixelSize()));
    }
    // Shaping a text is most of the work here: once each, and only where two could meet at all.
    QList<QRectF> inks(texts_.size());
    const auto ink = [&](qsizetype i) {
        if (inks[i].isNull()) inks[i] = inked(texts_[i]);
        return inks[i];
    };
    for (qsizetype i = 0; i < texts_.size(); ++i)
        for (qsizetype j = i + 1; j < texts_.size(); ++j) {
            if (!texts_[i].visible.intersects(texts_[j].visible)) continue;
            const QRectF both = ink(i) & ink(j);
            if (both.width() > 1 && both.height() > 1)
                blame("text over text", texts_[i].item,
                      QStringLiteral("%1 over %2").arg(size_text(both.size()), item_name(texts_[j].item)));
        }
}

/// Colours that really lie round a rectangle, those that are seldom left out.
QList<QColor> Measure::ground_around(QRectF rect) const {
    const QRect edge = rect.adjusted(-2, -1, 2, 1).toAlignedRect() & picture_.rect();
    QHash<QRgb, int> count;
    int all = 0;
    const auto look = [&](int x, int y) {
        ++count[picture_.pixel(x, y)];
        ++all;
    };
    for (int x = edge.left(); x <= edge.right(); ++x) {
        look(x, edge.top());
        look(x, edge.bottom());
    }
    for (int y = edge.top(); y <= edge.bottom(); ++y) {
        look(edge.left(), y);
        look(edge.right(), y);
    }
    QList<QColor> colors;
    for (auto it = count.begin(); it != count.end(); ++it)
        if (it.value() * 5 >= all) colors << QColor(it.key());
    return colors;
}

void Measure::measure_contrast(const Seen& text, QColor ink) {
    // Only what can be seen whole: half of it lies under the edge of a list.
    if (text.visible.size() != text.place.size() || text.visible.isEmpty()) return;
    const auto worst = [&](QRectF around) {
        std::pair<double, QColor> found{21.0, ink};
        for (const auto& ground : ground_around(around))
            if (const double here = contrast(ink, ground); here < found.first) found = {here, ground};
        return found;
    };
    auto found = worst(text.visible);
    // The leading of a line may reach to the outline of what stands above it: what counts lies round the
    // letters. Asked only then, since it shapes the text.
    if (found.first + 0.005 < least_contrast) found = worst(inked(text));
    if (found.first + 0.005 < least_contrast)
        blame("contrast", text.item,
              QStringLiteral("%1:1, %2 on %3")
                  .arg(found.first, 0, 'f', 1)
                  .arg(ink.name(), found.second.name()));
}

}  // namespace lapwing::test
