// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/evidence_model.h"

#include <algorithm>

#include "core/workflow/remarks.h"

namespace lapwing {

std::vector<const Attachment*> EvidenceModel::here() const {
    const auto wanted = tie();
    std::vector<const Attachment*> found;
    for (const auto& attachment : visit().attachments)
        if (wanted.to == TiedTo::session || attachment.tie == wanted) found.push_back(&attachment);
    std::ranges::reverse(found);
    return found;
}

QVariantList EvidenceModel::items() const {
    QVariantList list;
    for (const auto* one : here())
        list << itemOf(*one);
    return list;
}

QVariantList EvidenceModel::testers() const {
    QVariantList list;
    const auto& used = session();
    for (const auto& tester : dossier().testers)
        if (tester.id == used.compression_gauge || tester.id == used.leak_down_tester ||
            tester.id == used.crankcase_tester)
            list << QVariantMap{{"id", QString::fromStdString(tester.id.text())},
                                {"name", QString::fromStdString(tester.name)}};
    return list;
}

int EvidenceModel::photos() const {
    return int(std::ranges::count(here(), AttachmentKind::photo, &Attachment::kind));
}

int EvidenceModel::voices() const {
    return int(std::ranges::count(here(), AttachmentKind::voice, &Attachment::kind));
}

void EvidenceModel::remove(const QString& id) {
    if (const auto* one = attachment(id)) app()->run(workflow::remove_attachment(one->id), this);
}

}  // namespace lapwing
