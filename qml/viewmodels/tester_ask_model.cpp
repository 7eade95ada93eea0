// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/tester_ask_model.h"

#include "qml/viewmodels/tester_list_model.h"
#include "qml/viewmodels/visit_lines.h"

namespace lapwing {

using workflow::TesterUse;

TesterUse TesterAskModel::use() const {
    switch (from_word<TestKind>(test_.toStdString()).value_or(TestKind::dry)) {
        case TestKind::leak_down:
            return TesterUse::leak_down;
        case TestKind::crankcase:
            return TesterUse::crankcase;
        case TestKind::dry:
        case TestKind::wet:
            break;
    }
    return TesterUse::compression;
}

TesterKind TesterAskModel::wantedKind() const {
    switch (use()) {
        case TesterUse::leak_down:
            return TesterKind::leak_down;
        case TesterUse::crankcase:
            return TesterKind::crankcase;
        case TesterUse::compression:
            break;
    }
    return TesterKind::compression_gauge;
}

QString TesterAskModel::key() const {
    return QStringLiteral("which tester/%1/%2").arg(engineId(), kind());
}

QString TesterAskModel::kind() const {
    return QString::fromUtf8(word(wantedKind()).data());
}

bool TesterAskModel::wanted() const {
    return found() && !tester_for(session(), use()) && app()->draft(key()).isEmpty();
}

QVariantList TesterAskModel::choices() const {
    QVariantList list;
    for (const auto& tester : dossier().testers)
        if (tester.kind == wantedKind())
            list << QVariantMap{{"value", QString::fromStdString(tester.id.text())},
                                {"text", QString::fromStdString(tester.name)},
                                {"detail", TesterListModel::detailOf(tester, format())}};
    return list;
}

void TesterAskModel::choose(const QString& testerId) {
    if (const auto id = TesterId::parse(testerId.toStdString()))
        app()->run(workflow::choose_tester(session().id, use(), *id), this);
}

void TesterAskModel::notNow() {
    app()->keepDraft(key(), QStringLiteral("asked"));
    emit refreshed();
}

}  // namespace lapwing
