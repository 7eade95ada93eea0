// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantList>

#include "core/record/record.h"
#include "qml/viewmodels/engine_backed.h"

namespace lapwing {

/// Records of one engine that were changed on two sides: their versions, of which a person chooses one.
class ConflictsModel : public lapwing::EngineBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantList items READ items NOTIFY refreshed)

public:
    using EngineBacked::EngineBacked;

    /// {title, place, versions: [{when, fields: [{name, text}]}]}, the version that shows now first.
    [[nodiscard]] QVariantList items() const { return items_; }
    /// Lets one version stand; the others go, and Undo brings them back.
    Q_INVOKABLE void choose(int item, int version);

protected:
    void refresh() override;

private:
    std::vector<Record> records_;
    QVariantList items_;
};

}  // namespace lapwing
