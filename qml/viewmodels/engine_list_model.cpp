// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/engine_list_model.h"

#include <QDateTime>
#include <algorithm>

#include "qml/viewmodels/engine_glances.h"
#include "qml/viewmodels/my_call_model.h"
#include "qml/viewmodels/session_name.h"
#include "qml/viewmodels/step_text.h"

namespace lapwing {

void EngineListModel::setApp(AppContext* app) {
    if (app_ == app) return;
    app_ = app;
    emit appChanged();
}

void EngineListModel::componentComplete() {
    glances_ = new EngineGlances(app_->desk(), app_->reference(), this);
    connect(glances_, &EngineGlances::ready, this, &EngineListModel::showGlance);
    connect(app_, &AppContext::changed, this, &EngineListModel::forget);
    connect(app_, &AppContext::formatChanged, this, [this] {
        names_.clear();
        tellAll();
    });
    reload();
}

void EngineListModel::forget(const workflow::Change& change) {
    if (change.engines.empty() && !change.kinds.contains(RecordKind::tester)) return;
    glances_->forget(change);
    names_.clear();
    reload();
}

void EngineListModel::reload() {
    auto engines = app_->desk().engines();
    const bool same_rows = engines.size() == engines_.size() &&
                           std::equal(engines.begin(), engines.end(), engines_.begin(),
                                      [](const auto& a, const auto& b) { return a.id == b.id; });
    if (same_rows && filter_.isEmpty()) {
        engines_ = std::move(engines);
        search_.forget();
        tellAll();
        emit refreshed();
        return;
    }
    engines_ = std::move(engines);
    search_.forget();
    pick();
}

void EngineListModel::pick() {
    beginResetModel();
    rows_ = search_.find(engines_, filter_);
    endResetModel();
    emit refreshed();
}

void EngineListModel::change(std::vector<std::size_t> wanted) {
    // What lies far down is out of sight: it may go and come as one.
    constexpr int few = 24;
    const auto place = [this](std::size_t at) { return rows_.begin() + static_cast<std::ptrdiff_t>(at); };
    const auto remove = [&](std::size_t from, std::size_t to) {
        if (from == to) return;
        beginRemoveRows({}, static_cast<int>(from), static_cast<int>(to) - 1);
        rows_.erase(place(from), place(to));
        endRemoveRows();
    };
    const auto insert = [&](std::size_t from, std::size_t to) {
        if (from == to) return;
        beginInsertRows({}, static_cast<int>(from), static_cast<int>(to) - 1);
        rows_.insert(place(from), wanted.begin() + static_cast<std::ptrdiff_t>(from),
                     wanted.begin() + static_cast<std::ptrdiff_t>(to));
        endInsertRows();
    };
    std::size_t at = 0;
    for (int changes = 0; changes < few; ++changes) {
        while (at < rows_.size() && at < wanted.size() && rows_[at] == wanted[at])
            ++at;
        std::size_t end = at;
        if (at == rows_.size() || at == wanted.size()) break;
        if (rows_[at] < wanted[at]) {
            while (end < rows_.size() && rows_[end] < wanted[at])
                ++end;
            remove(at, end);
        } else {
            while (end < wanted.size() && wanted[end] < rows_[at])
                ++end;
            insert(at, end);
        }
    }
    remove(at, rows_.size());
    insert(at, wanted.size());
}

void EngineListModel::setLooking(bool looking) {
    if (looking_ == looking) return;
    looking_ = looking;
    emit lookingChanged();
    if (looking_) tellAll({LastRole, BoresRole, BoreLineRole, BoreStateRole, BoreEarlierRole});
}

void EngineListModel::setFilter(const QString& filter) {
    if (filter_ == filter) return;
    filter_ = filter;
    emit filterChanged();
    change(search_.find(engines_, filter_));
    emit refreshed();
}

int EngineListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : count();
}

QVariant EngineListModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= count()) return {};
    const auto& engine = engines_[rows_[static_cast<std::size_t>(index.row())]];
    switch (role) {
        case IdRole:
            return QString::fromStdString(engine.id.text());
        case NameRole:
            return QString::fromStdString(engine.name);
        case LastRole: {
            // Bores, verdict and day belong together: a session in which nothing is measured yet is only
            // named.
            const EngineGlance seen = looking_ ? glances_->of(engine) : EngineGlance::blank(engine.cylinders);
            if (!seen.session || seen.session == engine.last_session) return lastLine(engine);
            workflow::EngineSummary measured = engine;
            measured.last_session = seen.session;
            return lastLine(measured) + QLatin1Char('\n') +
                   tr("New session of %1: no reading yet")
                       .arg(app_->format().shortDate(*engine.last_opened_at));
        }
        case TagsRole: {
            QStringList tags;
            for (const auto& tag : engine.tags)
                tags << QString::fromStdString(tag);
            return tags;
        }
        case BoresRole:
            return glance(engine).bores;
        case BoreLineRole:
            return glance(engine).line;
        case BoreStateRole:
            return glance(engine).state;
        case BoreEarlierRole:
            return glance(engine).earlier;
        case RetestRole:
            return retestLine(engine);
        default:
            return {};
    }
}

