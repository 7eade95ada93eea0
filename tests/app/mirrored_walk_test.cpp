// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Walks the pages as a right-to-left language has them: the back button on the right, everything else turned
// with it, nothing over, beside or outside its place, and read out in that order.
// LAPWING_KEEP_PICTURES=FOLDER keeps the pages to look at.
#include <QRegularExpression>
#include <QTest>
#include <algorithm>
#include <memory>
#include <set>

#include "tests/app/walk/hearing.h"
#include "tests/app/walk/measure.h"
#include "tests/app/walk/stops.h"

namespace lapwing::test {
namespace {

QRectF place(const QQuickItem* item) {
    return item->mapRectToScene({0, 0, item->width(), item->height()});
}

}  // namespace

class MirroredWalkTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void init();
    void every_page_is_turned_round_whole_data();
    void every_page_is_turned_round_whole();
    void a_message_leaves_the_way_back_free();
    void cleanupTestCase();

private:
    /// One engine's pages stand for the others', two how-to cards for all of them.
    static bool wanted(const Stop& stop);
    void look(const Stop& stop, int screen);
    /// Each as its name and its size.
    void find_crushed(const QQuickItem* item, QList<std::pair<QString, QString>>& out) const;
    void blame(const QString& rule, const QString& item, const QString& detail);

    Phone phone_;
    std::unique_ptr<Stops> stops_;
    std::set<QString> found_;
    QString where_;
    int pages_ = 0, heard_ = 0;
};

/// A binding that fails leaves its page as it was, for nobody to see.
void MirroredWalkTest::init() {
    QTest::failOnWarning(QRegularExpression(QStringLiteral("qrc:/")));
}

void MirroredWalkTest::initTestCase() {
    QVERIFY2(phone_.on(), qPrintable(phone_.why()));
    stops_ = std::make_unique<Stops>(phone_);
    // Its digits and its decimal point are those of English, so that only the side changes.
    QLocale::setDefault(QLocale(QLocale::Hebrew, QLocale::Israel));
    phone_.app().changeLanguage();
    settle(200);
}

bool MirroredWalkTest::wanted(const Stop& stop) {
    const QString engine = stop.args.value(QStringLiteral("engine")).toString();
    if (!engine.isEmpty() && engine != QLatin1String("of 2"))
        return engine == QLatin1String("of 16") && stop.page == QLatin1String("Pad");
    const QString card = stop.args.value(QStringLiteral("card")).toString();
    return card.isEmpty() || card == QLatin1String("listening") || card == QLatin1String("tdc");
}

void MirroredWalkTest::blame(const QString& rule, const QString& item, const QString& detail) {
    found_.insert(QStringLiteral("%1 | %2 | %3 | %4").arg(rule, -14).arg(where_, -30).arg(item, detail));
}

/// Anchors that contradict each other leave an item less than nothing.
void MirroredWalkTest::find_crushed(const QQuickItem* item, QList<std::pair<QString, QString>>& out) const {
    if (!item->isVisible() || item->opacity() <= 0.0) return;
    const bool shows = item->inherits("QQuickText") ? !item->property("text").toString().isEmpty()
                                                    : item->property("targetKind").isValid();
    if (item->width() < -0.5 || item->height() < -0.5 || (shows && item->width() < 1.0))
        out.emplaceBack(QString::fromLatin1(item->metaObject()->className()).section(u'_', 0, 0) + u'#' +
                            item->objectName() + u' ' + item->property("text").toString().left(30),
                        QStringLiteral("%1 x %2").arg(item->width()).arg(item->height()));
    for (const auto* child : painted(item))
        find_crushed(child, out);
}

