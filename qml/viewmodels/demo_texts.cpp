// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/demo_texts.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSet>
#include <QUuid>

#include "core/record/record.h"

namespace lapwing {
namespace {

constexpr const char* texts[] = {
    // The engine cards.
    QT_TRANSLATE_NOOP("Demo", "Liquid-cooled 90 degree V-twin, 498 cm3, invented for trying the app out"),
    QT_TRANSLATE_NOOP("Demo", "In-line six car engine, 2993 cm3, invented for trying the app out"),
    QT_TRANSLATE_NOOP(
        "Demo", "One owner since new. Oil changed every year; valves last looked at when it was run in."),
    QT_TRANSLATE_NOOP("Demo", "Ran hot once last summer when the fan belt went."),
    QT_TRANSLATE_NOOP("Demo", "demo"),
    QT_TRANSLATE_NOOP("Demo", "motorcycle"),
    QT_TRANSLATE_NOOP("Demo", "car"),
    QT_TRANSLATE_NOOP("Demo", "front"),
    QT_TRANSLATE_NOOP("Demo", "rear"),
    QT_TRANSLATE_NOOP("Demo", "by the notice board in the club house"),
    QT_TRANSLATE_NOOP("Demo", "at the harbour office, ask for the key"),
    QT_TRANSLATE_NOOP("Demo", "invented handbook, data sheet"),
    QT_TRANSLATE_NOOP("Demo", "invented handbook, engine data"),
    QT_TRANSLATE_NOOP("Demo", "invented handbook, for sea level"),
    // The testers.
    QT_TRANSLATE_NOOP("Demo", "Gauge 0-16 bar"),
    QT_TRANSLATE_NOOP("Demo", "M12 long reach"),
    QT_TRANSLATE_NOOP("Demo", "M14 long reach"),
    QT_TRANSLATE_NOOP("Demo", "Leak-down tester, club"),
    QT_TRANSLATE_NOOP("Demo", "Leak-down tester, harbour"),
    QT_TRANSLATE_NOOP("Demo", "Needle stood still for a minute."),
    // The visits.
    QT_TRANSLATE_NOOP("Demo", "As found"),
    QT_TRANSLATE_NOOP("Demo", "After the repair"),
    QT_TRANSLATE_NOOP("Demo", "A year later"),
    QT_TRANSLATE_NOOP("Demo", "Workshop"),
    QT_TRANSLATE_NOOP("Demo", "Lost power over one season and starts badly when warm."),
    QT_TRANSLATE_NOOP("Demo", "Test after the repair, run in for 350 km."),
    QT_TRANSLATE_NOOP("Demo", "Yearly look. Uses a little more oil than last summer."),
    QT_TRANSLATE_NOOP("Demo", "Shakes at idle since it ran hot."),
    QT_TRANSLATE_NOOP("Demo", "It runs."),
    QT_TRANSLATE_NOOP("Demo", "The charger is lent out."),
    QT_TRANSLATE_NOOP("Demo", "None at hand."),
    QT_TRANSLATE_NOOP("Demo", "engine oil 10W-40"),
    QT_TRANSLATE_NOOP("Demo", "Again at the end, against a tiring battery."),
    QT_TRANSLATE_NOOP("Demo",
                      "Front exhaust hisses with the hose at the silencer; rear blows at the oil filler."),
    QT_TRANSLATE_NOOP("Demo", "With the air on 2 it whistles out of plug hole 3, and the other way round."),
    QT_TRANSLATE_NOOP("Demo", "Pulls well again. No smoke."),
    // The plans.
    QT_TRANSLATE_NOOP("Demo", "Head off, exhaust valves new, seats cut and lapped"),
    QT_TRANSLATE_NOOP("Demo", "2 exhaust valves, stem seals, head gasket set"),
    QT_TRANSLATE_NOOP("Demo", "Air at the exhaust with the clearance in range."),
    QT_TRANSLATE_NOOP("Demo", "The burnt edge grows, the seat goes next and the head has to be built up."),
    QT_TRANSLATE_NOOP("Demo", "Cylinder off, bore measured and honed, piston rings new"),
    QT_TRANSLATE_NOOP("Demo", "ring set, base and head gasket"),
    QT_TRANSLATE_NOOP("Demo", "Air at the breather, and oil lifted the reading."),
    QT_TRANSLATE_NOOP("Demo", "Oil use rises; the plug will foul."),
    QT_TRANSLATE_NOOP("Demo", "Watch the oil, test again next spring"),
    QT_TRANSLATE_NOOP("Demo", "More air at the breather than a year ago, still wear."),
    QT_TRANSLATE_NOOP("Demo", "Nothing this season."),
    QT_TRANSLATE_NOOP("Demo", "Head off, head and block checked for flatness, new gasket"),
    QT_TRANSLATE_NOOP("Demo", "head gasket set, head bolts"),
    QT_TRANSLATE_NOOP("Demo", "Cylinders 2 and 3 blow into each other."),
    QT_TRANSLATE_NOOP("Demo", "The gap burns into the head and the block."),
};

/// What people write; elsewhere the same letters are words of the format.
const QSet<QString>& written_by_people() {
    static const QSet<QString> fields{
        QStringLiteral("name"),     QStringLiteral("description"), QStringLiteral("tags"),
        QStringLiteral("history"),  QStringLiteral("contact"),     QStringLiteral("note"),
        QStringLiteral("title"),    QStringLiteral("text"),        QStringLiteral("adapter"),
        QStringLiteral("oil_name"), QStringLiteral("author"),      QStringLiteral("work"),
        QStringLiteral("parts"),    QStringLiteral("reason"),      QStringLiteral("if_left")};
    return fields;
}

/// The id with the language's two letters worked into its last, drawn, digits.
QString own_id(const QString& id, const QString& language) {
    bool number = false;
    const auto last = id.last(4).toUShort(&number, 16);
    const auto letters = ushort((language[0].unicode() & 0xffU) << 8U | (language[1].unicode() & 0xffU));
    return id.chopped(4) + QStringLiteral("%1").arg(ushort(last ^ letters), 4, 16, QLatin1Char('0'));
}

QJsonValue told(const QJsonValue& value, const QString& field, const QString& language,
                const QHash<QString, QString>& words) {
    if (value.isObject()) {
        QJsonObject out = value.toObject();
        for (auto at = out.begin(); at != out.end(); ++at)
            at.value() = told(at.value(), at.key(), language, words);
        return out;
    }
    if (value.isArray()) {
        QJsonArray out = value.toArray();
        for (auto&& one : out)
            one = told(one, field, language, words);
        return out;
    }
    if (!value.isString()) return value;
    const QString text = value.toString();
    if (written_by_people().contains(field)) return words.value(text, text);
    if (text.size() == 36 && !QUuid::fromString(text).isNull()) return own_id(text, language);
    return value;
}

}  // namespace

Result<Dossier> demo_told_in(const QString& language, const Dossier& demo) {
    QHash<QString, QString> words;
    for (const char* text : texts)
        if (const QString word = QCoreApplication::translate("Demo", text); word != QLatin1String(text))
            words.insert(QString::fromLatin1(text), word);
    if (words.isEmpty() || language.size() != 2) return demo;
    const auto json = QJsonDocument::fromJson(QByteArray::fromStdString(to_json(demo)));
    const QJsonObject said = told(json.object(), QString(), language, words).toObject();
    return dossier_from_json(QJsonDocument(said).toJson(QJsonDocument::Compact).toStdString());
}

QStringList demo_texts() {
    QStringList out;
    for (const char* text : texts)
        out << QString::fromLatin1(text);
    return out;
}

}  // namespace lapwing
