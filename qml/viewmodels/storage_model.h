// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QVariantList>

#include "qml/viewmodels/app_context.h"

namespace lapwing {

/// What takes up room, and what a sweep over photos and voice notes found: files without records, records
/// without files, and what waits for Undo. Deletes only what a person chose.
class StorageModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lapwing::AppContext* app READ app WRITE setApp NOTIFY refreshed REQUIRED)
    Q_PROPERTY(bool known READ known NOTIFY refreshed)
    Q_PROPERTY(QVariantList used READ used NOTIFY refreshed)
    Q_PROPERTY(QVariantList strays READ strays NOTIFY refreshed)
    Q_PROPERTY(QVariantList lost READ lost NOTIFY refreshed)
    Q_PROPERTY(QVariantList unkept READ unkept NOTIFY refreshed)

public:
    using QObject::QObject;

    [[nodiscard]] AppContext* app() const { return app_; }
    void setApp(AppContext* app);
    [[nodiscard]] bool known() const { return sweep_.has_value(); }
    [[nodiscard]] QVariantList used() const;    ///< {text, figure}
    [[nodiscard]] QVariantList strays() const;  ///< {text, detail}: files that no record names
    [[nodiscard]] QVariantList lost() const;    ///< {id, text, detail}: records whose file is gone
    [[nodiscard]] QVariantList unkept() const;  ///< {text, detail}: recordings whose session is gone

    /// Looks again, off the UI thread.
    Q_INVOKABLE void look();
    /// A copy of the stray file goes where the person wants it.
    Q_INVOKABLE void saveStray(int index);
    Q_INVOKABLE void deleteStray(int index);
    Q_INVOKABLE void saveUnkept(int index);
    Q_INVOKABLE void deleteUnkept(int index);
    /// Takes the record out; Undo brings it back.
    Q_INVOKABLE void deleteLost(const QString& id);

signals:
    void refreshed();

private:
    void saveCopy(const std::filesystem::path& file, const QString& name);

    AppContext* app_ = nullptr;
    std::optional<store::Sweep> sweep_;
    std::vector<store::Recording> unkept_;
};

/// The sweep at start: says so when something is amiss, and keeps what was being said when the app ended.
void housekeeping(AppContext& app, const std::vector<store::Recording>& cut_off);

}  // namespace lapwing
