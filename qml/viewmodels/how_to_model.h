// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtQml/qqmlregistration.h>

#include <QObject>
#include <QQmlParserStatus>
#include <QString>
#include <QVariant>

#include "core/knowhow/knowhow.h"
#include "qml/viewmodels/app_context.h"

namespace lapwing {

/// How to: the list of the cards, and one of them. The cards are read when a page with this model opens, so
/// that nobody waits for them at the start of the app.
class HowToModel : public QObject, public QQmlParserStatus {
    Q_OBJECT
    Q_INTERFACES(QQmlParserStatus)
    QML_ELEMENT
    Q_PROPERTY(lapwing::AppContext* app READ app WRITE setApp NOTIFY appChanged REQUIRED)
    Q_PROPERTY(QString card READ card WRITE setCard NOTIFY shown)
    Q_PROPERTY(QVariantList groups READ groups NOTIFY shown)
    Q_PROPERTY(bool found READ found NOTIFY shown)
    Q_PROPERTY(QString problem READ problem NOTIFY shown)
    Q_PROPERTY(QString title READ title NOTIFY shown)
    Q_PROPERTY(QString brief READ brief NOTIFY shown)
    Q_PROPERTY(QStringList why READ why NOTIFY shown)
    Q_PROPERTY(QStringList how READ how NOTIFY shown)
    Q_PROPERTY(QVariantList signs READ signs NOTIFY shown)
    Q_PROPERTY(QVariantList slips READ slips NOTIFY shown)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY shown)
    Q_PROPERTY(QVariantList pictures READ pictures NOTIFY shown)
    Q_PROPERTY(QVariantList sources READ sources NOTIFY shown)
    Q_PROPERTY(QString nextCard READ nextCard NOTIFY shown)
    Q_PROPERTY(QString nextTitle READ nextTitle NOTIFY shown)

public:
    explicit HowToModel(QObject* parent = nullptr);

    [[nodiscard]] AppContext* app() const { return app_; }
    void setApp(AppContext* app);
    /// Id of the card that is shown; empty for the list alone.
    [[nodiscard]] QString card() const { return card_; }
    void setCard(const QString& id);

    /// {title, cards: [{card, title, brief}]}, in the order they are read
    [[nodiscard]] QVariantList groups() const;
    [[nodiscard]] bool found() const { return shown_card() != nullptr; }
    /// Why there are no cards; empty when there are.
    [[nodiscard]] QString problem() const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString brief() const;
    [[nodiscard]] QStringList why() const;
    [[nodiscard]] QStringList how() const;
    /// {term, text}: what is seen and what it means
    [[nodiscard]] QVariantList signs() const;
    /// {term, text}: what goes wrong and what it does
    [[nodiscard]] QVariantList slips() const;
    [[nodiscard]] QStringList cautions() const;
    /// {id, title, description, width, height, strokes: [{look, path}], marks: [{x, y, text}]}
    [[nodiscard]] QVariantList pictures() const;
    /// {term, text}: a claim and where it comes from
    [[nodiscard]] QVariantList sources() const;
    [[nodiscard]] QString nextCard() const;
    [[nodiscard]] QString nextTitle() const;

    void classBegin() override {}
    void componentComplete() override;

signals:
    void appChanged();
    /// Everything shown may have changed.
    void shown();

private:
    [[nodiscard]] const knowhow::Card* shown_card() const;
    [[nodiscard]] QString say(const std::string& english) const;
    [[nodiscard]] QStringList say(const std::vector<std::string>& english) const;
    [[nodiscard]] QVariantMap term(const std::string& term, const QString& text) const;

    AppContext* app_ = nullptr;
    QString card_;
    Result<knowhow::Knowhow> knowhow_;
};

}  // namespace lapwing
