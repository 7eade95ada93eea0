// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/record/record.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>
#include <tuple>

#include "core/record/walk.h"

namespace lapwing {
namespace {

template <class T>
concept InSession = requires(const T& value) {
    value.session.uuid;
};

/// Oldest first; records of one moment by their ids, so that the order never depends on who wrote the file.
template <class T>
void sort_by_time(std::vector<T>& all, Timestamp T::*time) {
    std::ranges::sort(all, {}, [&](const T& one) { return std::tuple((one.*time).unix_ms, one.id); });
}

void sort(Visit& visit) {
    sort_by_time(visit.readings, &Reading::taken_at);
    sort_by_time(visit.exits, &ExitNote::at);
    sort_by_time(visit.clearances, &Clearance::at);
    sort_by_time(visit.attachments, &Attachment::taken_at);
    sort_by_time(visit.notes, &Note::at);
    std::ranges::sort(visit.plan, {}, [](const PlanLine& line) { return std::tuple(line.order, line.id); });
}

/// Sorts records into the dossier that they belong to.
class Gathering {
public:
    Status take(Record record) {
        if (!ids_.insert(id_of(record)).second)
            return fail("record.id_twice",
                        "Two records have the id {}: the file was not written by this app.",
                        id_of(record).text());
        return std::visit([&](auto& value) { return put(std::move(value)); }, record);
    }

    Result<Dossier> done() {
        if (!engine_) return fail("record.no_engine", "There is no engine among the records.");
        Dossier dossier{std::move(*engine_), std::move(testers_), {}, {}};
        for (auto& [id, visit] : visits_) {
            if (visit.session.id.is_nil()) return orphans(id);
            if (visit.session.engine != dossier.engine.id)
                return fail("record.other_engine", "Session {} belongs to another engine.", id.text());
            sort(visit);
            dossier.visits.push_back(std::move(visit));
        }
        sort_by_time(dossier.testers, &Tester::made_at);
        std::ranges::sort(dossier.visits, {}, [](const Visit& visit) {
            return std::tuple(visit.session.opened_at.unix_ms, visit.session.id);
        });
        return dossier;
    }

private:
    Status put(Engine engine) {
        if (engine_)
            return fail("record.two_engines", "The records belong to more than one engine: {} and {}.",
                        engine_->name, engine.name);
        engine_ = std::move(engine);
        return {};
    }
    Status put(Tester tester) {
        testers_.push_back(std::move(tester));
        return {};
    }
    Status put(Session session) {
        auto& visit = visits_[session.id];
        visit.session = std::move(session);
        return {};
    }
    template <InSession T>
    Status put(T value) {
        list_of(visits_[value.session], value).push_back(std::move(value));
        return {};
    }

    static auto& list_of(Visit& visit, const Reading&) { return visit.readings; }
    static auto& list_of(Visit& visit, const ExitNote&) { return visit.exits; }
    static auto& list_of(Visit& visit, const Clearance&) { return visit.clearances; }
    static auto& list_of(Visit& visit, const Attachment&) { return visit.attachments; }
    static auto& list_of(Visit& visit, const Note&) { return visit.notes; }
    static auto& list_of(Visit& visit, const PlanLine&) { return visit.plan; }

    static tl::unexpected<Error> orphans(SessionId id) {
        return fail("record.orphan", "Records belong to session {}, which is not among them.", id.text());
    }

    std::set<Uuid> ids_;
    std::optional<Engine> engine_;
    std::vector<Tester> testers_;
    std::map<SessionId, Visit> visits_;
};

}  // namespace

RecordKind kind_of(const Record& record) {
    return static_cast<RecordKind>(record.index());
}

Uuid id_of(const Record& record) {
    return std::visit([](const auto& value) { return value.id.uuid; }, record);
}

Uuid parent_of(const Record& record) {
    return std::visit(
        []<class T>(const T& value) {
            if constexpr (std::same_as<T, Session>)
                return value.engine.uuid;
            else if constexpr (InSession<T>)
                return value.session.uuid;
            else
                return Uuid{};
        },
        record);
}

namespace {

/// The lists of a visit, one after the other.
template <class Visit, class F>
void each_list(Visit& visit, const F& look) {
    look(visit.readings);
    look(visit.exits);
    look(visit.clearances);
    look(visit.attachments);
    look(visit.notes);
    look(visit.plan);
}

}  // namespace

std::vector<Record> records_of(const Dossier& dossier) {
    return take_records(Dossier(dossier));
}

std::vector<Record> take_records(Dossier&& dossier) {
    std::vector<Record> out;
    out.reserve(count_records(dossier));
    const auto add = [&](auto& values) {
        out.insert(out.end(), std::make_move_iterator(values.begin()), std::make_move_iterator(values.end()));
    };
    out.emplace_back(std::move(dossier.engine));
    add(dossier.testers);
    for (auto& visit : dossier.visits) {
        out.emplace_back(std::move(visit.session));
        each_list(visit, add);
    }
    return out;
}

Status each_record(const Dossier& dossier, const std::function<Status(Record)>& take) {
    Status status = take(dossier.engine);
    const auto add = [&](const auto& values) {
        for (const auto& value : values)
            if (status) status = take(value);
    };
    add(dossier.testers);
    for (const auto& visit : dossier.visits) {
        if (status) status = take(visit.session);
        each_list(visit, add);
    }
    return status;
}

std::size_t count_records(const Dossier& dossier) {
    std::size_t count = 1 + dossier.testers.size() + dossier.visits.size();
    for (const auto& visit : dossier.visits)
        each_list(visit, [&](const auto& values) { count += values.size(); });
    return count;
}

Result<Dossier> dossier_of(std::vector<Record> records) {
    Gathering gathering;
    for (auto& record : records)
        if (auto taken = gathering.take(std::move(record)); !taken) return tl::unexpected(taken.error());
    return gathering.done();
}

}  // namespace lapwing
