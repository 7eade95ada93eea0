// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

// What the pad says around the figure: headings, fields, the rail, earlier readings, cautions.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/findings/cautions.h"
#include "core/findings/photo_reading.h"
#include "qml/format/record_words.h"
#include "qml/viewmodels/bores.h"
#include "qml/viewmodels/my_call_model.h"
#include "qml/viewmodels/pad_model.h"

namespace lapwing {

QString PadModel::title() const {
    return format().heading(test_);
}

QString PadModel::subtitle() const {
    QStringList parts{engineName()};
    const auto& conditions = session().conditions;
    if (conditions.heat != EngineHeat::unknown) parts << format().name(conditions.heat);
    if (test_ == TestKind::leak_down && step_state(session(), PrepareStep::breather_open) == StepState::done)
        parts << format().name(PrepareStep::breather_open);
    if (const auto* used = tester()) parts << QString::fromStdString(used->name);
    return parts.join(QStringLiteral(" · "));
}

QVariantList PadModel::fields() const {
    const bool crankcase = test_ == TestKind::crankcase;
    const std::map<QString, QString> labels{{pad_field::first, tr("First")},
                                            {pad_field::final_reading, tr("Final")},
                                            {pad_field::pulls, tr("Pulls")},
                                            {pad_field::oil, tr("Oil")},
                                            {pad_field::set, tr("Set")},
                                            {pad_field::held, crankcase         ? tr("End")
                                                              : dialInPercent() ? tr("Lost")
                                                                                : tr("Held")},
                                            {pad_field::hold, tr("Minutes")}};
    const auto typed = typedFields();
    QVariantList list;
    for (const auto& key : pad_field::of(test_))
        list << QVariantMap{{"key", key},
                            {"label", labels.at(key)},
                            {"value", localized(typed.digits(key))},
                            {"stepper", key == pad_field::pulls}};
    return list;
}

QString PadModel::caption() const {
    if (!pointPlaced()) return fieldCaption();
    // The placed point is said, and the point key takes it away again.
    return tr("%1 (point placed; “%2” for %3)")
        .arg(fieldCaption(), QString(format().locale().decimalPoint()), entry().typed(field_));
}

QString PadModel::fieldCaption() const {
    const QString who = cylinder_ == 0                 ? tr("Crankcase")
                        : test_ == TestKind::crankcase ? tr("Crankcase of cylinder %1").arg(cylinder_)
                                                       : tr("Cylinder %1").arg(cylinder_);
    if (field_ == pad_field::first) return tr("%1, first puff").arg(who);
    if (field_ == pad_field::final_reading)
        return redoing() ? tr("%1, final reading, again").arg(who) : tr("%1, final reading").arg(who);
    if (field_ == pad_field::pulls) return tr("%1, pulls").arg(who);
    if (field_ == pad_field::oil) return tr("%1, oil put in").arg(who);
    if (field_ == pad_field::set) return tr("%1, set pressure").arg(who);
    if (field_ == pad_field::hold) return tr("%1, how long").arg(who);
    const auto set = typedFields().pressure(pad_field::set);
    if (dialInPercent())
        return set ? tr("%1, leakage on the dial, %2 set").arg(who, format().typed(*set))
                   : tr("%1, leakage on the dial").arg(who);
    if (!set) return test_ == TestKind::crankcase ? tr("%1, end pressure").arg(who) : tr("%1 held").arg(who);
    return test_ == TestKind::crankcase ? tr("%1, end pressure, of %2 set").arg(who, format().typed(*set))
                                        : tr("%1 held, of %2 set").arg(who, format().typed(*set));
}

QVariantList PadModel::rail() const {
    QVariantList list;
    if (cylinder_ == 0) return list;
    static const findings::Findings none_yet;
    const auto& known = findings() ? *findings() : none_yet;
    const bool waits = verdicts_wait(*app(), visit());
    for (const auto& cylinder : engine().cylinders) {
        QVariantMap item = cylinder_item(known, engine(), cylinder, test_, format());
        if (waits && item["measured"].toBool()) item["state"] = not_judged_yet;
        item[QStringLiteral("pending")] = onItsWay(cylinder.number);
        list << item;
    }
    return list;
}

/// Asked for by many bindings with every key: made anew only when the records or the cylinder changed.
QVariantList PadModel::history() const {
    if (!history_ || history_of_ != cylinder_) {
        history_ = earlierReadings();
        history_of_ = cylinder_;
    }
    return *history_;
}

/// In what the findings show of the test: what held too much, or was read after oil went in, is not.
bool PadModel::countedIn(const Reading& reading) const {
    const auto* cylinder = findings() ? findings()->cylinder(reading.cylinder) : nullptr;
    const auto in = [&](const auto& test) {
        return !test || test->tag != reading.tag ||
               std::ranges::find(test->readings, reading.id) != test->readings.end();
    };
    if (!cylinder) return true;
    if (test_ == TestKind::dry) return in(cylinder->dry);
    // Readings at another set pressure are counted by themselves.
    return test_ != TestKind::leak_down || in(cylinder->leak_down) || !reading.set ||
           std::abs(reading.set->si() - cylinder->leak_down->set.figure.si) >
               reference().assumed("set-alike") * reading.set->si();
}

QVariantList PadModel::earlierReadings() const {
    QVariantList list;
    for (const auto& reading : visit().readings) {
        // Of the engine as one, where each chamber is held by itself now.
        const bool as_one = test_ == TestKind::crankcase && reading.cylinder == 0 && cylinder_ != 0;
        if (reading.test != test_ || (reading.cylinder != cylinder_ && !as_one)) continue;
        const bool replaced = std::any_of(visit().readings.begin(), visit().readings.end(),
                                          [&](const Reading& other) { return other.replaces == reading.id; });
        QString text;
        if (reading.final) text = format().typed(*reading.final);
        if (reading.held && reading.set) text = format::shown_of_set(format(), reading);
        if (reading.first) text = tr("%1, first puff %2").arg(text, format().typed(*reading.first));
        if (reading.pulls) text = tr("%1, %n pulls", nullptr, *reading.pulls).arg(text);
        if (reading.oil_volume) text = tr("%1, oil %2").arg(text, format().typed(*reading.oil_volume));
        QString about =
            format().name(reading.tag) + QStringLiteral(" · ") + format().shortDateTime(reading.taken_at);
        if (reading.oiled == Oiled::before) about += QStringLiteral(" · ") + tr("rings oiled before");
        if (as_one) about += QStringLiteral(" · ") + tr("the engine held as one");
        if (replaced) about += QStringLiteral(" · ") + tr("measured again");
        if (!replaced && !countedIn(reading)) about += QStringLiteral(" · ") + tr("not counted");
        for (const auto& photo : visit().attachments)
            if (photo.tie.record == reading.id.uuid && findings::photo_unsettled(reading, photo) && !replaced)
                about += QStringLiteral(" · ") +
                         tr("its photo reads %1: not settled").arg(format().typed(*photo.read_value));
        list << QVariantMap{{"id", QString::fromStdString(reading.id.text())},
                            {"text", text},
                            {"about", about},
                            {"replaced", replaced},
                            {"asOne", as_one}};
    }
    return list;
}

QStringList PadModel::cautions() const {
    const char* place = test_ == TestKind::wet         ? "wet"
                        : test_ == TestKind::dry       ? "dry"
                        : test_ == TestKind::crankcase ? "crankcase"
                                                       : "leak-down";
    QStringList texts;
    auto cautions = findings::cautions_for(reference(), place, engine());
    // The danger of this test alone comes before those that it shares with others.
    std::ranges::stable_sort(cautions, {}, [](const auto* caution) { return caution->places.size() > 1; });
    for (const auto* caution : cautions)
        texts << format().reference(caution->text);
    return texts;
}

/// By the cylinder's size, as far as that is on the card.
std::pair<QString, QString> PadModel::oilToPutIn() const {
    if (test_ != TestKind::wet || !app()) return {};
    const auto ml = [this](const char* id) { return int(std::lround(reference().assumed(id) * 1e6)); };
    const int least = 2, little = ml("oil-put-in-small"), much = ml("oil-put-in");
    const auto& card = engine();
    const QString small = tr("Oil: %1 to %2 ml").arg(least).arg(little);
    if (!card.bore || !card.stroke)
        return {small, tr("up to a teaspoon in a small cylinder; never more than %1 ml").arg(much)};
    const double bore = card.bore->value.si();
    if (std::numbers::pi / 4.0 * bore * bore * card.stroke->value.si() <
        reference().assumed("small-cylinder"))
        return {small, tr("up to a teaspoon in a cylinder of this size")};
    return {tr("Oil: %1 to %2 ml").arg(little).arg(much),
            tr("one to three teaspoons in a cylinder of this size")};
}

QString PadModel::oilAmount() const {
    const auto [figure, text] = oilToPutIn();
    return figure.isEmpty() ? QString() : figure + QStringLiteral(", ") + text + QLatin1Char('.');
}

QVariantList PadModel::tags() const {
    QVariantList list;
    for (std::size_t i = 0; i < Words<Tag>::list.size(); ++i) {
        const auto tag = static_cast<Tag>(i);
        list << QVariantMap{{"value", QString::fromUtf8(word(tag).data())}, {"text", format().name(tag)}};
    }
    return list;
}

bool PadModel::refused() const {
    return test_ == TestKind::wet && engine().fuel == Fuel::diesel;
}

}  // namespace lapwing
