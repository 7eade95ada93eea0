// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Walks every page in four shapes and measures what stands there: touch targets, the gaps between them, what
// lies outside or over something else, text that is cut, and contrast. Upright shapes are walked in both
// looks at both text sizes; lying down and on wide screens, when one shape is named as ctest does, the dark
// look at 100 % and the light one at 200 %.
#include <QElapsedTimer>
#include <QRegularExpression>
#include <QTest>
#include <map>
#include <memory>
#include <set>
#include <utility>

#include "tests/app/walk/hearing.h"
#include "tests/app/walk/measure.h"
#include "tests/app/walk/stops.h"

namespace lapwing::test {
namespace {

struct Screen {
    QSize size;
    bool dark;
    double text;

    [[nodiscard]] QString name() const {
        return QStringLiteral("%1x%2 %3 %4 %")
            .arg(size.width())
            .arg(size.height())
            .arg(dark ? QStringLiteral("workshop") : QStringLiteral("daylight"))
            .arg(int(100 * text));
    }
};

}  // namespace

class WalkTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void init();
    void every_page_data();
    void every_page();
    void cleanupTestCase();

private:
    void visit(const Stop& stop, const Screen& screen);
    void measure(const QString& where, const Screen& screen);
    void listen(const QString& where, const Screen& screen, bool order_too);

    Phone phone_;
    std::unique_ptr<Stops> stops_;
    /// Offence -> screens it was seen on.
    std::map<std::pair<QString, Offence>, std::set<QString>> found_;
    int measured_targets_ = 0, measured_texts_ = 0, pictures_ = 0, heard_ = 0;
    QElapsedTimer listening_;
    qint64 listened_ns_ = 0;
};

/// A binding that fails leaves its page as it was, for nobody to see.
void WalkTest::init() {
    QTest::failOnWarning(QRegularExpression(QStringLiteral("qrc:/")));
}

void WalkTest::initTestCase() {
    QVERIFY2(phone_.on(), qPrintable(phone_.why()));
    stops_ = std::make_unique<Stops>(phone_);
}

void WalkTest::every_page_data() {
    QTest::addColumn<QSize>("size");
    QTest::addColumn<bool>("dark");
    QTest::addColumn<double>("text");
    // One shape of the four when LAPWING_WALK names it, so that they can be walked side by side.
    const QString only = qEnvironmentVariable("LAPWING_WALK");
    for (const QSize size : {QSize(412, 915), QSize(320, 568), QSize(915, 412), QSize(1280, 800)}) {
        if (!only.isEmpty() && only != QStringLiteral("%1x%2").arg(size.width()).arg(size.height())) continue;
        for (const bool dark : {true, false})
            for (const double text : {1.0, 2.0}) {
                // A look changes no measure and a size no colour: lying down and on wide screens, where a
                // named shape is walked at every change, each look is seen at one size. Upright, and all
                // shapes at once, at both.
                if (!only.isEmpty() && size.width() > size.height() && dark != (text == 1.0)) continue;
                const Screen screen{size, dark, text};
                QTest::newRow(qPrintable(screen.name())) << size << dark << text;
            }
    }
}

void WalkTest::every_page() {
    QFETCH(QSize, size);
    QFETCH(bool, dark);
    QFETCH(double, text);
    const Screen screen{size, dark, text};
    phone_.home();
    phone_.devices.appearance.choose({dark, text, true});
    phone_.resize(size);
    const auto before = found_;
    int visits = 0;
    for (const auto& stop : stops_->all()) {
        visit(stop, screen);
        ++visits;
    }
    QCOMPARE(visits, int(stops_->all().size()));
    int seen_here = 0;
    for (const auto& [what, screens] : found_)
        seen_here += int(screens.contains(screen.name()));
    QVERIFY2(seen_here == 0,
             qPrintable(QStringLiteral("%1 offences; the table stands at the end").arg(seen_here)));
}

void WalkTest::visit(const Stop& stop, const Screen& screen) {
    if (const QString trouble = stops_->open(stop); !trouble.isEmpty()) {
        found_[{stop.name(), Offence{QStringLiteral("touch"), trouble, {}}}].insert(screen.name());
        return;
    }
    bool first = true;
    stops_->scroll_through([&] {
        measure(stop.name(), screen);
        listen(stop.name(), screen, std::exchange(first, false));
    });
    stops_->leave(stop);
}

void WalkTest::measure(const QString& where, const Screen& screen) {
    settle(1);
    const auto* top = stops_->top();
    Measure first(phone_.window(), *top, phone_.window().grabWindow());
    measured_targets_ += first.targets();
    measured_texts_ += first.texts();
    ++pictures_;
    if (first.offences().empty()) return;
    // On a busy machine the picture may have been taken between two steps of the layout. What is really wrong
    // is still wrong a moment later.
    settle(250);
    Measure second(phone_.window(), *top, phone_.window().grabWindow());
    for (const auto& offence : second.offences())
        found_[{where, offence}].insert(screen.name());
}

/// A look changes nothing of what is heard. Order is that of a whole page: looked at once a page.
void WalkTest::listen(const QString& where, const Screen& screen, bool order_too) {
    const bool upright = screen.size.height() > screen.size.width();
    if (!screen.dark && (upright || screen.text == 1.0)) return;
    const auto offences = [&] {
        Hearing hearing(phone_.window(), *stops_->top(), false);
        heard_ += hearing.heard();
        return hearing.names() + (order_too ? hearing.order() : QList<Offence>());
    };
    listening_.start();
    if (!offences().isEmpty()) {
        settle(250);
        for (const auto& offence : offences())
            found_[{where, offence}].insert(screen.name());
    }
    listened_ns_ += listening_.nsecsElapsed();
}

void WalkTest::cleanupTestCase() {
    std::printf("walk: %lld stops, %d pictures, %d targets and %d texts measured\n",
                static_cast<long long>(stops_->all().size()), pictures_, measured_targets_, measured_texts_);
    std::printf("walk: %d controls listened to, in %.1f s\n", heard_, double(listened_ns_) / 1e9);
    // One line for an item and a rule, however many screens and sizes it was seen on.
    std::map<std::tuple<QString, QString, QString>, std::pair<QString, std::set<QString>>> table;
    for (const auto& [key, screens] : found_) {
        auto& line = table[{key.second.rule, key.first, key.second.item}];
        line.first = key.second.detail;
        line.second.insert(screens.begin(), screens.end());
    }
    for (const auto& [key, line] : table) {
        const auto& [rule, page, item] = key;
        std::printf("%-14s | %-34s | %s | %s | on %zu, %s\n", qPrintable(rule), qPrintable(page),
                    qPrintable(item), qPrintable(line.first), line.second.size(),
                    qPrintable(*line.second.begin()));
    }
    std::printf("walk: %zu offenders\n", table.size());
    phone_.off();
}

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::WalkTest)
#include "walk_test.moc"
