// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QAbstractListModel>
#include <QQmlParserStatus>
#include <QVariant>

#include "qml/viewmodels/app_context.h"

namespace lapwing {

/// The testers of the shop by name, and a way to add one.
class TesterListModel : public QAbstractListModel, public QQmlParserStatus {
    Q_OBJECT
    Q_INTERFACES(QQmlParserStatus)
    QML_ELEMENT
    Q_PROPERTY(lapwing::AppContext* app READ app WRITE setApp NOTIFY appChanged REQUIRED)
    Q_PROPERTY(int count READ count NOTIFY refreshed)
    Q_PROPERTY(QVariantList kinds READ kinds NOTIFY refreshed)
    Q_PROPERTY(QVariantList units READ units NOTIFY refreshed)
    Q_PROPERTY(QVariantList holeUnits READ holeUnits NOTIFY refreshed)

public:
    enum Roles { IdRole = Qt::UserRole + 1, NameRole, DetailRole, StateRole };

    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] AppContext* app() const { return app_; }
    void setApp(AppContext* app);
    [[nodiscard]] int count() const { return static_cast<int>(testers_.size()); }
    [[nodiscard]] QVariantList kinds() const;      ///< {value, text}: the kinds to choose from
    [[nodiscard]] QVariantList units() const;      ///< {value, text}: units of a dial
    [[nodiscard]] QVariantList holeUnits() const;  ///< {value, text}: units of a restrictor's hole

    /// What tells testers of one name apart: "0 to 16 bar · home-made · checked 3 Mar 2026".
    static QString detailOf(const Tester& tester, const format::Formatter& format);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    /// Adds a tester; `added` follows once it is stored. Empty when it was taken, or what is wrong.
    /// The set pressure is in the dial's unit; it and the hole may be left out.
    Q_INVOKABLE QString add(const QString& kind, const QString& name, const QString& fullScale,
                            const QString& unit, const QString& setPressure = {}, const QString& hole = {},
                            const QString& holeUnit = {});

    void classBegin() override {}
    void componentComplete() override;

signals:
    void appChanged();
    void refreshed();
    void added(const QString& testerId);

private:
    void reload();

    AppContext* app_ = nullptr;
    std::vector<Tester> testers_;
};

}  // namespace lapwing
