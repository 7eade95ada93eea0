// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/walk/hearing.h"

#include <QRegularExpression>
#include <algorithm>
#include <iterator>

#include "tests/app/harness/thumb.h"

namespace lapwing::test {
namespace {

bool is_control(const QQuickItem* item) {
    return item->activeFocusOnTab() || item->inherits("QQuickAbstractButton") ||
           item->inherits("QQuickTextInput") || item->inherits("QQuickTextEdit");
}

/// What a reader says of the thing itself.
QString spoken(const QQuickItem* item, QAccessible::Text what) {
    auto* heard = QAccessible::queryAccessibleInterface(const_cast<QQuickItem*>(item));
    return heard ? heard->text(what).simplified() : QString();
}

/// With what a reader says on entering what it stands in: a group, an alert, one of two panes.
QString spoken_whole(const QQuickItem* item) {
    QStringList said{spoken(item, QAccessible::Name), spoken(item, QAccessible::Description)};
    auto* heard = QAccessible::queryAccessibleInterface(const_cast<QQuickItem*>(item));
    for (auto* up = heard ? heard->parent() : nullptr; up && qobject_cast<QQuickItem*>(up->object());
         up = up->parent())
        if (up->role() == QAccessible::Grouping || up->role() == QAccessible::AlertMessage ||
            up->role() == QAccessible::Pane)
            said << up->text(QAccessible::Name).simplified();
    return said.join(QLatin1Char('\n'));
}

/// Why a name says nothing to a person; empty when it does.
QString dumb(const QString& name) {
    if (name.isEmpty()) return QStringLiteral("has no name");
    if (std::none_of(name.begin(), name.end(), [](QChar c) { return c.isLetterOrNumber(); }))
        return QStringLiteral("is called by a bare sign: \"%1\"").arg(name);
    // key_7, addNote, or the id of a record.
    static const QRegularExpression word(
        QStringLiteral("^[a-z]+(_[A-Za-z0-9]+|[A-Z][a-z]{2,})+$|"
                       "[0-9a-f]{8}-[0-9a-f]{4}-|<[a-z/]|^(undefined|null)$"));
    if (word.match(name).hasMatch())
        return QStringLiteral("is called by a word of the program: \"%1\"").arg(name);
    return {};
}

bool in_action_bar(const QQuickItem* item) {
    for (; item; item = item->parentItem())
        if (QByteArray(item->metaObject()->className()).startsWith("ActionBar_")) return true;
    return false;
}

/// The switch of an item's own LayoutMirroring, which hangs on it as a child; null where it has none.
const QObject* mirroring(const QQuickItem* item) {
    for (const auto* child : item->children())
        if (child->inherits("QQuickLayoutMirroringAttached")) return child;
    return nullptr;
}

/// Whether a row of both runs from the right: as what they stand in together says, or what that stands in.
/// Digits and cylinders run from the left in every language.
bool from_the_right(const QQuickItem* a, const QQuickItem* b, bool otherwise) {
    const auto* both = a;
    while (both && !is_inside(b, both))
        both = both->parentItem();
    bool handed_down = true;
    for (const auto* up = both; up; up = up->parentItem()) {
        const auto* said = mirroring(up);
        if (said && (handed_down || said->property("childrenInherit").toBool()))
            return said->property("enabled").toBool();
        // A list lays out what lies on its surface.
        handed_down = up == both && up->parentItem() && up->parentItem()->inherits("QQuickFlickable");
    }
    return otherwise;
}

}  // namespace

Hearing::Hearing(QQuickWindow& window, const QQuickItem& top, bool right_to_left)
    : window_(window), top_(top), right_to_left_(right_to_left) {
    collect(&top_, QRectF(QPointF(), QSizeF(window.size())), true);
}

void Hearing::collect(const QQuickItem* item, QRectF room, bool enabled) {
    if (!item->isVisible() || item->opacity() <= 0.0) return;
    const QRectF place = item->mapRectToScene({0, 0, item->width(), item->height()});
    enabled = enabled && item->isEnabled();
    if (enabled && is_control(item) && !(place & room).isEmpty()) {
        at_[item] = controls_.size();
        controls_ << Control{item, place, place & room};
    }
    if (item->clip() || item->inherits("QQuickFlickable")) room &= place;
    for (const auto* child : item->childItems())
        collect(child, room, enabled);
}

QList<Offence> Hearing::names() {
    offences_.clear();
    QHash<QString, const QQuickItem*> said;
    for (const auto& control : controls_) {
        const QString name = spoken(control.item, QAccessible::Name);
        if (const QString why = dumb(name); !why.isEmpty()) {
            offences_ << Offence{QStringLiteral("name"), item_name(control.item), why};
            continue;
        }
        const QString whole = spoken_whole(control.item);
        if (const auto* other = said.value(whole))
            offences_ << Offence{QStringLiteral("same name"), item_name(control.item),
                                 QStringLiteral("\"%1\" is %2 too").arg(name, item_name(other))};
        said[whole] = control.item;
    }
    return offences_;
}

void Hearing::listen(QAccessibleInterface* at, QList<const QQuickItem*>& all) const {
    if (!at) return;
    if (const auto* item = qobject_cast<const QQuickItem*>(at->object())) {
        if (at->state().invisible) return;
        // A page's surface says nothing by itself.
        if (is_control(item) || !at->text(QAccessible::Name).isEmpty()) all << item;
    }
    for (int i = 0, count = at->childCount(); i < count; ++i)
        listen(at->child(i), all);
}

QList<Offence> Hearing::order() {
    offences_.clear();
    QList<const QQuickItem*> all;
    listen(QAccessible::queryAccessibleInterface(&window_), all);
    nothing_behind("read out", all);
    QList<const QQuickItem*> read;
    std::copy_if(all.begin(), all.end(), std::back_inserter(read), [](const auto* item) {
        return is_control(item) &&
               !QAccessible::queryAccessibleInterface(const_cast<QQuickItem*>(item))->state().disabled;
    });
    in_order("read order", read);
    for (const auto& control : controls_)
        if (!read.contains(control.item))
            offences_ << Offence{QStringLiteral("name"), item_name(control.item),
                                 QStringLiteral("is not read out")};

    QList<const QQuickItem*> tabbed;
    auto* from = window_.activeFocusItem() ? window_.activeFocusItem() : window_.contentItem();
    for (QQuickItem* at = from->nextItemInFocusChain(true); at && !tabbed.contains(at);
         at = at->nextItemInFocusChain(true))
        tabbed << at;
    // The ring starts where the focus is, not where the page does.
    const auto first = std::min_element(tabbed.begin(), tabbed.end(), [&](const auto* a, const auto* b) {
        return read.indexOf(a) < read.indexOf(b);
    });
    std::rotate(tabbed.begin(), first, tabbed.end());
    in_order("tab order", tabbed);
    nothing_behind("reached by Tab", tabbed);
    return offences_;
}

/// A step goes back when what comes next lies wholly above what came before and not in a column further on,
/// or in the same row (its middle beside the other's) and before it. Into the bar of actions none does: lying
/// down it stands beside the digits, and Keep comes after them wherever it is.
void Hearing::in_order(const char* rule, const QList<const QQuickItem*>& order) {
    const Control* before = nullptr;
    for (const auto* item : order) {
        const auto found = at_.constFind(item);
        if (found == at_.constEnd()) continue;
        const auto& next = controls_[*found];
        const bool to_actions = in_action_bar(item) && before && !in_action_bar(before->item);
        if (before && !to_actions && !is_inside(item, before->item)) {
            const QRectF a = before->visible, b = next.visible;
            const bool leftwards = right_to_left_ && from_the_right(before->item, item, true);
            const bool further_on = leftwards ? b.right() <= a.left() + 1 : b.left() >= a.right() - 1;
            const bool further_back = leftwards ? b.left() >= a.right() - 1 : b.right() <= a.left() + 1;
            const bool above = b.bottom() <= a.top() + 1;
            const bool same_row =
                std::abs(a.center().y() - b.center().y()) < std::min(a.height(), b.height()) / 2;
            if ((above && !further_on) || (same_row && further_back))
                offences_ << Offence{QString::fromLatin1(rule), item_name(item),
                                     QStringLiteral("comes after %1").arg(item_name(before->item))};
        }
        before = &next;
    }
}

void Hearing::nothing_behind(const char* how, const QList<const QQuickItem*>& order) {
    for (const auto* item : order)
        if (!is_inside(item, &top_))
            offences_ << Offence{QStringLiteral("behind"), item_name(item), QString::fromLatin1(how)};
}

}  // namespace lapwing::test
