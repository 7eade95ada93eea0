// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/opinion_words.h"

#include <vector>

#include "qml/format/record_words.h"

namespace lapwing {
namespace {

template <class Enum>
QString word_text(Enum value) {
    const auto text = word(value);
    return QString::fromUtf8(text.data(), qsizetype(text.size()));
}

template <class Enum>
QVariantList choices(const std::vector<Enum>& values, const format::Formatter& format) {
    QVariantList list;
    for (const auto value : values)
        list << QVariantMap{{QStringLiteral("value"), word_text(value)},
                            {QStringLiteral("text"), format.name(value)}};
    return list;
}

}  // namespace

QVariantList cause_choices(const Engine& engine, const format::Formatter& format) {
    const bool four = engine.cycle == StrokeCycle::four;
    std::vector<Cause> causes{Cause::seals_well, Cause::rings};
    if (four) causes.insert(causes.end(), {Cause::intake, Cause::exhaust});
    causes.push_back(Cause::head_gasket);
    if (engine.cylinders.size() > 1) causes.push_back(Cause::next_cylinder);
    if (engine.cooling != Cooling::air) causes.push_back(Cause::coolant);
    if (engine.decompressor != Decompressor::none) causes.push_back(Cause::decompressor);
    if (!four) causes.push_back(Cause::crankcase);
    causes.push_back(Cause::tester_or_method);
    return choices(causes, format);
}

QVariantList test_choices(const Engine& engine, const format::Formatter& format) {
    std::vector<TestKind> tests{TestKind::dry};
    if (engine.fuel != Fuel::diesel) tests.push_back(TestKind::wet);
    tests.push_back(TestKind::leak_down);
    if (engine.cycle == StrokeCycle::two) tests.push_back(TestKind::crankcase);
    QVariantList list = choices(tests, format);
    std::vector<AskedCheck> checks{AskedCheck::leak_hunt};
    if (engine.cycle == StrokeCycle::four)
        checks.insert(checks.end(), {AskedCheck::clearances, AskedCheck::staking});
    checks.push_back(AskedCheck::tester_check);
    return list << choices(checks, format);
}

void ask_for(Note& request, const QString& word) {
    const bool asks = request.kind == NoteKind::test_request;
    request.test = asks ? from_word<TestKind>(word.toStdString()) : std::nullopt;
    request.check = asks ? from_word<AskedCheck>(word.toStdString()) : std::nullopt;
}

QVariantMap note_item(const Note& note, const QString& author, const format::Formatter& format) {
    const QString by = QString::fromStdString(note.author);
    QString heading = format.heading(note.kind);
    if (note.test) heading += QStringLiteral(": ") + format.name(*note.test);
    if (note.check) heading += QStringLiteral(": ") + format.name(*note.check);
    if (note.cause) heading += QStringLiteral(": ") + format.name(*note.cause);
    QStringList detail;
    if (!by.isEmpty()) detail << by;
    detail << format.shortDateTime(note.at);
    return {{QStringLiteral("id"), QString::fromStdString(note.id.text())},
            {QStringLiteral("kind"), word_text(note.kind)},
            {QStringLiteral("heading"), heading},
            {QStringLiteral("text"), QString::fromStdString(note.text)},
            {QStringLiteral("detail"), detail.join(QStringLiteral(" · "))},
            {QStringLiteral("done"), note.done},
            {QStringLiteral("test"), note.test    ? word_text(*note.test)
                                     : note.check ? word_text(*note.check)
                                                  : QString()},
            {QStringLiteral("cause"), note.cause ? word_text(*note.cause) : QString()},
            {QStringLiteral("mine"), by == author && note.kind != NoteKind::my_call}};
}

QString wanted_of(const Note& request, const QString& place, const format::Formatter& format) {
    if (request.test) return format.heading(*request.test) + QStringLiteral(", ") + place;
    return request.check ? format.heading(*request.check) + QStringLiteral(", ") + place : place;
}

}  // namespace lapwing
