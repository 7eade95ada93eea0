// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/plan_lines.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace lapwing {
namespace {

struct Texts {
    Q_DECLARE_TR_FUNCTIONS(PlanLine)
};

using Lines = FormLines<PlanLine>;
using Kind = FormField::Kind;

const QString whole_engine = QStringLiteral("engine");

void add_cylinder(Lines& lines, const PlanLine& line, const Engine& engine) {
    auto field = lines.line("cylinder", Texts::tr("Where"), Kind::choice);
    field.options << whole_engine;
    field.optionNames << Texts::tr("the engine");
    for (const auto& cylinder : engine.cylinders) {
        field.options << QString::number(cylinder.number);
        field.optionNames << Texts::tr("cylinder %1").arg(cylinder.number);
    }
    field.chosen << (line.cylinder ? QString::number(*line.cylinder) : whole_engine);
    const auto at = field.options.indexOf(field.chosen.front());
    if (at >= 0) field.shown = field.optionNames[at];
    lines.special(field, [](PlanLine& changed, const FormEntry& entry) -> Status {
        changed.cylinder.reset();
        if (entry.chosen.isEmpty() || entry.chosen.front() == whole_engine) return {};
        return forms::whole(entry.chosen.front(), Texts::tr("Where")).map([&](int number) {
            changed.cylinder = number;
        });
    });
}

void add_price(Lines& lines, const PlanLine& line, const QString& currency, const format::Formatter& format) {
    auto field = lines.line("price", Texts::tr("Price"), Kind::text);
    if (line.price)
        field.text = field.shown =
            forms::digits(line.price->digits, format) + u' ' + QString::fromStdString(line.price->currency);
    field.hint = Texts::tr("With its currency, such as 420 EUR.");
    lines.special(field, [currency](PlanLine& changed, const FormEntry& entry) -> Status {
        return price_of(entry.text, currency).map([&](std::optional<Money> price) {
            changed.price = std::move(price);
        });
    });
}

}  // namespace

Result<std::optional<Money>> price_of(const QString& text, const QString& currency) {
    const QString typed = text.simplified();
    if (typed.isEmpty()) return std::optional<Money>();
    static const QRegularExpression number(QStringLiteral("[0-9][0-9.,]*"));
    const auto found = number.match(typed);
    const auto digits = canonical_digits(found.captured().toStdString());
    QString rest = (typed.left(found.capturedStart()) + typed.mid(found.capturedEnd())).simplified();
    if (!found.hasMatch() || !digits || rest.contains(u'-') || rest.contains(number))
        return fail("plan.price",
                    "\"{}\" is not a price: type digits with at most one decimal mark and the currency, such "
                    "as 420 EUR.",
                    typed.toStdString());
    if (rest.isEmpty()) rest = currency;
    if (rest.isEmpty())
        return fail("plan.currency", "\"{}\" names no currency: type it too, such as 420 EUR.",
                    typed.toStdString());
    return std::optional(Money{*digits, rest.toStdString()});
}

FormLines<PlanLine> plan_lines(const PlanLine& line, const Engine& engine, const QString& currency,
                               const format::Formatter& format) {
    Lines lines(line, format);
    lines.section(Texts::tr("Work"));
    lines.choice<PlanOption>("option", Texts::tr("What to do"), [](auto& l) -> auto& { return l.option; },
                             {PlanOption::quick_fix, PlanOption::strip, PlanOption::leave});
    lines.hint(Texts::tr("Quick fixes and \"run it, then test again\" come before taking things apart."));
    add_cylinder(lines, line, engine);
    lines.text(
        "work", Texts::tr("Work"), [](auto& l) -> auto& { return l.work; }, Kind::long_text);
    lines.text(
        "parts", Texts::tr("Parts"), [](auto& l) -> auto& { return l.parts; }, Kind::long_text);
    lines.quantity(
        "labour", Texts::tr("Hours"), UnitList<TimeTag>{*Unit<TimeTag>::find("h"), units::minute},
        [](auto& l) -> auto& { return l.labour; });
    add_price(lines, line, currency, format);
    lines.section(Texts::tr("Why"));
    lines.text(
        "reason", Texts::tr("Reason"), [](auto& l) -> auto& { return l.reason; }, Kind::long_text);
    lines.text(
        "if_left", Texts::tr("If it is left"), [](auto& l) -> auto& { return l.if_left; }, Kind::long_text);
    lines.section(Texts::tr("Dry test to expect after it"));
    lines.quantity(
        "predicted_low", Texts::tr("At least"), forms::pressures(format),
        [](auto& l) -> auto& { return l.predicted_low; });
    lines.quantity(
        "predicted_high", Texts::tr("At most"), forms::pressures(format),
        [](auto& l) -> auto& { return l.predicted_high; });
    return lines;
}

}  // namespace lapwing
