// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/again_model.h"

#include <QJsonDocument>
#include <QJsonObject>

#include "qml/viewmodels/pad_fields.h"

namespace lapwing {

void AgainModel::setTest(const QString& text) {
    test_ = from_word<TestKind>(text.toStdString()).value_or(TestKind::dry);
    emit testChanged();
}

void AgainModel::refresh() {
    if (!found() || starting_) return;
    const auto cylinder = cylinder_ > 0 ? std::optional(cylinder_) : std::nullopt;
    where_ = again(app()->desk(), engine().id, session().id, test_, cylinder, other_);
    open_ = where_.in ? app()->desk().session(*where_.in) : std::nullopt;
    if (looked_) return;
    looked_ = true;
    if (open_) start_ = {open_->conditions.throttle, open_->conditions.heat};
}

QString AgainModel::title() const {
    const QString what = format().heading(test_);
    return cylinder_ > 0 ? tr("%1, cylinder %2").arg(what).arg(cylinder_) : what;
}

QString AgainModel::why() const {
    if (open_)
        return tr("It goes into the session of %1, which is open for it.")
            .arg(format().shortDateTime(open_->opened_at));
    return tr(
        "Readings under other conditions can't be averaged with those that you have. They get a session "
        "of their own, and Before and after holds the two side by side.");
}

bool AgainModel::asksThrottle() const {
    return found() && is_cranking(test_) && engine().fuel != Fuel::diesel &&
           session().conditions.induction != Induction::off && asksHeat();
}

bool AgainModel::asksHeat() const {
    return !open_ || where_.ask;
}

void AgainModel::setThrottleOpen(bool open) {
    start_.throttle = open ? Throttle::held_open : Throttle::unknown;
    emit refreshed();
}

void AgainModel::setWarm(bool warm) {
    start_.heat = warm ? EngineHeat::warm : EngineHeat::unknown;
    emit refreshed();
}

QString AgainModel::before(const QString& name) const {
    return tr("In the session before: %1").arg(name);
}

QString AgainModel::throttleBefore() const {
    const auto was = session().conditions.throttle;
    return was == Throttle::unknown ? QString() : before(format().name(was));
}

QString AgainModel::heatBefore() const {
    const auto was = session().conditions.heat;
    return was == EngineHeat::unknown ? QString() : before(format().name(was));
}

QString AgainModel::startText() const {
    return open_ ? tr("Go on there") : tr("Start a new session");
}

void AgainModel::takeDigitsTo(SessionId session) {
    if (session == this->session().id) return;
    const QString from = QStringLiteral("pad/%1/%2").arg(sessionId(), test());
    const QString to = QStringLiteral("pad/%1/%2").arg(QString::fromStdString(session.text()), test());
    auto here = QJsonDocument::fromJson(app()->draft(from).toUtf8()).object();
    auto entries = here[QStringLiteral("entries")].toObject();
    auto typed = entries.take(QString::number(cylinder_)).toObject();
    if (typed.isEmpty()) return;
    // What they were to stand in place of stays where it is.
    typed.remove(QStringLiteral("redo"));
    here[QStringLiteral("entries")] = entries;
    const auto text = [](const QJsonObject& draft) {
        return QString::fromUtf8(QJsonDocument(draft).toJson(QJsonDocument::Compact));
    };
    auto there = QJsonDocument::fromJson(app()->draft(to).toUtf8()).object();
    auto others = there[QStringLiteral("entries")].toObject();
    others[QString::number(cylinder_)] = typed;
    there[QStringLiteral("entries")] = others;
    there[QStringLiteral("cylinder")] = cylinder_;
    app()->keepDraft(to, text(there));
    app()->keepDraft(from, text(here));
}

void AgainModel::start() {
    if (!found() || starting_) return;
    starting_ = true;
    const auto id = open_ ? open_->id : app()->desk().make_id<SessionId>();
    const auto go_on = [this, id](const Result<workflow::Step>& step) {
        starting_ = false;
        if (!step) return;
        takeDigitsTo(id);
        emit started(QString::fromStdString(id.text()));
    };
    if (!open_) {
        const QString title = throttleOpen() && warm() ? tr("Throttle open, warm")
                              : throttleOpen()         ? tr("Throttle open")
                              : warm()                 ? tr("Warm")
                                                       : tr("Tested again");
        app()->run(workflow::open_session(id, engine().id, title.toStdString(), start_), this, go_on);
    } else if (where_.ask) {
        app()->run(workflow::set_start(id, start_), this, go_on);
    } else {
        go_on(workflow::Step{});
    }
}

}  // namespace lapwing
