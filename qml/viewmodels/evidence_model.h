// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantList>

#include "qml/viewmodels/evidence_backed.h"

namespace lapwing {

/// Photos and voice notes of one thing, or of the whole session, newest first.
class EvidenceModel : public lapwing::EvidenceBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantList items READ items NOTIFY refreshed)
    Q_PROPERTY(QVariantList testers READ testers NOTIFY refreshed)
    Q_PROPERTY(int photos READ photos NOTIFY refreshed)
    Q_PROPERTY(int voices READ voices NOTIFY refreshed)

public:
    using EvidenceBacked::EvidenceBacked;

    [[nodiscard]] QVariantList items() const;  ///< see itemOf
    /// {id, name} of the testers used in this session: their dials may be photographed.
    [[nodiscard]] QVariantList testers() const;
    [[nodiscard]] int photos() const;
    [[nodiscard]] int voices() const;

    Q_INVOKABLE void remove(const QString& id);

private:
    [[nodiscard]] std::vector<const Attachment*> here() const;
};

}  // namespace lapwing
