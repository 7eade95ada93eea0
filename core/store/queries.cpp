// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/queries.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>

#include "core/store/tables.h"

namespace lapwing::store {
namespace {

/// Keeps one moment of the library in view while several statements read it; also inside a transaction.
class Snapshot {
public:
    explicit Snapshot(Connection& connection) : connection_(connection) {
        connection_.db().exec("SAVEPOINT snapshot");
    }
    ~Snapshot() { connection_.db().tryExec("RELEASE snapshot"); }
    Snapshot(const Snapshot&) = delete;
    Snapshot& operator=(const Snapshot&) = delete;

private:
    Connection& connection_;
};

template <class T>
constexpr RecordKind kind_for() {
    return static_cast<RecordKind>(Record(T{}).index());
}

template <class T>
Result<T> read(const std::string& id, const std::string& body) {
    auto record = record_from_json(kind_for<T>(), body);
    if (!record)
        return fail(
            "store.unreadable",
            "The {} {} in the library can't be read: {} It was left as it is; a newer Lapwing may read it.",
            word(kind_for<T>()), id, record.error().english);
    return std::get<T>(std::move(*record));
}

/// Reads every row of `query`, whose columns are id and body.
template <class T>
Result<std::vector<T>> read_all(Query& query) {
    std::vector<T> all;
    while (query.next()) {
        auto one = read<T>(query.text(0), query.text(1));
        if (!one) return tl::unexpected(one.error());
        all.push_back(std::move(*one));
    }
    return all;
}

template <class T>
Result<std::optional<T>> find(Connection& connection, const std::string& id) {
    const auto body = body_of(connection, kind_for<T>(), id);
    if (!body) return std::nullopt;
    return read<T>(id, *body).map([](T value) { return std::optional<T>(std::move(value)); });
}

template <class T>
Status read_children(Connection& connection, const std::string& parent, std::vector<T>& into) {
    Query query(connection, fmt::format("SELECT id, body FROM {} WHERE parent = ? ORDER BY at, id",
                                        table_of(kind_for<T>())));
    auto all = read_all<T>(query.with(parent));
    if (!all) return tl::unexpected(all.error());
    into = std::move(*all);
    return {};
}

Result<Visit> read_visit(Connection& connection, Session session) {
    Visit visit;
    const std::string id = session.id.text();
    visit.session = std::move(session);
    Status status = read_children(connection, id, visit.readings);
    if (status) status = read_children(connection, id, visit.exits);
    if (status) status = read_children(connection, id, visit.clearances);
    if (status) status = read_children(connection, id, visit.attachments);
    if (status) status = read_children(connection, id, visit.notes);
    if (status) status = read_children(connection, id, visit.plan);
    if (!status) return tl::unexpected(status.error());
    return visit;
}

Result<std::vector<Session>> read_sessions(Connection& connection, EngineId engine, const char* order) {
    Query query(
        connection,
        fmt::format("SELECT id, body FROM session WHERE parent = ? ORDER BY opened_at {0}, id {0}", order));
    return read_all<Session>(query.with(engine.text()));
}

std::set<TesterId> testers_named_in(const std::vector<Visit>& visits) {
    std::set<TesterId> ids;
    const auto add = [&](const std::optional<TesterId>& id) {
        if (id) ids.insert(*id);
    };
    for (const auto& visit : visits) {
        add(visit.session.compression_gauge);
        add(visit.session.leak_down_tester);
        add(visit.session.crankcase_tester);
        for (const auto& reading : visit.readings)
            add(reading.tester);
    }
    return ids;
}

std::vector<std::string> strings(const std::string& json) {
    std::vector<std::string> all;
    // Nearly every list is plain words in quotes: thousands of engines' tags are read before the first frame.
    if (json.find('\\') == std::string::npos) {
        for (std::size_t at = json.find('"'); at != std::string::npos; at = json.find('"', at)) {
            const std::size_t end = json.find('"', at + 1);
            if (end == std::string::npos) break;
            all.push_back(json.substr(at + 1, end - at - 1));
            at = end + 1;
        }
        return all;
    }
    for (const auto& item : nlohmann::json::parse(json, nullptr, false))
        if (item.is_string()) all.push_back(item);
    return all;
}

constexpr const char* step_columns = "SELECT number, name, args, at, at_offset, undone FROM step ";

Step step_from(const Query& query) {
    return Step{query.integer(0), query.text(1), strings(query.text(2)),
                Timestamp{query.integer(3), static_cast<int>(query.integer(4))}, query.integer(5) != 0};
}

Result<std::optional<Step>> one_step(Connection& connection, const std::string& which) {
    return guarded(connection, [&]() -> Result<std::optional<Step>> {
        Query query(connection, step_columns + which);
        if (!query.next()) return std::nullopt;
        return step_from(query);
    });
}

EngineSummary summary_from(const Query& query) {
    EngineSummary summary;
    summary.id = EngineId::parse(query.text(0)).value_or(EngineId{});
    summary.name = query.text(1);
    summary.description = query.text(2);
    summary.tags = strings(query.text(3));
    summary.cylinders = static_cast<int>(query.integer(4));
    if (query.is_null(5)) return summary;
    summary.last_session = SessionId::parse(query.text(5));
    summary.last_opened_at = Timestamp{query.integer(6), static_cast<int>(query.integer(7))};
    if (!query.is_null(8))
        summary.retest_planned_for = Timestamp{query.integer(8), static_cast<int>(query.integer(9))};
    return summary;
}

}  // namespace

Result<std::vector<EngineSummary>> Queries::engines() const {
    return guarded(connection_, [&]() -> Result<std::vector<EngineSummary>> {
        // The indexes are named because a planner may as well look a session up by its id, in the rows.
        Query query(connection_, R"sql(
            SELECT e.id, e.name, e.description, e.tags, e.cylinders,
                   s.id, s.opened_at, s.opened_offset, s.retest_at, s.retest_offset
            FROM engine e INDEXED BY engine_in_list
                LEFT JOIN session s INDEXED BY session_by_engine
                ON s.parent = e.id AND (s.opened_at, s.id) =
                    (SELECT opened_at, id FROM session WHERE parent = e.id
                     ORDER BY opened_at DESC, id DESC LIMIT 1)
            ORDER BY coalesce(s.opened_at, e.made_at) DESC, e.id DESC)sql");
        std::vector<EngineSummary> all;
        while (query.next())
            all.push_back(summary_from(query));
        return all;
    });
}

Result<std::optional<Engine>> Queries::engine(EngineId id) const {
    return guarded(connection_, [&] { return find<Engine>(connection_, id.text()); });
}

Result<std::optional<Tester>> Queries::tester(TesterId id) const {
    return guarded(connection_, [&] { return find<Tester>(connection_, id.text()); });
}

Result<std::vector<Tester>> Queries::testers() const {
    return guarded(connection_, [&] {
        Query query(connection_, "SELECT id, body FROM tester ORDER BY name COLLATE NOCASE, id");
        return read_all<Tester>(query);
    });
}

Result<std::vector<Session>> Queries::sessions(EngineId id) const {
    return guarded(connection_, [&] { return read_sessions(connection_, id, "DESC"); });
}

Result<std::optional<Session>> Queries::session(SessionId id) const {
    return guarded(connection_, [&] { return find<Session>(connection_, id.text()); });
}

Result<std::vector<Note>> Queries::requests(EngineId id) const {
    return guarded(connection_, [&] {
        // The word is looked for in the text, so that only what may be a request is read.
        Query query(connection_,
                    "SELECT note.id, note.body FROM note JOIN session ON session.id = note.parent "
                    "WHERE session.parent = ? AND instr(note.body, ?) > 0 ORDER BY note.at, note.id");
        auto notes = read_all<Note>(query.with(id.text(), std::string(word(NoteKind::test_request))));
        if (notes)
            std::erase_if(*notes, [](const Note& note) { return note.kind != NoteKind::test_request; });
        return notes;
    });
}

Result<std::optional<Visit>> Queries::visit(SessionId id) const {
    return guarded(connection_, [&]() -> Result<std::optional<Visit>> {
        const Snapshot snapshot(connection_);
        auto found = find<Session>(connection_, id.text());
        if (!found) return tl::unexpected(found.error());
        if (!*found) return std::nullopt;
        return read_visit(connection_, std::move(**found)).map([](Visit visit) {
            return std::optional<Visit>(std::move(visit));
        });
    });
}

Result<std::optional<Dossier>> Queries::dossier(EngineId id) const {
    return guarded(connection_, [&]() -> Result<std::optional<Dossier>> {
        const Snapshot snapshot(connection_);
        auto engine = find<Engine>(connection_, id.text());
        if (!engine) return tl::unexpected(engine.error());
        if (!*engine) return std::nullopt;
        auto sessions = read_sessions(connection_, id, "ASC");
        if (!sessions) return tl::unexpected(sessions.error());

        Dossier dossier;
        dossier.engine = std::move(**engine);
        for (auto& session : *sessions) {
            auto visit = read_visit(connection_, std::move(session));
            if (!visit) return tl::unexpected(visit.error());
            dossier.visits.push_back(std::move(*visit));
        }
        for (const auto& tester_id : testers_named_in(dossier.visits)) {
            auto tester = find<Tester>(connection_, tester_id.text());
            if (!tester) return tl::unexpected(tester.error());
            if (*tester) dossier.testers.push_back(std::move(**tester));
        }
        return dossier;
    });
}

Result<std::optional<EngineId>> Queries::engine_of(SessionId id) const {
    return guarded(connection_, [&]() -> Result<std::optional<EngineId>> {
        Query query(connection_, "SELECT parent FROM session WHERE id = ?");
        if (!query.with(id.text()).next()) return std::nullopt;
        return EngineId::parse(query.text(0));
    });
}

Result<std::optional<Record>> Queries::record(RecordKind kind, Uuid id) const {
    return guarded(connection_, [&]() -> Result<std::optional<Record>> {
        const auto body = body_of(connection_, kind, id.text());
        if (!body) return std::nullopt;
        return record_from_json(kind, *body).map([](Record record) {
            return std::optional<Record>(std::move(record));
        });
    });
}

Result<std::vector<Edit>> Queries::removal_of(SessionId id) const {
    return guarded(connection_, [&]() -> Result<std::vector<Edit>> {
        const Snapshot snapshot(connection_);
        std::vector<Edit> edits;
        for (const auto kind : {RecordKind::plan_line, RecordKind::note, RecordKind::attachment,
                                RecordKind::clearance, RecordKind::exit_note, RecordKind::reading}) {
            Query query(connection_,
                        fmt::format("SELECT id FROM {} WHERE parent = ? ORDER BY at, id", table_of(kind)));
            query.with(id.text());
            while (query.next())
                if (const auto child = Uuid::parse(query.text(0))) edits.emplace_back(Remove{kind, *child});
        }
        edits.emplace_back(Remove{RecordKind::session, id.uuid});
        return edits;
    });
}

Result<int> Queries::uses_of(TesterId id) const {
    return guarded(connection_, [&]() -> Result<int> {
        Query query(connection_,
                    "SELECT (SELECT count(*) FROM session"
                    "        WHERE ?1 IN (compression_gauge, leak_down_tester, crankcase_tester)) +"
                    "       (SELECT count(*) FROM reading WHERE tester = ?1)");
        query.with(id.text()).next();
        return static_cast<int>(query.integer(0));
    });
}

Result<std::vector<Attachment>> Queries::attachments() const {
    return guarded(connection_, [&]() -> Result<std::vector<Attachment>> {
        Query query(connection_, "SELECT id, body FROM attachment ORDER BY at, id");
        return read_all<Attachment>(query);
    });
}

Result<std::vector<std::string>> Queries::files_in_steps() const {
    return guarded(connection_, [&]() -> Result<std::vector<std::string>> {
        Query query(
            connection_,
            "SELECT DISTINCT sum FROM (SELECT before ->> '$.sha256' AS sum FROM step_image WHERE kind = ?1 "
            "UNION ALL SELECT after ->> '$.sha256' FROM step_image WHERE kind = ?1) WHERE sum IS NOT NULL");
        query.with(std::string(word(RecordKind::attachment)));
        std::vector<std::string> all;
        while (query.next())
            all.push_back(query.text(0));
        return all;
    });
}

Result<std::vector<Step>> Queries::steps() const {
    return guarded(connection_, [&]() -> Result<std::vector<Step>> {
        Query query(connection_, std::string(step_columns) + "ORDER BY number DESC");
        std::vector<Step> all;
        while (query.next())
            all.push_back(step_from(query));
        return all;
    });
}

Result<std::optional<Step>> Queries::last_step() const {
    return one_step(connection_, "WHERE NOT undone ORDER BY number DESC LIMIT 1");
}

Result<std::optional<Step>> Queries::last_undone() const {
    return one_step(connection_,
                    "WHERE undone AND number > (SELECT coalesce(max(number), 0) FROM step WHERE NOT undone) "
                    "ORDER BY number LIMIT 1");
}

Result<std::string> Queries::draft(const std::string& key) const {
    return guarded(connection_, [&]() -> Result<std::string> {
        Query query(connection_, "SELECT text FROM draft WHERE key = ?");
        return query.with(key).next() ? query.text(0) : std::string();
    });
}

Result<Uuid> Queries::library_id() const {
    return guarded(connection_, [&]() -> Result<Uuid> {
        Query query(connection_, "SELECT value FROM own WHERE key = 'library'");
        const auto id = query.next() ? Uuid::parse(query.text(0)) : std::nullopt;
        if (!id)
            return fail("store.damaged", "The library {} has lost its own name.",
                        connection_.file().string());
        return *id;
    });
}

Result<bool> Queries::was_removed(Uuid id) const {
    return guarded(connection_, [&]() -> Result<bool> {
        Query query(connection_, "SELECT 1 FROM removed WHERE id = ?");
        return query.with(id.text()).next();
    });
}

Result<std::string> Queries::name_of_key(const std::string& public_key) const {
    return guarded(connection_, [&]() -> Result<std::string> {
        Query query(connection_, "SELECT name FROM known_key WHERE public_key = ?");
        return query.with(public_key).next() ? query.text(0) : std::string{};
    });
}

Result<std::vector<Queries::NamedKey>> Queries::named_keys() const {
    return guarded(connection_, [&]() -> Result<std::vector<NamedKey>> {
        Query query(connection_,
                    "SELECT public_key, name, since FROM known_key ORDER BY name COLLATE NOCASE, public_key");
        std::vector<NamedKey> all;
        while (query.next()) {
            const auto since = parse_rfc3339(query.text(2));
            all.push_back(
                {query.text(0), query.text(1), since ? std::optional(*since) : std::optional<Timestamp>()});
        }
        return all;
    });
}

}  // namespace lapwing::store
