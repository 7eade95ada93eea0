// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QVariantList>

#include "qml/viewmodels/evidence_backed.h"

namespace lapwing {

/// What others asked to be tested in a session or in an earlier one of its engine, ticked when done, and how
/// much they remarked in this one.
class TodoModel : public lapwing::EvidenceBacked {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QVariantList todos READ todos NOTIFY refreshed)
    Q_PROPERTY(int open READ open NOTIFY refreshed)
    Q_PROPERTY(QString remarksText READ remarksText NOTIFY refreshed)

public:
    using EvidenceBacked::EvidenceBacked;

    /// {id, text, detail, done, page, args}: open ones first; `page` is where the test is done.
    [[nodiscard]] QVariantList todos() const;
    [[nodiscard]] int open() const;
    /// "3 remarks, 1 other cause"; empty when nobody wrote any.
    [[nodiscard]] QString remarksText() const;

    /// Ticks a request as carried out, or open again.
    Q_INVOKABLE void tick(const QString& id);

protected:
    void refresh() override;

private:
    [[nodiscard]] std::optional<int> cylinderOf(const Tie& tie) const;
    [[nodiscard]] std::vector<Note> requests() const;

    std::vector<Note> requests_;  ///< open ones first
};

}  // namespace lapwing
