// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QPointer>
#include <QQuickItem>
#include <QQuickWindow>
#include <functional>

namespace lapwing::test {

/// Runs the event loop until `done` says so; false when it never did.
bool wait_until(const std::function<bool()>& done, int ms = 5000);
/// Lets everything that is due happen.
void settle(int ms = 60);

/// One thumb on the glass. It looks for what it can see, scrolls to it, and touches its middle by a touch
/// event, but only when the touch would really reach it: a covered or disabled thing can't be touched.
class Thumb {
public:
    explicit Thumb(QQuickWindow& window) : window_(window) {}

    /// The thing of that name that lies on top, or null. With `inside`, only below that item.
    [[nodiscard]] QQuickItem* find(const QString& name, const QQuickItem* inside = nullptr) const;
    [[nodiscard]] bool sees(const QString& name) const { return find(name) != nullptr; }

    /// Waits until the thing is there, then touches it. False with a reason in why().
    bool touch(const QString& name, QQuickItem* inside = nullptr);
    bool touch(QQuickItem* one);
    /// Touches `name` inside the thing called `in`: the word "faint" of the exit "breather".
    bool touch_in(const QString& in, const QString& name);
    /// Touches the pad's keys one by one; '.' and ',' are its decimal mark.
    bool type(const QString& digits);
    /// Touches the text field inside the row `name` and types with the system's keyboard.
    bool write(const QString& row, const QString& text);
    /// Types with the system's keyboard into what has the focus.
    void keys(const QString& text);
    void key(Qt::Key key);

    bool appears(const QString& name, int ms = 5000);
    bool goes(const QString& name, int ms = 5000);
    /// Waits until a text with that part can be read on the screen (or inside `inside`).
    bool reads(const QString& part, int ms = 5000, const QQuickItem* inside = nullptr);
    /// All texts on the screen that nothing covers as a whole page or sheet would, top to bottom in the tree.
    [[nodiscard]] QStringList words(const QQuickItem* inside = nullptr) const;

    [[nodiscard]] int touches() const { return touches_; }
    [[nodiscard]] QString why() const { return why_; }

    /// What a touch at this place of the window would reach.
    [[nodiscard]] QQuickItem* taker(QPointF scene) const;
    /// The sheet over the page that keeps touches from it, or null.
    [[nodiscard]] QQuickItem* overlay() const;
    /// Scrolls every list around the item until its middle can be touched.
    static void reveal(QQuickItem* item);

    QQuickWindow& window() { return window_; }

private:
    void tap(QPointF scene);

    QQuickWindow& window_;
    int touches_ = 0;
    QString why_;
};

/// Children in the order they are painted.
QList<QQuickItem*> painted(const QQuickItem* item);
bool is_inside(const QQuickItem* item, const QQuickItem* ancestor);

}  // namespace lapwing::test
