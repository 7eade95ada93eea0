// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/tables.h"

#include <nlohmann/json.hpp>

namespace lapwing::store {
namespace {

using Cell = std::variant<std::nullptr_t, std::int64_t, std::string>;
using Cells = std::vector<std::pair<const char*, Cell>>;

template <class RecordId>
Cell cell(const std::optional<RecordId>& id) {
    return id ? Cell(id->text()) : Cell(nullptr);
}

Cells columns(const Engine& engine) {
    return {
        {"made_at", engine.made_at.unix_ms},
        {"name", engine.name},
        {"description", engine.description},
        {"tags", nlohmann::json(engine.tags).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace)},
        {"cylinders", static_cast<std::int64_t>(engine.cylinders.size())}};
}

Cells columns(const Tester& tester) {
    return {{"name", tester.name}, {"kind", std::string(word(tester.kind))}};
}

Cells columns(const Session& session) {
    const auto& retest = session.retest_planned_for;
    return {{"parent", session.engine.text()},
            {"opened_at", session.opened_at.unix_ms},
            {"opened_offset", std::int64_t{session.opened_at.offset_min}},
            {"title", session.title},
            {"retest_at", retest ? Cell(retest->unix_ms) : Cell(nullptr)},
            {"retest_offset", retest ? Cell(std::int64_t{retest->offset_min}) : Cell(nullptr)},
            {"compression_gauge", cell(session.compression_gauge)},
            {"leak_down_tester", cell(session.leak_down_tester)},
            {"crankcase_tester", cell(session.crankcase_tester)}};
}

Cells columns(const Reading& reading) {
    return {{"parent", reading.session.text()},
            {"test", std::string(word(reading.test))},
            {"cylinder", std::int64_t{reading.cylinder}},
            {"at", reading.taken_at.unix_ms},
            {"tester", cell(reading.tester)}};
}

Cells columns(const ExitNote& note) {
    return {
        {"parent", note.session.text()}, {"cylinder", std::int64_t{note.cylinder}}, {"at", note.at.unix_ms}};
}

Cells columns(const Clearance& clearance) {
    return {{"parent", clearance.session.text()},
            {"cylinder", std::int64_t{clearance.cylinder}},
            {"at", clearance.at.unix_ms}};
}

Cells columns(const Attachment& attachment) {
    return {{"parent", attachment.session.text()},
            {"sha256", attachment.sha256},
            {"bytes", std::int64_t{attachment.bytes}},
            {"at", attachment.taken_at.unix_ms}};
}

Cells columns(const Note& note) {
    return {{"parent", note.session.text()}, {"at", note.at.unix_ms}};
}

/// A plan is read in its own order, so that is what its line's place in time means.
Cells columns(const PlanLine& line) {
    return {{"parent", line.session.text()}, {"at", std::int64_t{line.order}}};
}

/// An update in place, never REPLACE: that would delete the row first, and its children hold it.
std::string upsert(RecordKind kind, const Cells& cells) {
    std::string names, marks, updates;
    for (const auto& [name, value] : cells) {
        names += fmt::format("{}{}", names.empty() ? "" : ", ", name);
        marks += marks.empty() ? "?" : ", ?";
        if (std::string_view(name) != "id")
            updates += fmt::format("{}{} = excluded.{}", updates.empty() ? "" : ", ", name, name);
    }
    return fmt::format("INSERT INTO {} ({}) VALUES ({}) ON CONFLICT (id) DO UPDATE SET {}", table_of(kind),
                       names, marks, updates);
}

}  // namespace

std::string table_of(RecordKind kind) {
    static constexpr std::array names{"engine",    "tester",     "session", "reading",  "exit_note",
                                      "clearance", "attachment", "note",    "plan_line"};
    return names.at(static_cast<std::size_t>(kind));
}

void put(Connection& connection, const Record& record, const std::string& body) {
    Cells cells = std::visit([](const auto& value) { return columns(value); }, record);
    cells.insert(cells.begin(), {"id", id_of(record).text()});
    cells.emplace_back("body", body);

    Query query(connection, upsert(kind_of(record), cells));
    int index = 0;
    for (const auto& [name, value] : cells) {
        ++index;
        std::visit([&](const auto& v) { query.bind(index, v); }, value);
    }
    query.run();
}

void remove(Connection& connection, RecordKind kind, const std::string& id) {
    Query(connection, fmt::format("DELETE FROM {} WHERE id = ?", table_of(kind))).with(id).run();
}

std::optional<std::string> body_of(Connection& connection, RecordKind kind, const std::string& id) {
    Query query(connection, fmt::format("SELECT body FROM {} WHERE id = ?", table_of(kind)));
    if (!query.with(id).next()) return std::nullopt;
    return query.text(0);
}

}  // namespace lapwing::store
