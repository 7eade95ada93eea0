// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// Walks every page in a language that nobody speaks: finds words that no translator ever sees, numbers with
// the wrong decimal mark, sentences that are glued together, and texts that are cut short when words are
// longer.
#include <QAccessible>
#include <QDir>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>
#include <QTest>
#include <QTextDocumentFragment>
#include <memory>
#include <set>

#include "tests/app/walk/measure.h"
#include "tests/app/walk/pseudo.h"
#include "tests/app/walk/stops.h"

namespace lapwing::test {
namespace {

// Symbols of units, which are the same in every language.
const QStringList units{"bar", "psi",  "kPa", "hPa",   "mm",  "cm³", "mm²", "ml",   "rpm", "kg",
                        "in",  "thou", "MB",  "kB",    "GB",  "min", "Nm",  "inHg", "kgf", "cm",
                        "ft",  "Pa",   "gal", "km",    "kW",  "lbf", "ms",  "Hz",   "cc",  "oz",
                        "KiB", "MiB",  "GiB", "Bytes", "deg", "cm3", "mm2", "degC"};

// What the person, the devices and the papers that are quoted call things.
const QStringList data{
    // the library that is walked through
    "Harbour engine with \\d+ cylinders", "As found", "Before the work", "Before my call",
    "Before the cautions", "Red gauge", "Two-gauge tester", "Head off, exhaust valves and seats",
    "Run it until it is warm, then test again", "Robin at the other shop",
    "Turn the crank one full turn first, and let it settle", "The valve may only need its clearance",
    "as first written", "changed here", "changed by someone else",
    "changed a second time by someone else, in many more words than a line can hold", "Owner of", "spring",
    "water-cooled", "front", "rear", "Valve set, gasket set", "EUR",
    "Air at the exhaust with the clearance in range\\.", "The seat burns away and the head is lost\\.",
    "\\b[0-9a-f]{4}( [0-9a-f]{4})+\\b",
    // files and folders
    "[\\w.-]*/[\\w./-]+", "[\\w-]+\\.(lapwing|pdf|csv|lapwing-backup)",
    // names of languages stand in their own language; names of programs, papers and licences are names
    "English", "Deutsch", "Español", "Lapwing [\\d.]+", "Lapwing", "A4", "Letter", "EN 837-1",
    "ASME B40\\.100"};

QStringList published() {
    QStringList found;
    const QStringList names{QStringLiteral("source"), QStringLiteral("holders"), QStringLiteral("licence")};
    bool of_libraries = false;
    const auto is_a_name = [&](const QString& key) {
        return names.contains(key) || (of_libraries && key == QLatin1String("name"));
    };
    const std::function<void(const QJsonValue&)> look = [&](const QJsonValue& value) {
        for (const auto& inner : value.toArray())
            look(inner);
        const auto object = value.toObject();
        for (auto it = object.begin(); it != object.end(); ++it) {
            if (is_a_name(it.key()) && !it.value().toString().isEmpty()) found << it.value().toString();
            look(it.value());
        }
    };
    for (const char* folder : {"reference", "knowhow", "licences"}) {
        of_libraries = QLatin1String(folder) == QLatin1String("licences");
        const QDir dir(QStringLiteral(LAPWING_ASSETS "/") + QLatin1String(folder));
        for (const auto& name : dir.entryList({QStringLiteral("*.json")})) {
            QFile file(dir.filePath(name));
            if (!file.open(QIODevice::ReadOnly)) continue;
            const auto document = QJsonDocument::fromJson(file.readAll());
            look(document.isArray() ? QJsonValue(document.array()) : QJsonValue(document.object()));
        }
    }
    return found;
}

/// One expression for everything that may stand without marks.
QRegularExpression allowed() {
    QStringList parts = data;
    QStringList names = published();
    // The longest first: one publication's name may begin with another's.
    std::sort(names.begin(), names.end(),
              [](const QString& a, const QString& b) { return a.size() > b.size(); });
    for (const auto& name : names)
        parts << QRegularExpression::escape(name);
    for (int month = 1; month <= 12; ++month)
        parts << QRegularExpression::escape(QLocale().monthName(month, QLocale::ShortFormat));
    for (const auto& unit : units)
        parts << QStringLiteral("\\b%1\\b").arg(QRegularExpression::escape(unit));
    return QRegularExpression(parts.join(u'|'), QRegularExpression::UseUnicodePropertiesOption);
}

struct Seen {
    QString page, rule, text;
    bool operator<(const Seen& other) const {
        return std::tie(rule, text, page) < std::tie(other.rule, other.text, other.page);
    }
};

}  // namespace

class LanguagesWalkTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void init();
    void nothing_gets_round_the_translators();
    void cleanupTestCase() { phone_.off(); }

private:
    void walk(const std::function<void(const QString& where)>& look);
    void read(const QString& where, const QQuickItem* item);
    void judge(const QString& where, const QString& shown);
    void measure(const QString& where);
    int say() const;

