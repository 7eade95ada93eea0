// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/tester_checks.h"

#include <QCoreApplication>
#include <vector>

#include "qml/viewmodels/form_lines.h"

namespace lapwing {
namespace {

struct Texts {
    Q_DECLARE_TR_FUNCTIONS(TesterChecks)
};

using Kind = TesterCheckKind;

std::vector<Kind> kinds_for(TesterKind tester) {
    switch (tester) {
        case TesterKind::compression_gauge:
            return {Kind::zero_at_rest, Kind::holds_after_cranking, Kind::against_reference};
        case TesterKind::leak_down:
            return {Kind::outlet_blocked, Kind::zero_at_rest, Kind::drilled_hole, Kind::against_reference};
        case TesterKind::crankcase:
            return {Kind::outlet_blocked, Kind::zero_at_rest, Kind::against_reference};
    }
    return {};
}

QString title(Kind kind) {
    switch (kind) {
        case Kind::outlet_blocked:
            return Texts::tr("Outlet blocked");
        case Kind::holds_after_cranking:
            return Texts::tr("Holds after cranking");
        case Kind::zero_at_rest:
            return Texts::tr("Needle at rest");
        case Kind::drilled_hole:
            return Texts::tr("Drilled hole");
        case Kind::against_reference:
            return Texts::tr("Against a reference");
    }
    return {};
}

QString instruction(Kind kind, TesterKind tester) {
    switch (kind) {
        case Kind::outlet_blocked:
            return tester == TesterKind::crankcase
                       ? Texts::tr("Close the outlet and pump to the set pressure: the needle must not sink.")
                       : Texts::tr("Close the outlet: it must read 0 % leakage.");
        case Kind::holds_after_cranking:
            return Texts::tr(
                "After cranking the gauge must not sink. If it does, the check valve or an O-ring "
                "leaks and every reading is low.");
        case Kind::zero_at_rest:
            return Texts::tr("With no pressure the needle must stand at zero. Type what it shows.");
        case Kind::drilled_hole:
            return Texts::tr(
                "Put a plate with a drilled hole of known diameter at the outlet, set the usual "
                "pressure and type what is held. It shows how much air the restrictor passes.");
        case Kind::against_reference:
            return Texts::tr("Put a gauge that you trust on the same line and type what both show.");
    }
    return {};
}

QStringList asks(Kind kind) {
    switch (kind) {
        case Kind::outlet_blocked:
        case Kind::against_reference:
            return {QStringLiteral("set"), QStringLiteral("shown")};
        case Kind::zero_at_rest:
            return {QStringLiteral("shown")};
        case Kind::drilled_hole:
            return {QStringLiteral("hole"), QStringLiteral("set"), QStringLiteral("shown")};
        case Kind::holds_after_cranking:
            return {};
    }
    return {};
}

QString last_line(const TesterCheck* last, const format::Formatter& format) {
    if (!last) return Texts::tr("Never checked");
    QStringList parts{format.shortDate(last->at), format.name(last->result)};
    if (last->hole) parts << format.typed(*last->hole);
    if (last->set) parts << Texts::tr("set %1").arg(format.typed(*last->set));
    if (last->shown) parts << Texts::tr("showed %1").arg(format.typed(*last->shown));
    if (!last->note.empty()) parts << QString::fromStdString(last->note);
    return parts.join(QStringLiteral(", "));
}

template <class Tag>
Status read(const QVariantMap& typed, const char* key, Unit<Tag> unit, std::optional<Typed<Tag>>& into) {
    const QString text = typed.value(QString::fromLatin1(key)).toString().trimmed();
    if (text.isEmpty()) return {};
    return Typed<Tag>::make(text.toStdString(), unit).map([&](Typed<Tag> value) { into = std::move(value); });
}

}  // namespace

QVariantList tester_checks(const Tester& tester, const format::Formatter& format) {
    QVariantList list;
    for (const Kind kind : kinds_for(tester.kind)) {
        const TesterCheck* last = last_check(tester, kind);
        const char* state = !last ? "none" : last->result == CheckResult::passed ? "good" : "fault";
        list << QVariantMap{{QStringLiteral("kind"), QString::fromUtf8(word(kind).data())},
                            {QStringLiteral("title"), title(kind)},
                            {QStringLiteral("instruction"), instruction(kind, tester.kind)},
                            {QStringLiteral("last"), last_line(last, format)},
                            {QStringLiteral("state"), QString::fromLatin1(state)},
                            {QStringLiteral("asks"), asks(kind)}};
    }
    return list;
}

Result<TesterCheck> tester_check_from(const Tester& tester, const QString& kind, bool passed,
                                      const QVariantMap& typed, Timestamp at) {
    const auto known = from_word<Kind>(kind.toStdString());
    if (!known)
        return fail("form.unknown_check", "\"{}\" is no self-check: choose one of the list.",
                    kind.toStdString());
    TesterCheck check;
    check.kind = *known;
    check.at = at;
    check.result = passed ? CheckResult::passed : CheckResult::failed;
    check.note = typed.value(QStringLiteral("note")).toString().trimmed().toStdString();
    const auto dial = tester.gauge.full_scale.unit();
    for (const auto& done : {read(typed, "set", dial, check.set), read(typed, "shown", dial, check.shown),
                             read(typed, "hole", units::mm, check.hole)})
        if (!done) return tl::unexpected(done.error());
    return check;
}

}  // namespace lapwing
