// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/visit_lines.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <algorithm>

#include "qml/viewmodels/tester_list_model.h"

namespace lapwing {
namespace {

struct Texts {
    Q_DECLARE_TR_FUNCTIONS(Visit)
};

using Lines = FormLines<Session>;
using Kind = FormField::Kind;
using workflow::TesterUse;

void add_symptoms(Lines& lines, const Session& session, const format::Formatter& format) {
    auto field = lines.line("symptoms", Texts::tr("Symptoms"), Kind::flags);
    QStringList names;
    for (const auto symptom : Lines::all<Symptom>()) {
        field.options << QString::fromUtf8(word(symptom).data());
        field.optionNames << format.name(symptom);
    }
    for (const auto symptom : session.complaint.symptoms) {
        field.chosen << QString::fromUtf8(word(symptom).data());
        names << format.name(symptom);
    }
    field.shown = names.join(QStringLiteral(", "));
    lines.special(field, [](Session& s, const FormEntry& entry) -> Status {
        s.complaint.symptoms.clear();
        for (const auto symptom : Lines::all<Symptom>())
            if (entry.chosen.contains(QString::fromUtf8(word(symptom).data())))
                s.complaint.symptoms.push_back(symptom);
        return {};
    });
}

/// "120,500": three figures behind one mark, as thousands are written.
bool like_thousands(const QString& text) {
    static const QRegularExpression pattern(QStringLiteral("^[0-9]{1,3}[.,][0-9]{3}$"));
    return pattern.match(text.trimmed()).hasMatch();
}

void add_usage(Lines& lines, const Session& session) {
    const UnitList<UsageTag> units{units::km, *Unit<UsageTag>::find("mi"), units::hour};
    auto field = lines.quantity_line(QStringLiteral("usage"), Texts::tr("Distance or hours run"), units);
    if (session.usage) lines.show(field, *session.usage);
    lines.special(field, [unit = units.front()](Session& s, const FormEntry& entry) -> Status {
        if (entry.text.isEmpty()) {
            s.usage.reset();
            return {};
        }
        auto usage = forms::typed<UsageTag>(entry.text, entry.unit, unit);
        if (!usage) return tl::unexpected(usage.error());
        if (like_thousands(entry.text) && !entry.again)
            return fail(
                "form.thousands",
                "\"{}\" reads as {}, with a decimal mark: for thousands type the figures without one. "
                "Keep it once more if it is meant.",
                entry.text.toStdString(), usage->text());
        s.usage = std::move(*usage);
        return {};
    });
}

void add_visit(Lines& lines, const Session& session, const format::Formatter& format) {
    lines.section(Texts::tr("Visit"));
    lines.text(
        "title", Texts::tr("Title"), [](auto& s) -> auto& { return s.title; });
    lines.hint(Texts::tr("As found, after the repair, a year later."));
    add_usage(lines, session);
    lines.text(
        "job", Texts::tr("Job number"), [](auto& s) -> auto& { return s.job_number; });
    lines.section(Texts::tr("Complaint"));
    add_symptoms(lines, session, format);
    lines.text(
        "complaint", Texts::tr("In the owner's words"), [](auto& s) -> auto& { return s.complaint.text; },
        Kind::long_text);
}

void add_conditions(Lines& lines, const format::Formatter& format) {
    lines.section(Texts::tr("Conditions"));
    const auto temperatures = forms::temperatures(format);
    lines.choice<EngineHeat>(
        "heat", Texts::tr("Warm or cold"), [](auto& s) -> auto& { return s.conditions.heat; });
    lines.hint(Texts::tr("Cold against cold, warm against warm: only then two visits can be compared."));
    lines.quantity(
        "coolant", Texts::tr("Coolant temperature"), temperatures,
        [](auto& s) -> auto& { return s.conditions.coolant; });
    lines.quantity(
        "air", Texts::tr("Air temperature"), temperatures, [](auto& s) -> auto& { return s.conditions.air; });
    lines.quantity(
        "altitude", Texts::tr("Altitude of the shop"), forms::altitudes(format),
        [](auto& s) -> auto& { return s.conditions.altitude; });
    lines.quantity(
        "station", Texts::tr("Barometer at the shop"),
        UnitList<PressureTag>{units::hpa, units::kpa, units::in_hg},
        [](auto& s) -> auto& { return s.conditions.station_pressure; });
    lines.hint(Texts::tr("As it reads here, not brought down to sea level. It wins over the altitude."));
}

void add_cranking(Lines& lines) {
    lines.section(Texts::tr("Cranking and holding"));
    lines.choice<Throttle>(
        "throttle", Texts::tr("Throttle"), [](auto& s) -> auto& { return s.conditions.throttle; });
    lines.choice<Induction>(
        "induction", Texts::tr("Induction"), [](auto& s) -> auto& { return s.conditions.induction; });
    lines.quantity(
        "battery", Texts::tr("Battery"), UnitList<VoltageTag>{units::volt},
        [](auto& s) -> auto& { return s.conditions.battery; });
    lines.choice<CrankedBy>(
        "cranked_by", Texts::tr("Cranked by"), [](auto& s) -> auto& { return s.conditions.cranked_by; });
    lines.quantity(
        "speed", Texts::tr("Cranking speed"), UnitList<RotationTag>{units::rpm},
        [](auto& s) -> auto& { return s.conditions.cranking_speed; });
    lines.choice<CrankHeldBy>(
        "held_by", Texts::tr("Crank held by"), [](auto& s) -> auto& { return s.conditions.crank_held_by; });
    lines.hint(Texts::tr("In the leak-down test the air can turn the engine."));
}

std::optional<TesterId>& slot(Session& session, TesterUse use) {
    switch (use) {
        case TesterUse::leak_down:
            return session.leak_down_tester;
        case TesterUse::crankcase:
            return session.crankcase_tester;
        case TesterUse::compression:
            break;
    }
    return session.compression_gauge;
}

void add_tester(Lines& lines, const Session& session, const std::vector<Tester>& testers, const char* key,
                const QString& label, TesterUse use, TesterKind kind, const format::Formatter& format) {
    auto field = lines.line(key, label, Kind::choice);
    const auto now = tester_for(session, use);
    field.options << QStringLiteral("none");
    field.optionNames << Texts::tr("none");
    field.chosen << (now ? QString::fromStdString(now->text()) : QStringLiteral("none"));
    for (const auto& tester : testers) {
        // One of another kind that was chosen once stays to be seen.
        if (tester.kind != kind && tester.id != now) continue;
        field.options << QString::fromStdString(tester.id.text());
        const bool alone = 1 == std::ranges::count(testers, tester.name, &Tester::name);
        // Two of one name are told apart by what else is on their cards.
        field.optionNames << QString::fromStdString(tester.name) +
                                 (alone ? QString()
                                        : QStringLiteral(" · ") + TesterListModel::detailOf(tester, format));
        if (tester.id == now) field.shown = field.optionNames.back();
    }
    if (field.options.size() == 1)
        field.hint = Texts::tr("No such tester yet. Add it here, and it is used in this session.");
    lines.special(field, [use](Session& s, const FormEntry& entry) -> Status {
        slot(s, use) =
            entry.chosen.isEmpty() ? std::nullopt : TesterId::parse(entry.chosen.front().toStdString());
        return {};
    });
}

}  // namespace

std::optional<TesterId> tester_for(const Session& session, TesterUse use) {
    Session copy = session;
    return slot(copy, use);
}

std::optional<TesterUse> changed_tester(const Session& before, const Session& after) {
    for (const auto use : {TesterUse::compression, TesterUse::leak_down, TesterUse::crankcase})
        if (tester_for(before, use) != tester_for(after, use)) return use;
    return std::nullopt;
}

FormLines<Session> visit_lines(const Session& session, StrokeCycle cycle, const std::vector<Tester>& testers,
                               const format::Formatter& format) {
    Lines lines(session, format);
    add_visit(lines, session, format);
    add_conditions(lines, format);
    add_cranking(lines);
    lines.section(Texts::tr("Testers used"));
    add_tester(lines, session, testers, "gauge", Texts::tr("Compression gauge"), TesterUse::compression,
               TesterKind::compression_gauge, format);
    add_tester(lines, session, testers, "leak_down", Texts::tr("Leak-down tester"), TesterUse::leak_down,
               TesterKind::leak_down, format);
    // Only a two-stroke's crankcase is tested; one that was named stays in sight.
    if (cycle == StrokeCycle::two || session.crankcase_tester)
        add_tester(lines, session, testers, "crankcase", Texts::tr("Crankcase tester"), TesterUse::crankcase,
                   TesterKind::crankcase, format);
    lines.section(Texts::tr("Note"));
    lines.text(
        "note", Texts::tr("Note"), [](auto& s) -> auto& { return s.note; }, Kind::long_text);
    return lines;
}

}  // namespace lapwing
