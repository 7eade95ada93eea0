// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/tables.h"

#include <nlohmann/json.hpp>

namespace lapwing::store {
namespace {

/// What one of a record's columns is called and holds.
struct Column {
    const char* name;
    enum class Holds { nothing, number, text } holds = Holds::nothing;
    std::int64_t number = 0;
    std::string text;
};

class Row {
public:
    Row& text(const char* name, std::string_view value) {
        columns_.push_back({name, Column::Holds::text, 0, std::string(value)});
        return *this;
    }
    Row& number(const char* name, std::int64_t value) {
        columns_.push_back({name, Column::Holds::number, value, {}});
        return *this;
    }
    Row& maybe_number(const char* name, const std::optional<std::int64_t>& value) {
        return value ? number(name, *value) : nothing(name);
    }
    template <class RecordId>
    Row& maybe_id(const char* name, const std::optional<RecordId>& id) {
        return id ? text(name, id->text()) : nothing(name);
    }
    [[nodiscard]] const std::vector<Column>& columns() const { return columns_; }

private:
    Row& nothing(const char* name) {
        columns_.push_back({name, Column::Holds::nothing, 0, {}});
        return *this;
    }
    std::vector<Column> columns_;
};

void fill(Row& row, const Engine& engine) {
    row.number("made_at", engine.made_at.unix_ms)
        .text("name", engine.name)
        .text("description", engine.description)
        .text("tags",
              nlohmann::json(engine.tags).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace))
        .number("cylinders", static_cast<std::int64_t>(engine.cylinders.size()));
}

void fill(Row& row, const Tester& tester) {
    row.text("name", tester.name).text("kind", word(tester.kind));
}

void fill(Row& row, const Session& session) {
    std::optional<std::int64_t> retest_at;
    std::optional<std::int64_t> retest_offset;
    if (session.retest_planned_for) {
        retest_at = session.retest_planned_for->unix_ms;
        retest_offset = session.retest_planned_for->offset_min;
    }
    row.text("parent", session.engine.text())
        .number("opened_at", session.opened_at.unix_ms)
        .number("opened_offset", session.opened_at.offset_min)
        .text("title", session.title)
        .maybe_number("retest_at", retest_at)
        .maybe_number("retest_offset", retest_offset)
        .maybe_id("compression_gauge", session.compression_gauge)
        .maybe_id("leak_down_tester", session.leak_down_tester)
        .maybe_id("crankcase_tester", session.crankcase_tester);
}

void fill(Row& row, const Reading& reading) {
    row.text("parent", reading.session.text())
        .text("test", word(reading.test))
        .number("cylinder", reading.cylinder)
        .number("at", reading.taken_at.unix_ms)
        .maybe_id("tester", reading.tester);
}

void fill(Row& row, const ExitNote& note) {
    row.text("parent", note.session.text()).number("cylinder", note.cylinder).number("at", note.at.unix_ms);
}

void fill(Row& row, const Clearance& clearance) {
    row.text("parent", clearance.session.text())
        .number("cylinder", clearance.cylinder)
        .number("at", clearance.at.unix_ms);
}

void fill(Row& row, const Attachment& attachment) {
    row.text("parent", attachment.session.text())
        .text("sha256", attachment.sha256)
        .number("bytes", attachment.bytes)
        .number("at", attachment.taken_at.unix_ms);
}

void fill(Row& row, const Note& note) {
    row.text("parent", note.session.text()).number("at", note.at.unix_ms);
}

/// A plan is read in its own order, so that is what its line's place in time means.
void fill(Row& row, const PlanLine& line) {
    row.text("parent", line.session.text()).number("at", line.order);
}

/// An update in place, never REPLACE: that would delete the row first, and its children hold it.
std::string upsert(RecordKind kind, const Row& row) {
    std::string names, marks, updates;
    for (const auto& column : row.columns()) {
        names += fmt::format("{}{}", names.empty() ? "" : ", ", column.name);
        marks += marks.empty() ? "?" : ", ?";
        if (std::string_view(column.name) != "id")
            updates +=
                fmt::format("{}{} = excluded.{}", updates.empty() ? "" : ", ", column.name, column.name);
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
    Row row;
    row.text("id", id_of(record).text());
    std::visit([&](const auto& value) { fill(row, value); }, record);
    row.text("body", body);

    Query query(connection, upsert(kind_of(record), row));
    int index = 0;
    for (const auto& column : row.columns()) {
        ++index;
        switch (column.holds) {
            case Column::Holds::nothing:
                query.bind(index, nullptr);
                break;
            case Column::Holds::number:
                query.bind(index, column.number);
                break;
            case Column::Holds::text:
                query.bind(index, column.text);
                break;
        }
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
