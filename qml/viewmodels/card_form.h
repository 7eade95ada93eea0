// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QQmlParserStatus>

#include "qml/viewmodels/app_context.h"
#include "qml/viewmodels/form_model.h"

namespace lapwing {

/// What the forms over one record of the library have in common: sections that fold, half-typed text that
/// survives, and entries that are stored one by one. While entries are on their way to the library the form
/// shows its own newest copy, so that two quick entries both count.
class CardForm : public lapwing::FormModel, public QQmlParserStatus {
    Q_OBJECT
    Q_INTERFACES(QQmlParserStatus)
    QML_ELEMENT
    QML_UNCREATABLE("each form is a class of its own")
    Q_PROPERTY(lapwing::AppContext* app READ app WRITE setApp NOTIFY appChanged REQUIRED)
    Q_PROPERTY(QString recordId READ recordId WRITE setRecordId NOTIFY recordIdChanged REQUIRED)
    Q_PROPERTY(bool found READ found NOTIFY reset)
    Q_PROPERTY(int revision READ revision NOTIFY revised)
    Q_PROPERTY(QStringList sections READ sections NOTIFY reset)

public:
    explicit CardForm(QObject* parent = nullptr);

    [[nodiscard]] AppContext* app() const { return app_; }
    void setApp(AppContext* app);
    [[nodiscard]] QString recordId() const { return record_id_; }
    void setRecordId(const QString& id);
    [[nodiscard]] bool found() const { return found_; }
    [[nodiscard]] int revision() const { return revision_; }
    [[nodiscard]] QStringList sections() const;

    /// Keys of a section's lines, in order.
    Q_INVOKABLE QStringList keysOf(const QString& section) const;
    /// What stands in a section, in one line, for when it is folded.
    Q_INVOKABLE QString summaryOf(const QString& section) const;

    Q_INVOKABLE void keepDraft(const QString& key, const QString& text);
    [[nodiscard]] Q_INVOKABLE QString draft(const QString& key) const;

    /// Takes the record out of the library, if its form can (`removal`). removed() comes with the commit.
    Q_INVOKABLE void remove();

    void classBegin() override {}
    void componentComplete() override;

signals:
    void appChanged();
    void recordIdChanged();
    void removed();
    /// After every reset: QML hears of a signal before any slot of C++ could count it.
    void revised();

protected:
    /// Reads the record anew; false when it is not there (any more).
    virtual bool read() = 0;
    /// Shows the lines of the record as it is now.
    virtual void refresh() = 0;
    /// Whether a commit could have touched this record.
    [[nodiscard]] virtual bool concerns(const workflow::Change& change) const = 0;
    /// Names the record's drafts apart from other forms'.
    [[nodiscard]] virtual QString draftRoom() const = 0;
    [[nodiscard]] virtual std::optional<workflow::Intent> removal() const { return {}; }

    [[nodiscard]] QString sentence(const Error& error) const override;
    [[nodiscard]] const format::Formatter& format() const { return app_->format(); }
    /// Reads and shows again, once the form is complete.
    void reload();
    /// Stores one entry and shows it at once.
    void store(workflow::Intent intent);

private:
    AppContext* app_ = nullptr;
    QString record_id_;
    bool complete_ = false;
    bool found_ = false;
    int revision_ = 0;
    int under_way_ = 0;  ///< entries that were not committed yet
};

}  // namespace lapwing
