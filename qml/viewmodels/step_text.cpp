// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/step_text.h"

#include <QCoreApplication>

namespace lapwing {
namespace {

struct Steps {
    Q_DECLARE_TR_FUNCTIONS(Steps)
};

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
        return Steps::tr("%1, cylinder %2: kept").arg(named<TestKind>(step, 0, format), plain(step, 1));
    if (name == "reading.redo")
        return Steps::tr("%1, cylinder %2: measured again")
            .arg(named<TestKind>(step, 0, format), plain(step, 1));
    if (name == "photo.settle") {
        const QString said = step.args.size() > 2 && step.args[2] == word(ReadSettled::as_read)
                                 ? Steps::tr("%1, cylinder %2: the photo's figure stands")
                                 : Steps::tr("%1, cylinder %2: the typed figure stands");
        return said.arg(named<TestKind>(step, 0, format), plain(step, 1));
    }
    if (name == "reading.add")
        return Steps::tr("%1, cylinder %2: added to").arg(named<TestKind>(step, 0, format), plain(step, 1));
    if (name == "reading.remove")
        return Steps::tr("%1, cylinder %2: reading deleted")
            .arg(named<TestKind>(step, 0, format), plain(step, 1));
    if (name == "exit.keep")
        return Steps::tr("Cylinder %1, %2: noted").arg(plain(step, 0), named<Exit>(step, 1, format));
    if (name == "exit.remove")
        return Steps::tr("Cylinder %1, %2: back to not listened")
            .arg(plain(step, 0), named<Exit>(step, 1, format));
    if (name == "clearance.keep")
        return Steps::tr("Cylinder %1, %2 clearance: kept")
            .arg(plain(step, 0), named<ValveSide>(step, 1, format));
    if (name == "clearance.remove")
        return Steps::tr("Cylinder %1, %2 clearance: deleted")
            .arg(plain(step, 0), named<ValveSide>(step, 1, format));
    if (name == "session.open") return Steps::tr("New session for %1").arg(plain(step, 0));
    if (name == "session.step")
        return Steps::tr("%1: %2").arg(named<PrepareStep>(step, 0, format),
                                       named<StepState>(step, 1, format));
    if (name == "session.prepare") return Steps::tr("Prepare: the rest is done");
    if (name == "session.delete") return Steps::tr("Session deleted");
    if (name == "session.answer") return Steps::tr("Owner's answer noted");
    if (name == "session.retest") return Steps::tr("Retest noted");
    if (name.starts_with("session.")) return Steps::tr("Session changed");
    if (name == "engine.add") return Steps::tr("%1 added").arg(plain(step, 0));
    if (name == "engine.change") return Steps::tr("%1 changed").arg(plain(step, 0));
    if (name == "engine.delete") return Steps::tr("%1 deleted, with its sessions").arg(plain(step, 0));
    if (name == "tester.add") return Steps::tr("%1 added").arg(plain(step, 0));
    if (name == "tester.change") return Steps::tr("%1 changed").arg(plain(step, 0));
    if (name == "tester.check") return Steps::tr("%1: check noted").arg(plain(step, 0));
    if (name == "tester.delete") return Steps::tr("%1 deleted").arg(plain(step, 0));
    // Behind the name stands how many records it took.
    if (name == "dossier.bring_in") return Steps::tr("%1 brought in").arg(plain(step, 0));
    if (name == "dossier.bring_in_all") {
        QStringList names;
        for (std::size_t i = 0; i < step.args.size(); ++i)
            names << plain(step, i);
        return Steps::tr("%1 brought in").arg(names.join(QStringLiteral(", ")));
    }
    if (name == "attachment.keep")
        return Steps::tr("%1 kept").arg(format.headed(named<AttachmentKind>(step, 0, format)));
    if (name == "attachment.bare")
        return Steps::tr("%n photos without their place", nullptr, plain(step, 0).toInt());
    if (name == "attachment.remove")
        return Steps::tr("%1 deleted").arg(format.headed(named<AttachmentKind>(step, 0, format)));
    if (name == "record.settle") return Steps::tr("One version stands");
    if (name == "note.call") return Steps::tr("Your call is committed");
    if (name == "plan.add")
        return Steps::tr("Taken into the plan: %1").arg(named<PlanOption>(step, 0, format));
    if (name == "plan.tick" && plain(step, 1) == QLatin1String("done")) return Steps::tr("Ticked as done");
    if (name == "plan.tick" && plain(step, 1) == QLatin1String("open")) return Steps::tr("No longer ticked");
    // Libraries of before kept of a tick only that it changed.
    if (name == "plan.keep" || name == "plan.tick") return Steps::tr("Line of the plan changed");
    if (name == "plan.move") return Steps::tr("Order of work changed");
    if (name == "note.remove" || name == "plan.remove") return Steps::tr("Deleted");
    return Steps::tr("Kept");
}

}  // namespace lapwing
