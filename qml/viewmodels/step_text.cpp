// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/step_text.h"

#include <QCoreApplication>

namespace lapwing {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Steps", text);
}

/// A step's argument as text: a word of the model in the user's language, anything else as it is.
template <class Enum>
QString named(const workflow::Step& step, std::size_t at, const format::Formatter& format) {
    if (at >= step.args.size()) return {};
    const auto value = from_word<Enum>(step.args[at]);
    return value ? format.name(*value) : QString::fromStdString(step.args[at]);
}

QString plain(const workflow::Step& step, std::size_t at) {
    return at < step.args.size() ? QString::fromStdString(step.args[at]) : QString();
}

}  // namespace

QString step_text(const workflow::Step& step, const format::Formatter& format) {
    const auto& name = step.name;
    if (name == "reading.keep")
        return tr("%1, cylinder %2: kept").arg(named<TestKind>(step, 0, format), plain(step, 1));
    if (name == "reading.redo")
        return tr("%1, cylinder %2: measured again").arg(named<TestKind>(step, 0, format), plain(step, 1));
    if (name == "reading.remove")
        return tr("%1, cylinder %2: reading deleted").arg(named<TestKind>(step, 0, format), plain(step, 1));
    if (name == "exit.keep")
        return tr("Cylinder %1, %2: noted").arg(plain(step, 0), named<Exit>(step, 1, format));
    if (name == "exit.remove")
        return tr("Cylinder %1, %2: back to not listened").arg(plain(step, 0), named<Exit>(step, 1, format));
    if (name == "clearance.keep")
        return tr("Cylinder %1, %2 clearance: kept").arg(plain(step, 0), named<ValveSide>(step, 1, format));
    if (name == "clearance.remove")
        return tr("Cylinder %1, %2 clearance: deleted")
            .arg(plain(step, 0), named<ValveSide>(step, 1, format));
    if (name == "session.open") return tr("New session for %1").arg(plain(step, 0));
    if (name == "session.step")
        return tr("%1: %2").arg(named<PrepareStep>(step, 0, format), named<StepState>(step, 1, format));
    if (name == "session.delete") return tr("Session deleted");
    if (name == "session.answer") return tr("Owner's answer noted");
    if (name == "session.retest") return tr("Retest noted");
    if (name == "session.finish") return tr("Session finished");
    if (name.starts_with("session.")) return tr("Session changed");
    if (name == "engine.add") return tr("%1 added").arg(plain(step, 0));
    if (name == "engine.change") return tr("%1 changed").arg(plain(step, 0));
    if (name == "engine.delete") return tr("%1 deleted, with its sessions").arg(plain(step, 0));
    if (name == "tester.add") return tr("%1 added").arg(plain(step, 0));
    if (name == "tester.change") return tr("%1 changed").arg(plain(step, 0));
    if (name == "tester.check") return tr("%1: check noted").arg(plain(step, 0));
    if (name == "tester.delete") return tr("%1 deleted").arg(plain(step, 0));
    if (name == "dossier.bring_in") return tr("%1 brought in").arg(plain(step, 0));
    if (name == "attachment.keep")
        return tr("%1 kept").arg(format.headed(named<AttachmentKind>(step, 0, format)));
    if (name == "attachment.remove")
        return tr("%1 deleted").arg(format.headed(named<AttachmentKind>(step, 0, format)));
    if (name == "record.settle") return tr("One version stands");
    if (name == "note.call") return tr("Your call is committed");
    if (name == "plan.add") return tr("Taken into the plan: %1").arg(named<PlanOption>(step, 0, format));
    if (name == "plan.keep") return tr("Line of the plan changed");
    if (name == "plan.tick") return tr("Tick changed");
    if (name == "plan.move") return tr("Order of work changed");
    if (name == "note.remove" || name == "plan.remove") return tr("Deleted");
    return tr("Kept");
}

}  // namespace lapwing
