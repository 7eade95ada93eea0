// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/plan_model.h"

#include <QDate>
#include <QDateTime>
#include <algorithm>

#include "core/findings/cautions.h"
#include "core/model/plan_totals.h"
#include "core/workflow/plan.h"
#include "core/workflow/sessions.h"
#include "qml/viewmodels/change_lines.h"
#include "qml/viewmodels/derivation_item.h"
#include "qml/viewmodels/form_lines.h"
#include "qml/viewmodels/my_call_model.h"

namespace lapwing {
namespace {

QString own(const std::string& words) {
    return QString::fromStdString(words);
}

QString price_text(const Money& price, const format::Formatter& format) {
    return forms::digits(price.digits, format) + u' ' + own(price.currency);
}

QString hours_text(double seconds, const format::Formatter& format) {
    constexpr double an_hour = 3600.0;
    const double hours = std::round(100.0 * seconds / an_hour) / 100.0;
    return format.locale().toString(hours, 'g', 6) + QStringLiteral(" h");
}

std::vector<const PlanLine*> work_done(const Visit& visit) {
    std::vector<const PlanLine*> out;
    for (const PlanLine& line : visit.plan)
        if (line.done_at && line.option != PlanOption::leave) out.push_back(&line);
    return out;
}

std::optional<PlanLineId> line_id(const QString& text) {
    return PlanLineId::parse(text.toStdString());
}

}  // namespace

bool PlanModel::proposing() const {
    return found() && (!findings() || oddsState() == QLatin1String("working"));
}

void PlanModel::refresh() {
    if (!found()) return;
    const auto show = [this](QVariantList& shown, QVariantList now, void (PlanModel::*changed)()) {
        if (shown == now) return;
        shown = std::move(now);
        emit(this->*changed)();
    };
    const std::vector<Offer> offered = offers();
    show(lines_, linesNow(offered), &PlanModel::linesChanged);
    show(totals_, totalsNow(), &PlanModel::totalsChanged);
    show(proposals_, proposalsNow(offered), &PlanModel::proposalsChanged);
}

QVariantList PlanModel::linesNow(const std::vector<Offer>& offers) const {
    QVariantList list;
    const auto ordered = in_order(visit().plan);
    for (const PlanLine* line : ordered) {
        QStringList details;
        if (!line->parts.empty()) details << tr("Parts: %1").arg(own(line->parts));
        QStringList costs;
        if (line->labour) costs << format().typed(*line->labour);
        if (line->price) costs << price_text(*line->price, format());
        if (!costs.isEmpty()) details << costs.join(QStringLiteral(" · "));
        if (!line->reason.empty()) details << tr("Why: %1").arg(own(line->reason));
        if (!line->if_left.empty()) details << tr("If it is left: %1").arg(own(line->if_left));
        QString expected;
        if (line->predicted_low && line->predicted_high)
            expected = tr("Dry test to expect after it: %1 to %2")
                           .arg(format().typed(*line->predicted_low), format().typed(*line->predicted_high));
        QString title = format().heading(line->option);
        if (line->cylinder) title = tr("%1, cylinder %2").arg(title).arg(*line->cylinder);
        list << QVariantMap{
            {"id", own(line->id.text())},
            {"option", QString::fromUtf8(word(line->option).data(), qsizetype(word(line->option).size()))},
            {"title", title},
            {"work", line->work.empty() ? tr("Nothing is written here yet") : own(line->work)},
            {"details", details},
            {"expected", expected},
            {"from", expected.isEmpty() ? QVariantList() : fromOf(*line, offers)},
            {"proofs", proofsOf(*line)},
            {"done", line->done_at.has_value()},
            {"doneText", line->done_at ? tr("Done %1").arg(format().shortDate(*line->done_at)) : QString()},
            {"first", line == ordered.front()},
            {"last", line == ordered.back()}};
    }
    return list;
}

void PlanModel::sessionRead() {
    OddsBacked::sessionRead();
    prove();
}

PlanModel::Since PlanModel::since_of(const Dossier& history, const Visit& visit,
                                     const findings::Reference& reference) {
    Since out{compare::proofs_of(history, reference)};
    std::optional<Timestamp> first, last;
    for (const PlanLine* line : work_done(visit)) {
        first = std::min(first.value_or(*line->done_at), *line->done_at);
        last = std::max(last.value_or(*line->done_at), *line->done_at);
    }
    if (!last) return out;
    std::optional<Timestamp> soonest;
    for (const Visit& other : history.visits) {
        for (const Reading& reading : other.readings) {
            out.any = out.any || reading.taken_at >= *last;
            if (other.session.id == visit.session.id || reading.taken_at < *first) continue;
            if (soonest && reading.taken_at >= *soonest) continue;
            soonest = reading.taken_at;
            out.next = other.session.id;
        }
    }
    return out;
}

/// Off the UI thread: what was read after the work may have to be put into this visit's terms. The prover
/// ends before the page does; a posted event dies with the page.
void PlanModel::prove() {
    // What was known stands until more is: the button under the thumb must not change to and fro.
    if (work_done(visit()).empty()) {
        since_ = {};
        looked_ = false;
        return;
    }
    if (!prover_) prover_ = std::make_unique<workflow::Background>();
    prover_->ask<Since>(
        [&desk = app()->desk(), &reference = reference(), visit = visit()](const std::stop_token&) {
            const auto history = desk.dossier(visit.session.engine);
            return history ? since_of(*history, visit, reference) : Since{};
        },
        [this](Since since) {
            QMetaObject::invokeMethod(
                this,
                [this, since = std::move(since)]() mutable {
                    since_ = std::move(since);
                    looked_ = true;
                    refresh();
                    emit refreshed();
                },
                Qt::QueuedConnection);
        });
}

QString PlanModel::testAgain() const {
    if (!looked_ || since_.any) return {};
    const auto done = work_done(visit());
    if (done.empty()) return {};
    const auto* newest =
        *std::ranges::max_element(done, {}, [](const PlanLine* line) { return line->done_at->unix_ms; });
    // What was apart is another visit's; a quick fix of today is looked at in the session that asked for it.
    const auto day = [this](Timestamp at) { return format().shortDate(at); };
    const bool here = newest->option == PlanOption::quick_fix &&
                      day(app()->desk().clock().now()) == day(session().opened_at);
    return here ? QStringLiteral("here") : QStringLiteral("later");
}

QString PlanModel::retestedIn() const {
    return since_.next ? own(since_.next->text()) : QString();
}

QVariantList PlanModel::proofsOf(const PlanLine& line) const {
    QVariantList out;
    if (!line.done_at) return out;
    for (const compare::Proof& proof : since_.proofs) {
        if (proof.line != line.id) continue;
        // A verdict on a visit waits for the person's own call on it.
        const bool first = app()->settings()->callFirst() && proof.read_in;
        const auto read_in = first ? app()->desk().visit(*proof.read_in) : std::nullopt;
        if (!read_in || !call_wanted(*app(), *read_in)) out << proof_line(proof, format());
    }
    return out;
}

QVariantList PlanModel::totalsNow() const {
    QVariantList list;
    const auto add = [&](const QString& name, const PlanTotals& of) {
        QStringList parts;
        for (const Money& price : of.prices)
            parts << price_text(price, format());
        if (of.labour_s > 0.0) parts << hours_text(of.labour_s, format());
        if (of.left_out > 0) parts << tr("%n price(s) too long to add up", nullptr, of.left_out);
        if (!parts.isEmpty())
            list << QVariantMap{{"name", name}, {"value", parts.join(QStringLiteral(" · "))}};
    };
    const PlanTotals quick = totals_of(visit().plan, PlanOption::quick_fix);
    const PlanTotals strip = totals_of(visit().plan, PlanOption::strip);
    if (quick.lines > 0 && strip.lines > 0) {
        add(tr("Quick fixes"), quick);
        add(tr("Strip"), strip);
    }
    add(tr("Everything"), totals_of(visit().plan));
    return list;
}

PlanLine PlanModel::lineOf(const workflow::Proposal& proposal) const {
    PlanLine line;
    line.session = session().id;
    line.option = proposal.option;
    line.cylinder = proposal.cylinder;
    line.work = format().text(proposal.work).toStdString();
    QString reason = format().text(proposal.reason);
    if (proposal.if_left) line.if_left = format().text(*proposal.if_left).toStdString();
    if (const auto& range = proposal.expected) {
        const auto typed = [&](double pa) -> std::optional<TypedPressure> {
            const findings::Figure figure{findings::Dimension::gauge_pressure, pa, {}, {}, {}};
            const auto made =
                TypedPressure::make(format().digits(figure).toStdString(), format().choice().pressure);
            return made ? std::optional(*made) : std::nullopt;
        };
        line.predicted_low = typed(range->low_pa);
        line.predicted_high = typed(range->high_pa);
        if (!range->comparable_at_once && proposal.cylinder)
            reason += u' ' + format().text(findings::Message{"odds.fresh_hone", {*proposal.cylinder}});
    }
    line.reason = reason.toStdString();
    return line;
}

bool PlanModel::planned(const PlanLine& line, const std::set<std::string>& proposed) const {
    return std::any_of(visit().plan.begin(), visit().plan.end(), [&](const PlanLine& there) {
        const bool strip = there.option == PlanOption::strip;
        // What was measured before it was taken apart says nothing of it any more.
        if (strip && there.done_at && (!line.cylinder || there.cylinder == line.cylinder)) return true;
        if (there.option != line.option || there.cylinder != line.cylinder) return false;
        // Somebody's own words for taking this cylinder apart stand in for ours.
        return there.work == line.work || (strip && !proposed.contains(there.work));
    });
}

std::vector<PlanModel::Offer> PlanModel::offers() const {
    std::vector<Offer> out;
    // With the odds, not before: what the rules of thumb alone would propose might be taken back a moment
    // later.
    if (!found() || proposing()) return out;
    for (const auto& proposal : workflow::propose(dossier(), visit(), *findings(), leaks(), reference()))
        out.push_back({lineOf(proposal),
                       proposal.expected ? proposal.expected->from : std::vector<findings::Derivation>()});
    return out;
}

/// Of what is planned: as it is worked out now. A range that somebody wrote himself comes from nowhere else;
/// one that was taken over keeps where it comes from, whatever words were put to the work.
QVariantList PlanModel::fromOf(const PlanLine& line, const std::vector<Offer>& offers) const {
    for (const Offer& offer : offers)
        if (offer.line.cylinder == line.cylinder && offer.line.predicted_low == line.predicted_low &&
            offer.line.predicted_high == line.predicted_high)
            return derivation_items(offer.from, format());
    return {};
}

QVariantMap PlanModel::proposalMap(const Offer& offer) const {
    const PlanLine& line = offer.line;
    QString title = format().heading(line.option);
    if (line.cylinder) title = tr("%1, cylinder %2").arg(title).arg(*line.cylinder);
    QString expected;
    if (line.predicted_low && line.predicted_high)
        expected = tr("Dry test to expect after it, in nine cases of ten: %1 to %2")
                       .arg(format().typed(*line.predicted_low), format().typed(*line.predicted_high));
    return {{"title", title},
            {"work", own(line.work)},
            {"reason", own(line.reason)},
            {"expected", expected},
            {"from", derivation_items(offer.from, format())}};
}

QVariantList PlanModel::proposalsNow(const std::vector<Offer>& offers) {
    QVariantList list;
    proposed_.clear();
    std::set<std::string> works;
    for (const Offer& offer : offers)
        works.insert(offer.line.work);
    for (const Offer& offer : offers) {
        if (planned(offer.line, works)) continue;
        list << proposalMap(offer);
        proposed_.push_back(offer.line);
    }
    return list;
}

QStringList PlanModel::cautions() const {
    QStringList texts;
    const auto tries = [](const PlanLine& line) {
        return line.option == PlanOption::quick_fix && !line.done_at;
    };
    const auto stakes = [&](const PlanLine& line) {
        return tries(line) && findings::says_staking(line.work);
    };
    std::vector<std::string_view> places{"plan"};
    // What is tried before a strip-down is done on the running engine and a hot cooling system.
    if (std::ranges::any_of(visit().plan, tries)) places.insert(places.end(), {"running", "coolant"});
    if (std::ranges::any_of(visit().plan, stakes)) places.emplace_back("trying");
    for (const auto place : places) {
        for (const auto* caution : findings::cautions_for(reference(), place, engine())) {
            const QString text = format().reference(caution->text);
            if (!texts.contains(text)) texts << text;
        }
    }
    return texts;
}

void PlanModel::takeOver(int proposal) {
    if (proposal < 0 || proposal >= static_cast<int>(proposed_.size())) return;
    app()->run(workflow::add_plan_line(proposed_[static_cast<std::size_t>(proposal)]), this);
}

void PlanModel::addLine() {
    PlanLine line;
    line.session = session().id;
    line.id = app()->desk().make_id<PlanLineId>();
    app()->run(workflow::add_plan_line(line), this, [this, id = line.id](const Result<workflow::Step>& step) {
        if (step) emit added(own(id.text()));
    });
}

void PlanModel::tick(const QString& id, bool done) {
    if (const auto line = line_id(id)) app()->run(workflow::tick_plan_line(*line, done), this);
}

void PlanModel::move(const QString& id, bool up) {
    if (const auto line = line_id(id))
        app()->run(workflow::move_plan_line(*line, up ? workflow::PlanMove::up : workflow::PlanMove::down),
                   this);
}

// ---- The owner, and the retest

QString PlanModel::answer() const {
    const auto text = word(session().owner_answer);
    return QString::fromUtf8(text.data(), qsizetype(text.size()));
}

QString PlanModel::answeredAt() const {
    return session().owner_answered_at ? tr("Noted %1").arg(format().shortDate(*session().owner_answered_at))
                                       : QString();
}

void PlanModel::setAnswer(const QString& word) {
    if (const auto chosen = from_word<OwnerAnswer>(word.toStdString()))
        app()->run(workflow::set_answer(session().id, *chosen), this);
}

QString PlanModel::retest() const {
    return session().retest_planned_for ? format().shortDate(*session().retest_planned_for) : QString();
}

void PlanModel::planRetest(const QDate& day) {
    const Timestamp now = app()->desk().clock().now();
    const QDateTime noon(day, QTime(12, 0), Qt::OffsetFromUTC, now.offset_min * 60);
    app()->run(workflow::plan_retest(session().id, Timestamp{noon.toMSecsSinceEpoch(), now.offset_min}),
               this);
}

void PlanModel::retestInMonths(int months) {
    if (months <= 0) {
        app()->run(workflow::plan_retest(session().id, std::nullopt), this);
        return;
    }
    const Timestamp now = app()->desk().clock().now();
    planRetest(QDateTime::fromMSecsSinceEpoch(now.unix_ms, Qt::OffsetFromUTC, now.offset_min * 60)
                   .date()
                   .addMonths(months));
}

QString PlanModel::retestOn(const QString& day) {
    const QString typed = day.simplified();
    const auto& locale = format().locale();
    QDate date;
    for (const QString& pattern :
         {QStringLiteral("yyyy-M-d"), locale.dateFormat(QLocale::ShortFormat), QStringLiteral("d.M.yyyy"),
          QStringLiteral("d MMM yyyy"), QStringLiteral("MMM d, yyyy")})
        if (!date.isValid()) date = locale.toDate(typed, pattern);
    const int least_year = 2000, most_year = 2200;
    if (!date.isValid() || date.year() < least_year || date.year() > most_year)
        return tr("\"%1\" is not a day: type year, month and day, such as %2.")
            .arg(typed, QStringLiteral("2026-04-12"));
    const Timestamp now = app()->desk().clock().now();
    if (date < QDateTime::fromMSecsSinceEpoch(now.unix_ms, Qt::OffsetFromUTC, now.offset_min * 60).date())
        return tr("%1 is over: type a day that is still to come.")
            .arg(locale.toString(date, QLocale::ShortFormat));
    planRetest(date);
    return {};
}

}  // namespace lapwing
