// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/conflicts_model.h"

#include <algorithm>

#include "core/record/merge.h"
#include "core/workflow/bring_in.h"
#include "qml/viewmodels/record_items.h"

namespace lapwing {
namespace {

/// When a version was changed last, on whichever side.
std::optional<Timestamp> changed_at(const Record& version) {
    const auto& revisions = std::visit(
        [](const auto& one) -> const auto& { return one.lineage.revisions; }, version);
    const auto last =
        std::ranges::max_element(revisions, {}, [](const Revision& revision) { return revision.at.unix_ms; });
    return last == revisions.end() ? std::nullopt : std::optional(last->at);
}

}  // namespace

void ConflictsModel::refresh() {
    records_.clear();
    items_.clear();
    const auto& desk = app()->desk();
    const auto& format = app()->format();
    if (auto dossier = desk.dossier(engine())) records_ = workflow::conflicts(*dossier);
    const auto name_of = names_in(desk, format);
    for (const auto& record : records_) {
        const auto all = lapwing::versions(record);
        // Fields in which any version differs from the one in front, with what each version says.
        QStringList names;
        std::vector<QMap<QString, QString>> texts(all.size());
        for (std::size_t at = 1; at < all.size(); ++at)
            for (const auto& field : format::differences(format, all.front(), all[at], name_of)) {
                if (!names.contains(field.name)) {
                    names << field.name;
                    for (auto& version : texts)
                        version[field.name] = field.one;
                }
                texts[at][field.name] = field.other;
            }
        QVariantList versions;
        for (std::size_t at = 0; at < all.size(); ++at) {
            QVariantList fields;
            for (const auto& name : names)
                fields << QVariantMap{{QStringLiteral("name"), name},
                                      {QStringLiteral("text"), texts[at][name]}};
            const auto when = changed_at(all[at]);
            versions << QVariantMap{
                {QStringLiteral("when"),
                 when ? tr("changed %1").arg(format.shortDateTime(*when)) : tr("as first written")},
                {QStringLiteral("fields"), fields}};
        }
        QVariantMap item = record_item(format, record);
        const auto session = desk.record(RecordKind::session, parent_of(record));
        item[QStringLiteral("place")] = session ? format::title_of(format, *session) : QString();
        item[QStringLiteral("versions")] = versions;
        items_ << item;
    }
}

void ConflictsModel::choose(int item, int version) {
    if (item < 0 || std::size_t(item) >= records_.size() || version < 0) return;
    const auto& record = records_[std::size_t(item)];
    app()->run(workflow::settle(kind_of(record), id_of(record), std::size_t(version)), this);
}

}  // namespace lapwing