void MirroredWalkTest::look(const Stop& stop, int screen) {
    const auto* top = stops_->top();
    const auto offences = [&] {
        auto all = Measure(phone_.window(), *top, {}).offences();
        // The order is that of a whole page: listened to once.
        if (screen == 0) {
            Hearing hearing(phone_.window(), *top, true);
            heard_ += hearing.heard();
            all << hearing.order();
        }
        return all;
    };
    const auto crushed = [&] {
        QList<std::pair<QString, QString>> out;
        find_crushed(top, out);
        return out;
    };
    if (!offences().isEmpty() || !crushed().isEmpty())
        settle(250);  // between two steps of the layout, perhaps
    for (const auto& offence : offences())
        blame(offence.rule, offence.item, offence.detail);
    for (const auto& [item, size] : crushed())
        blame(QStringLiteral("crushed"), item, size);
    const QString folder = qEnvironmentVariable("LAPWING_KEEP_PICTURES");
    if (!folder.isEmpty())
        phone_.window().grabWindow().save(QStringLiteral("%1/%2-%3-%4.png")
                                              .arg(folder)
                                              .arg(phone_.window().width())
                                              .arg(stop.name().replace(u' ', u'_'))
                                              .arg(screen));
}

void MirroredWalkTest::every_page_is_turned_round_whole_data() {
    QTest::addColumn<QSize>("size");
    QTest::newRow("the smallest") << QSize(320, 568);
    QTest::newRow("lying down") << QSize(915, 412);
}

void MirroredWalkTest::every_page_is_turned_round_whole() {
    QFETCH(const QSize, size);
    phone_.resize(size);
    settle(100);
    found_.clear();
    for (const auto& stop : stops_->all()) {
        if (!wanted(stop)) continue;
        where_ = stop.name();
        if (const QString trouble = stops_->open(stop); !trouble.isEmpty()) {
            blame(QStringLiteral("touch"), {}, trouble);
            continue;
        }
        ++pages_;
        int screen = 0;
        stops_->scroll_through([&] {
            settle(1);
            look(stop, screen++);
        });
        if (const auto* back = phone_.thumb().find(QStringLiteral("back"), phone_.page_item());
            back && !phone_.thumb().overlay()) {
            const QRectF page = place(phone_.page_item());
            if (place(back).right() < page.right() - 20)
                blame(QStringLiteral("side"), QStringLiteral("back"), QStringLiteral("is not on the right"));
            // The list beside it, if there is one, has the right of the window.
            if (page.left() > 1)
                blame(QStringLiteral("side"), QStringLiteral("page"), QStringLiteral("is not on the left"));
        }
        stops_->leave(stop);
    }
    for (const auto& line : found_)
        std::printf("%s\n", qPrintable(line));
    QCOMPARE(int(found_.size()), 0);
}

void MirroredWalkTest::a_message_leaves_the_way_back_free() {
    const auto stop = std::find_if(stops_->all().begin(), stops_->all().end(),
                                   [](const Stop& one) { return one.page == QLatin1String("Testers"); });
    QVERIFY(stop != stops_->all().end());
    QCOMPARE(stops_->open(*stop), QString());
    QMetaObject::invokeMethod(phone_.window().findChild<QQuickItem*>(QStringLiteral("shell")), "tell",
                              Q_ARG(QString, QStringLiteral("Kept in the folder of pictures")));
    QVERIFY(phone_.thumb().appears(QStringLiteral("snack")));
    settle(20);
    const QRectF message = place(phone_.thumb().find(QStringLiteral("snack")));
    const QRectF page = place(phone_.page_item());
    QVERIFY(page.contains(message));
    QVERIFY(message.width() > page.width() / 2);
    QVERIFY((message & place(phone_.thumb().find(QStringLiteral("back"), phone_.page_item()))).isEmpty());
}

void MirroredWalkTest::cleanupTestCase() {
    QLocale::setDefault(QLocale::c());
    phone_.app().changeLanguage();
    std::printf("%d pages walked right to left, %d controls listened to\n", pages_, heard_);
    QVERIFY(pages_ > 100);
    phone_.off();
}

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::MirroredWalkTest)
#include "mirrored_walk_test.moc"
