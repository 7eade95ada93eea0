// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantMap>
#include <functional>

#include "tests/app/harness/phone.h"
#include "tests/app/harness/stock.h"

namespace lapwing::test {

struct Stop {
    QString page;
    QVariantMap args;
    /// Touched one after the other once the page is there, to open sheets.
    QStringList touches;

    [[nodiscard]] QString name() const;
};

/// A library with something of everything, and every page of the app on it.
class Stops {
public:
    /// Fills the phone's library. Throws std::runtime_error when something can't be stored.
    explicit Stops(Phone& phone);

    [[nodiscard]] const QList<Stop>& all() const { return stops_; }

    /// Opens the page and its sheets and waits until it has worked everything out. Empty, or what could not
    /// be touched.
    QString open(const Stop& stop);
    /// Closes its sheets and takes back what was half typed.
    void leave(const Stop& stop);
    /// Calls `look` for the first screenful of the page or sheet on top and for all further ones of its
    /// tallest list, or of the list of engines beside a page that needs no scrolling.
    void scroll_through(const std::function<void()>& look);
    [[nodiscard]] const QQuickItem* top() const;

private:
    /// Waits until everything is worked out and has its place. A page that was read but not laid out yet has
    /// no height to scroll through.
    void rest();
    void add_engine(Stock& stock, int cylinders);
    void add_two_cylinders(Stock& stock, EngineId engine, SessionId session);
    void add_opinion(Stock& stock, EngineId engine, SessionId session);
    void add_other_pages(TesterId tester);

    Phone& phone_;
    QString file_;  ///< a session file that differs from the library
    QList<Stop> stops_;
};

}  // namespace lapwing::test
