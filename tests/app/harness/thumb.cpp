// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/harness/thumb.h"

#include <QElapsedTimer>
#include <QTest>
#include <QTextDocumentFragment>
#include <algorithm>

namespace lapwing::test {
namespace {

constexpr int styled_text = 4;  // Text.StyledText, whose enumeration has no public header

bool shows(const QQuickItem* item) {
    return item->isVisible() && item->opacity() > 0.0;
}

QQuickItem* find_in(QQuickItem* item, const QString& name) {
    if (!shows(item)) return nullptr;
    const auto children = painted(item);
    for (auto child = children.rbegin(); child != children.rend(); ++child)
        if (auto* found = find_in(*child, name)) return found;
    return item->objectName() == name ? item : nullptr;
}

QQuickItem* taker_in(QQuickItem* item, QPointF scene) {
    if (!shows(item)) return nullptr;
    const QPointF here = item->mapFromScene(scene);
    if (item->clip() && !item->contains(here)) return nullptr;
    const auto children = painted(item);
    for (auto child = children.rbegin(); child != children.rend(); ++child)
        if (auto* found = taker_in(*child, scene)) return found;
    const bool takes = item->acceptedMouseButtons() != Qt::NoButton || item->acceptTouchEvents();
    return takes && item->isEnabled() && item->contains(here) ? item : nullptr;
}

void gather(const QQuickItem* item, QStringList& words) {
    if (!shows(item)) return;
    // Figures stay with their units on the screen; that is no other text.
    const QString text = item->property("text").toString().replace(QChar::Nbsp, u' ');
    if (item->inherits("QQuickText") && !text.isEmpty())
        words << (item->property("textFormat").toInt() == styled_text
                      ? QTextDocumentFragment::fromHtml(text).toPlainText()
                      : text);
    else if (item->inherits("QQuickTextInput") || item->inherits("QQuickTextEdit"))
        words << text;
    for (const auto* child : painted(item))
        gather(child, words);
}

}  // namespace

bool wait_until(const std::function<bool()>& done, int ms) {
    QElapsedTimer timer;
    timer.start();
    while (!done()) {
        if (timer.elapsed() > ms) return done();
        QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        if (!done()) QTest::qSleep(1);
    }
    return true;
}

void settle(int ms) {
    QElapsedTimer timer;
    timer.start();
    wait_until([&] { return timer.elapsed() >= ms; }, ms + 1000);
}

QList<QQuickItem*> painted(const QQuickItem* item) {
    auto children = item->childItems();
    std::stable_sort(children.begin(), children.end(),
                     [](const QQuickItem* a, const QQuickItem* b) { return a->z() < b->z(); });
    return children;
}

bool is_inside(const QQuickItem* item, const QQuickItem* ancestor) {
    for (; item; item = item->parentItem())
        if (item == ancestor) return true;
    return false;
}

QQuickItem* Thumb::overlay() const {
    for (auto* child : painted(window_.contentItem()))
        if (child->inherits("QQuickOverlay") && child->isVisible() && !child->childItems().isEmpty())
            return child;
    return nullptr;
}

QQuickItem* Thumb::find(const QString& name, const QQuickItem* inside) const {
    if (inside) return find_in(const_cast<QQuickItem*>(inside), name);
    if (auto* sheets = overlay()) return find_in(sheets, name);
    return find_in(window_.contentItem(), name);
}

QQuickItem* Thumb::taker(QPointF scene) const {
    if (auto* sheets = overlay()) return taker_in(sheets, scene);
    return taker_in(window_.contentItem(), scene);
}

void Thumb::reveal(QQuickItem* item) {
    for (auto* up = item->parentItem(); up; up = up->parentItem()) {
        if (!up->inherits("QQuickFlickable")) continue;
        auto* content = up->property("contentItem").value<QQuickItem*>();
        const QPointF middle = item->mapToItem(up, {item->width() / 2, item->height() / 2});
        const auto along = [&](const char* at, const char* length, const char* origin, double where,
                               double room) {
            const double before = up->property(at).toDouble();
            const double all = up->property(length).toDouble();
            const double first = up->property(origin).toDouble();
            if (where >= 0.15 * room && where <= 0.85 * room) return;
            if (all <= room) return;
            up->setProperty(at, std::clamp(before + where - room / 2, first, first + all - room));
        };
        if (!content) continue;
        along("contentY", "contentHeight", "originY", middle.y(), up->height());
        along("contentX", "contentWidth", "originX", middle.x(), up->width());
    }
}

void Thumb::tap(QPointF scene) {
    static auto* glass = QTest::createTouchDevice();
    ++touches_;
    QTest::touchEvent(&window_, glass).press(1, scene.toPoint());
    QTest::touchEvent(&window_, glass).release(1, scene.toPoint());
    settle(1);
}

/// Whatever slides in has to come to rest first. Lists that are made anew take their items with them.
bool at_rest(const QPointer<QQuickItem>& item) {
    QPointF before(-1, -1);
    return wait_until(
        [&, rounds = 0]() mutable {
            // A list that is made anew takes its items away.
            if (!item || !item->window()) return true;
            const QPointF now = item->mapToScene({item->width() / 2, item->height() / 2});
            rounds = now == before ? rounds + 1 : 0;
            before = now;
            return rounds >= 2 && QRectF(QPointF(), QSizeF(item->window()->size())).contains(now);
        },
        1000);
}

bool Thumb::touch(QQuickItem* wanted) {
    const QPointer<QQuickItem> item(wanted);
    QPointF middle;
    const QQuickItem* hit = nullptr;
    // A page can grow above the item while it is being brought into sight: a person scrolls again.
    for (int tries = 0; tries < 3 && !(hit && is_inside(hit, item)); ++tries) {
        reveal(item);
        at_rest(item);
        if (!item || !item->window()) {
            why_ = QStringLiteral("what was to be touched went away meanwhile");
            return false;
        }
        middle = item->mapToScene({item->width() / 2, item->height() / 2});
        hit = taker(middle);
    }
    const QString name = item->objectName();
    if (!QRectF(QPointF(), QSizeF(window_.size())).contains(middle)) {
        why_ = QStringLiteral("\"%1\" lies outside the window, at %2, %3")
                   .arg(name)
                   .arg(middle.x())
                   .arg(middle.y());
        return false;
    }
    // What was said lies over the page's end for a while; a person puts it away first.
    if (hit && hit->objectName() == QLatin1String("putAway")) {
        QMetaObject::invokeMethod(hit->parentItem(), "hide");
        hit = taker(middle);
    }
    if (!hit || !is_inside(hit, item)) {
        why_ = QStringLiteral("a touch on \"%1\" would reach %2 instead")
                   .arg(name,
                        hit ? QStringLiteral("\"%1\" (%2)")
                                  .arg(hit->objectName(), QString::fromLatin1(hit->metaObject()->className()))
                            : QStringLiteral("nothing"));
        return false;
    }
    tap(middle);
    return true;
}

bool Thumb::touch(const QString& name, QQuickItem* inside) {
    const bool anywhere = inside == nullptr;
    const QPointer<QQuickItem> around(inside);
    // A list that is made anew takes its items with it: a person looks again.
    for (int tries = 0; tries < 3; ++tries) {
        if (!wait_until([&] {
                if (!anywhere && !around) return true;
                const auto* item = find(name, around);
                return item && item->isEnabled();
            })) {
            why_ = QStringLiteral("nothing that can be touched is called \"%1\" here; the screen reads: %2")
                       .arg(name, words(overlay()).join(QStringLiteral(" | ")));
            return false;
        }
        if (!anywhere && !around) return false;
        const QPointer<QQuickItem> item = find(name, around);
        if (touch(item.data())) return true;
        if (item && item->window()) return false;
    }
    return false;
}

bool Thumb::touch_in(const QString& in, const QString& name) {
    for (int tries = 0; tries < 3; ++tries) {
        if (!appears(in)) return false;
        const QPointer<QQuickItem> around = find(in);
        if (touch(name, around.data())) return true;
        if (around) return false;
    }
    return false;
}

bool Thumb::type(const QString& digits) {
    return std::all_of(digits.begin(), digits.end(), [&](QChar digit) {
        const bool mark = digit == QLatin1Char('.') || digit == QLatin1Char(',');
        return touch(QStringLiteral("key_") + (mark ? QStringLiteral("mark") : QString(digit)));
    });
}

bool Thumb::write(const QString& row, const QString& text) {
    if (!touch_in(row, QStringLiteral("field"))) return false;
    keys(text);
    return true;
}

void Thumb::keys(const QString& text) {
    for (const QChar c : text)
        QTest::keyClick(&window_, c.toLatin1());
    settle(1);
}

void Thumb::key(Qt::Key key) {
    QTest::keyClick(&window_, key);
    settle(1);
}

bool Thumb::appears(const QString& name, int ms) {
    if (wait_until([&] { return find(name) != nullptr; }, ms)) return true;
    why_ = QStringLiteral("\"%1\" did not appear; the screen reads: %2")
               .arg(name, words(overlay()).join(QStringLiteral(" | ")));
    return false;
}

bool Thumb::goes(const QString& name, int ms) {
    if (wait_until([&] { return find(name) == nullptr; }, ms)) return true;
    why_ = QStringLiteral("\"%1\" did not go away").arg(name);
    return false;
}

bool Thumb::reads(const QString& part, int ms, const QQuickItem* inside) {
    const QPointer<const QQuickItem> where(inside);
    if (wait_until([&] { return words(where).join(QLatin1Char('\n')).contains(part); }, ms)) return true;
    why_ = QStringLiteral("the screen does not read \"%1\" but: %2")
               .arg(part, words(where).join(QStringLiteral(" | ")));
    return false;
}

QStringList Thumb::words(const QQuickItem* inside) const {
    QStringList words;
    gather(inside ? inside : window_.contentItem(), words);
    return words;
}

}  // namespace lapwing::test