EngineGlance EngineListModel::glance(const workflow::EngineSummary& engine) const {
    if (!looking_) return EngineGlance::blank(engine.cylinders);
    auto glance = glances_->of(engine);
    if (!app_->settings()->callFirst()) return glance;
    std::vector<SessionId> hidden;
    for (const SessionId& id : glance.sessions)
        if (const auto visit = app_->desk().visit(id); visit && call_wanted(*app_, *visit))
            hidden.push_back(id);
    return hidden.empty() ? glance : glance.without(hidden, not_judged_yet, engine.cylinders);
}

QHash<int, QByteArray> EngineListModel::roleNames() const {
    return {{IdRole, "engineId"},         {NameRole, "name"},     {LastRole, "last"},
            {TagsRole, "tags"},           {BoresRole, "bores"},   {BoreLineRole, "boreLine"},
            {BoreStateRole, "boreState"}, {RetestRole, "retest"}, {BoreEarlierRole, "boreEarlier"}};
}

/// As every page calls it. Kept: a list that is drawn asks often, and a session without a title is named by
/// its readings.
QString EngineListModel::lastLine(const workflow::EngineSummary& summary) const {
    if (!summary.last_session) return tr("No session yet");
    QString& line = names_[QString::fromStdString(summary.last_session->text())];
    if (!line.isEmpty()) return line;
    const auto all = app_->desk().sessions(summary.id);
    const auto session = std::ranges::find(all, *summary.last_session, &Session::id);
    if (session != all.end()) line = session_name(*session, all, app_->desk(), app_->format()).line();
    return line;
}

/// Due from the planned day's beginning, where it was planned.
QString EngineListModel::retestLine(const workflow::EngineSummary& summary) const {
    const auto& planned = summary.retest_planned_for;
    if (!planned) return {};
    const QString date = app_->format().shortDate(*planned);
    const auto day = [](Timestamp at, int offset_min) {
        return QDateTime::fromMSecsSinceEpoch(at.unix_ms, Qt::OffsetFromUTC, offset_min * 60).date();
    };
    const Timestamp now = app_->desk().clock().now();
    if (day(now, planned->offset_min) < day(*planned, planned->offset_min))
        return tr("Retest planned for %1").arg(date);
    return tr("Retest due, planned for %1").arg(date);
}

void EngineListModel::tellAll(const QList<int>& roles) {
    if (count() > 0) emit dataChanged(index(0), index(count() - 1), roles);
}

void EngineListModel::showGlance(const QString& engineId) {
    const auto id = EngineId::parse(engineId.toStdString());
    for (int row = 0; id && row < count(); ++row)
        if (engines_[rows_[static_cast<std::size_t>(row)]].id == *id)
            emit dataChanged(index(row), index(row),
                             {LastRole, BoresRole, BoreLineRole, BoreStateRole, BoreEarlierRole});
}

QVariantList EngineListModel::choices(const QString& words, int most) const {
    QVariantList list;
    for (const std::size_t i : search_.find(engines_, words, static_cast<std::size_t>(most))) {
        const auto& engine = engines_[i];
        list << QVariantMap{{QStringLiteral("value"), QString::fromStdString(engine.id.text())},
                            {QStringLiteral("text"), QString::fromStdString(engine.name)},
                            {QStringLiteral("detail"), lastLine(engine)}};
    }
    return list;
}

void EngineListModel::lookAgain() {
    tellAll({LastRole, BoresRole, BoreLineRole, BoreStateRole, BoreEarlierRole});
    emit refreshed();
}

QVariantMap EngineListModel::goOn() const {
    if (engines_.empty() || !engines_.front().last_session) return {};
    const auto& newest = engines_.front();
    const auto day = [this](Timestamp at) { return app_->format().shortDate(at); };
    if (!newest.last_opened_at || day(*newest.last_opened_at) != day(app_->desk().clock().now())) return {};
    return {{QStringLiteral("sessionId"), QString::fromStdString(newest.last_session->text())},
            {QStringLiteral("name"), QString::fromStdString(newest.name)}};
}

QVariantMap EngineListModel::lastStep() const {
    const auto step = app_ ? app_->desk().last_step() : std::nullopt;
    // A call that was committed stands.
    if (!step || step->name == "note.call") return {};
    return {{QStringLiteral("step"), QVariant::fromValue<qint64>(step->number)},
            {QStringLiteral("text"), step_text(*step, app_->format())}};
}

QVariantMap EngineListModel::lastUndone() const {
    const auto step = app_ ? app_->desk().last_undone() : std::nullopt;
    if (!step) return {};
    return {{QStringLiteral("step"), QVariant::fromValue<qint64>(step->number)},
            {QStringLiteral("text"), step_text(*step, app_->format())}};
}

QString EngineListModel::onlySession() const {
    if (engines_.size() != 1 || !engines_.front().last_session) return {};
    return QString::fromStdString(engines_.front().last_session->text());
}

QString EngineListModel::engineOf(const QString& sessionId) const {
    const auto session = SessionId::parse(sessionId.toStdString());
    const auto engine = session && app_ ? app_->desk().engine_of(*session) : std::nullopt;
    return engine ? QString::fromStdString(engine->text()) : QString();
}

QString EngineListModel::onlyEngine() const {
    return engines_.size() == 1 ? QString::fromStdString(engines_.front().id.text()) : QString();
}

}  // namespace lapwing