    Phone phone_;
    std::unique_ptr<Stops> stops_;
    QRegularExpression allowed_;
    std::set<Seen> found_;
    std::set<QString> said_;
};

/// A binding that fails leaves its page as it was, for nobody to see.
void LanguagesWalkTest::init() {
    QTest::failOnWarning(QRegularExpression(QStringLiteral("qrc:/")));
}

void LanguagesWalkTest::initTestCase() {
    QVERIFY2(phone_.on(), qPrintable(phone_.why()));
    stops_ = std::make_unique<Stops>(phone_);
}

void LanguagesWalkTest::walk(const std::function<void(const QString& where)>& look) {
    found_.clear();
    for (const auto& stop : stops_->all()) {
        if (stop.page == QLatin1String("Licence")) continue;  // law stays in the language it was made in
        if (const QString trouble = stops_->open(stop); !trouble.isEmpty()) {
            found_.insert({stop.name(), QStringLiteral("touch"), trouble});
            continue;
        }
        stops_->scroll_through([&] {
            settle(5);
            look(stop.name());
        });
        stops_->leave(stop);
    }
}

int LanguagesWalkTest::say() const {
    // Once for each thing, with the first page that shows it.
    std::set<std::pair<QString, QString>> told;
    for (const auto& seen : found_)
        if (told.insert({seen.rule, seen.text}).second)
            std::printf("%-10s | %-30s | %s\n", qPrintable(seen.rule), qPrintable(seen.page),
                        qPrintable(seen.text));
    std::printf("%zu things\n", told.size());
    return int(told.size());
}

void LanguagesWalkTest::judge(const QString& where, const QString& shown) {
    static const QRegularExpression word(QStringLiteral("\\p{L}[\\p{L}'’]+"));
    static const QRegularExpression point(QStringLiteral("\\d\\.\\d"));
    static const QRegularExpression glued(QStringLiteral("[.!?] ?\\x{203a}\\x{2039}"));
    QString rest = unmarked(shown);
    rest.remove(allowed_);
    if (rest.contains(word)) found_.insert({where, QStringLiteral("words"), shown});
    QString numbers = shown;
    if (numbers.remove(allowed_).contains(point)) found_.insert({where, QStringLiteral("decimals"), shown});
    if (shown.contains(glued)) found_.insert({where, QStringLiteral("glued"), shown});
    said_.insert(shown);
}

void LanguagesWalkTest::read(const QString& where, const QQuickItem* item) {
    if (!item->isVisible() || item->opacity() <= 0.0) return;
    if (item->inherits("QQuickText")) {
        // Styled text has a number's unit held to it by this.
        const QString text =
            item->property("text").toString().replace(QStringLiteral("&nbsp;"), QStringLiteral(" "));
        judge(where, Qt::mightBeRichText(text) ? QTextDocumentFragment::fromHtml(text).toPlainText() : text);
    }
    judge(where, item->property("placeholderText").toString());
    // What a screen reader says.
    if (auto* spoken = QAccessible::queryAccessibleInterface(const_cast<QQuickItem*>(item)))
        for (const auto kind : {QAccessible::Name, QAccessible::Description})
            judge(where, spoken->text(kind));
    for (const auto* child : painted(item))
        read(where, child);
}

void LanguagesWalkTest::measure(const QString& where) {
    const auto offences = [&] { return Measure(phone_.window(), *stops_->top(), {}).offences(); };
    if (offences().isEmpty()) return;
    // Between two steps of the layout, perhaps.
    settle(250);
    for (const auto& offence : offences())
        if (offence.rule == QLatin1String("clipped"))
            found_.insert({where, offence.rule, offence.item + QStringLiteral(": ") + offence.detail});
}

void LanguagesWalkTest::nothing_gets_round_the_translators() {
    Pseudo pseudo(QStringLiteral(LAPWING_ASSETS "/i18n/lapwing_de.ts"));
    QVERIFY(pseudo.size() > 1000);
    QCoreApplication::installTranslator(&pseudo);
    QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
    phone_.app().changeLanguage();
    settle(100);
    allowed_ = allowed();
    QVERIFY2(allowed_.isValid(), qPrintable(allowed_.errorString()));
    walk([&](const QString& where) {
        read(where, stops_->top());
        measure(where);
    });
    QCoreApplication::removeTranslator(&pseudo);
    QLocale::setDefault(QLocale::c());
    phone_.app().changeLanguage();
    std::printf("%zu texts read in a language that nobody speaks\n", said_.size());
    QCOMPARE(say(), 0);
    QVERIFY(said_.size() > 500);
}

}  // namespace lapwing::test

LAPWING_APP_TEST_MAIN(lapwing::test::LanguagesWalkTest)
#include "languages_walk_test.moc"
