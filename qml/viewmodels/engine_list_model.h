// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QAbstractListModel>
#include <QHash>
#include <QQmlParserStatus>
#include <QVariant>

#include "qml/viewmodels/app_context.h"
#include "qml/viewmodels/engine_search.h"

namespace lapwing {

class EngineGlances;
struct EngineGlance;

/// All engines, the one worked on last first, and those that a search leaves. What a card says of the
/// cylinders is worked out off the UI thread, only for rows that are looked at, and kept until it changes.
class EngineListModel : public QAbstractListModel, public QQmlParserStatus {
    Q_OBJECT
    Q_INTERFACES(QQmlParserStatus)
    QML_ELEMENT
    Q_PROPERTY(lapwing::AppContext* app READ app WRITE setApp NOTIFY appChanged REQUIRED)
    Q_PROPERTY(QString filter READ filter WRITE setFilter NOTIFY filterChanged)
    Q_PROPERTY(bool looking READ looking WRITE setLooking NOTIFY lookingChanged)
    Q_PROPERTY(int count READ count NOTIFY refreshed)
    Q_PROPERTY(int total READ total NOTIFY refreshed)
    Q_PROPERTY(QVariantMap goOn READ goOn NOTIFY refreshed)

public:
    enum Roles {
        IdRole = Qt::UserRole + 1,
        NameRole,
        LastRole,
        TagsRole,
        BoresRole,
        BoreLineRole,
        BoreStateRole,
        RetestRole,
        BoreEarlierRole
    };

    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] AppContext* app() const { return app_; }
    void setApp(AppContext* app);
    [[nodiscard]] QString filter() const { return filter_; }
    /// What the list is searched for (EngineSearch).
    void setFilter(const QString& filter);
    [[nodiscard]] bool looking() const { return looking_; }
    /// Whether readings are looked into for bores and states. A list that is not drawn yet has better to do.
    void setLooking(bool looking);
    [[nodiscard]] int count() const { return static_cast<int>(rows_.size()); }
    [[nodiscard]] int total() const { return static_cast<int>(engines_.size()); }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    /// The session of today that is gone on with: {sessionId, name of its engine}; empty without one.
    [[nodiscard]] QVariantMap goOn() const;
    /// Settings or a call that was skipped may show verdicts, or hide them; the day may be another one.
    Q_INVOKABLE void lookAgain();
    /// The first `most` engines that fit `words`: {value, text, detail}.
    Q_INVOKABLE QVariantList choices(const QString& words, int most) const;
    /// What is searched for to see the engines with that tag.
    Q_INVOKABLE [[nodiscard]] QString searchForTag(const QString& tag) const {
        return EngineSearch::for_tag(tag);
    }
    /// Whose session it is; empty when there is no such session.
    Q_INVOKABLE [[nodiscard]] QString engineOf(const QString& sessionId) const;
    /// The only engine's id when there is just one, else empty.
    Q_INVOKABLE QString onlyEngine() const;
    /// The last session of the only engine; empty when there is none or there are several engines.
    Q_INVOKABLE QString onlySession() const;
    /// {step, text}: what was done last in the library and can be taken back; empty when there is nothing.
    [[nodiscard]] Q_INVOKABLE QVariantMap lastStep() const;
    /// {step, text}: what was taken back last and can be done again, while nothing else was done since; empty
    /// when there is nothing.
    [[nodiscard]] Q_INVOKABLE QVariantMap lastUndone() const;

    void classBegin() override {}
    void componentComplete() override;

signals:
    void appChanged();
    void filterChanged();
    void lookingChanged();
    void refreshed();

private:
    void reload();
    void pick();
    /// Shows these rows of engines_, which are in order. Those that were shown already stay, with their
    /// tiles: making them takes longer than a key may.
    void change(std::vector<std::size_t> wanted);
    void forget(const workflow::Change& change);
    void showGlance(const QString& engineId);
    void tellAll(const QList<int>& roles = {});
    [[nodiscard]] EngineGlance glance(const workflow::EngineSummary& engine) const;
    [[nodiscard]] QString lastLine(const workflow::EngineSummary& summary) const;
    [[nodiscard]] QString retestLine(const workflow::EngineSummary& summary) const;

    AppContext* app_ = nullptr;
    QString filter_;
    bool looking_ = true;
    std::vector<workflow::EngineSummary> engines_;
    std::vector<std::size_t> rows_;          ///< indices into engines_ that the filter leaves
    mutable QHash<QString, QString> names_;  ///< of the sessions that were asked for
    EngineSearch search_;
    EngineGlances* glances_ = nullptr;
};

}  // namespace lapwing
