// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/how_to_model.h"

namespace lapwing {

HowToModel::HowToModel(QObject* parent) : QObject(parent) {}

void HowToModel::setApp(AppContext* app) {
    if (app_ == app) return;
    app_ = app;
    connect(app_, &AppContext::formatChanged, this, &HowToModel::shown);
    emit appChanged();
}

void HowToModel::setCard(const QString& id) {
    if (card_ == id) return;
    card_ = id;
    emit shown();
}

void HowToModel::componentComplete() {
    if (!app_) return;
    knowhow_ = knowhow::built_in_knowhow(app_->reference());
    emit shown();
}

const knowhow::Card* HowToModel::shown_card() const {
    return knowhow_ ? knowhow_->card(card_.toStdString()) : nullptr;
}

QString HowToModel::say(const std::string& english) const {
    return app_ ? app_->format().reference(english) : QString();
}

QStringList HowToModel::say(const std::vector<std::string>& english) const {
    QStringList out;
    for (const auto& text : english)
        out << say(text);
    return out;
}

QVariantMap HowToModel::term(const std::string& term, const QString& text) const {
    return {{"term", say(term)}, {"text", text}};
}

QVariantList HowToModel::groups() const {
    QVariantList out;
    if (!knowhow_) return out;
    for (const auto& group : knowhow_->groups) {
        QVariantList cards;
        for (const auto& card : group.cards)
            cards << QVariantMap{{"card", QString::fromStdString(card.id)},
                                 {"title", say(card.title)},
                                 {"brief", say(card.brief)}};
        out << QVariantMap{{"title", say(group.title)}, {"cards", cards}};
    }
    return out;
}

QString HowToModel::problem() const {
    return knowhow_ || !app_ ? QString() : app_->format().text(knowhow_.error());
}

QString HowToModel::title() const {
    return found() ? say(shown_card()->title) : QString();
}

QString HowToModel::brief() const {
    return found() ? say(shown_card()->brief) : QString();
}

QStringList HowToModel::why() const {
    return found() ? say(shown_card()->why) : QStringList();
}

QStringList HowToModel::how() const {
    return found() ? say(shown_card()->how) : QStringList();
}

QVariantList HowToModel::signs() const {
    QVariantList out;
    if (!found()) return out;
    for (const auto& sign : shown_card()->signs)
        out << term(sign.sign, say(sign.means));
    return out;
}

QVariantList HowToModel::slips() const {
    QVariantList out;
    if (!found()) return out;
    for (const auto& slip : shown_card()->slips)
        out << term(slip.slip, say(slip.then));
    return out;
}

QStringList HowToModel::cautions() const {
    QStringList out;
    if (!found()) return out;
    for (const auto& id : shown_card()->cautions)
        if (const auto* caution = knowhow::caution_of(app_->reference(), id)) out << say(caution->text);
    return out;
}

QVariantList HowToModel::pictures() const {
    QVariantList out;
    if (!found()) return out;
    for (const auto& id : shown_card()->pictures) {
        const auto* picture = knowhow_->picture(id);
        if (!picture) continue;
        QVariantList strokes, marks;
        for (const auto& stroke : picture->strokes)
            strokes << QVariantMap{{"look", QString::fromStdString(stroke.look)},
                                   {"path", QString::fromStdString(stroke.path)}};
        for (const auto& mark : picture->marks)
            marks << QVariantMap{{"x", mark.x}, {"y", mark.y}, {"text", say(mark.text)}};
        out << QVariantMap{{"id", QString::fromStdString(picture->id)},
                           {"title", say(picture->title)},
                           {"description", say(picture->description)},
                           {"width", picture->width},
                           {"height", picture->height},
                           {"strokes", strokes},
                           {"marks", marks}};
    }
    return out;
}

QVariantList HowToModel::sources() const {
    QVariantList out;
    if (!found()) return out;
    for (const auto& source : shown_card()->sources)
        out << term(source.what, source.name.empty() ? app_->format().heading(source.kind)
                                                     : QString::fromStdString(source.name));
    return out;
}

QString HowToModel::nextCard() const {
    const auto* next = found() ? knowhow_->after(card_.toStdString()) : nullptr;
    return next ? QString::fromStdString(next->id) : QString();
}

QString HowToModel::nextTitle() const {
    const auto* next = found() ? knowhow_->after(card_.toStdString()) : nullptr;
    return next ? say(next->title) : QString();
}

}  // namespace lapwing
