// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/journal.h"

#include <sqlite3.h>

#include <nlohmann/json.hpp>

#include "core/store/tables.h"

namespace lapwing::store {
namespace {

using Body = std::optional<std::string>;

/// One record as it was before and is after an edit; nothing where it wasn't or isn't there.
struct Image {
    RecordKind kind = RecordKind::engine;
    std::string id;
    Body before;
    Body after;
};

void note_change(Connection& connection, const Record& record, Change& change) {
    change.kinds.insert(kind_of(record));
    if (const auto* engine = std::get_if<Engine>(&record)) {
        change.engines.insert(engine->id);
    } else if (const auto* session = std::get_if<Session>(&record)) {
        change.sessions.insert(session->id);
        change.engines.insert(session->engine);
    } else if (const Uuid parent = parent_of(record); !parent.is_nil()) {
        change.sessions.insert(SessionId{parent});
        Query query(connection, "SELECT parent FROM session WHERE id = ?");
        if (query.with(parent.text()).next())
            if (const auto engine_id = EngineId::parse(query.text(0))) change.engines.insert(*engine_id);
    }
}

bool breaks_a_tie(const SQLite::Exception& exception) {
    return exception.getErrorCode() == SQLITE_CONSTRAINT;
}

/// Whether taking a record out is a wish of its own, to hold against files that still have it, or only the
/// way back from putting it in.
enum class Removal { wished, way_back };

/// Makes the record what `body` says, or takes it out.
Status set_record(Connection& connection, RecordKind kind, const std::string& id, const Body& before,
                  const Body& body, Removal removal, Change& change) {
    if (before) {
        // A record that can't be read any more can still be replaced or taken out: only the notice gets
        // poorer.
        if (const auto old = record_from_json(kind, *before)) note_change(connection, *old, change);
    }
    if (!body) {
        try {
            remove(connection, kind, id);
        } catch (const SQLite::Exception& exception) {
            if (!breaks_a_tie(exception)) throw;
            return fail("store.hangs",
                        "The {} can't be taken out: something recorded for it is still there. Take that out "
                        "first.",
                        word(kind));
        }
        if (removal == Removal::wished)
            Query(connection, "INSERT OR IGNORE INTO removed (id) VALUES (?)").with(id).run();
        change.kinds.insert(kind);
        return {};
    }
    auto record = record_from_json(kind, *body);
    if (!record) return tl::unexpected(record.error());
    try {
        put(connection, *record, *body);
    } catch (const SQLite::Exception& exception) {
        if (!breaks_a_tie(exception)) throw;
        return fail("store.no_parent",
                    "The {} can't be stored: the {} it belongs to is no longer in the library.", word(kind),
                    kind == RecordKind::session ? "engine" : "session");
    }
    if (!before) Query(connection, "DELETE FROM removed WHERE id = ?").with(id).run();
    note_change(connection, *record, change);
    return {};
}

Image image_of(Connection& connection, const Edit& edit) {
    Image image;
    if (const auto* put_edit = std::get_if<Put>(&edit)) {
        image.kind = kind_of(put_edit->record);
        image.id = id_of(put_edit->record).text();
        image.after = to_json(put_edit->record);
    } else {
        image.kind = std::get<Remove>(edit).kind;
        image.id = std::get<Remove>(edit).id.text();
    }
    image.before = body_of(connection, image.kind, image.id);
    return image;
}

void bind_body(Query& query, int index, const Body& body) {
    if (body)
        query.bind(index, *body);
    else
        query.bind(index, nullptr);
}

void write_image(Connection& connection, std::int64_t step, int position, const Image& image) {
    Query query(connection,
                "INSERT INTO step_image (step, position, kind, id, before, after) VALUES (?, ?, ?, ?, ?, ?)");
    query.with(step, position, std::string(word(image.kind)), image.id);
    bind_body(query, 5, image.before);
    bind_body(query, 6, image.after);
    query.run();
}

std::int64_t write_step(Connection& connection, const Step& info) {
    Query(connection, "INSERT INTO step (name, args, at, at_offset) VALUES (?, ?, ?, ?)")
        .with(info.name,
              nlohmann::json(info.args).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace),
              info.at.unix_ms, info.at.offset_min)
        .run();
    const std::int64_t number = connection.db().getLastInsertRowid();
    Query(connection, "DELETE FROM step WHERE number <= ?").with(number - steps_kept).run();
    return number;
}

/// The newest step, where it stands and touched every record of `edits`.
std::optional<std::int64_t> last_step_of(Connection& connection, std::span<const Edit> edits) {
    Query newest(connection, "SELECT number, undone FROM step ORDER BY number DESC LIMIT 1");
    if (!newest.next() || newest.integer(1) != 0) return std::nullopt;
    const std::int64_t number = newest.integer(0);
    for (const auto& edit : edits) {
        const auto* put_edit = std::get_if<Put>(&edit);
        const Uuid id = put_edit ? id_of(put_edit->record) : std::get<Remove>(edit).id;
        Query touched(connection, "SELECT 1 FROM step_image WHERE step = ? AND id = ?");
        if (!touched.with(number, id.text()).next()) return std::nullopt;
    }
    return number;
}

int next_position(Connection& connection, std::int64_t step) {
    Query query(connection, "SELECT coalesce(max(position) + 1, 0) FROM step_image WHERE step = ?");
    query.with(step).next();
    return static_cast<int>(query.integer(0));
}

std::vector<Image> images_of(Connection& connection, std::int64_t step, const char* order) {
    Query query(
        connection,
        fmt::format("SELECT kind, id, before, after FROM step_image WHERE step = ? ORDER BY position {}",
                    order));
    query.with(step);
    std::vector<Image> images;
    while (query.next()) {
        Image image;
        image.kind = from_word<RecordKind>(query.text(0)).value_or(RecordKind::engine);
        image.id = query.text(1);
        if (!query.is_null(2)) image.before = query.text(2);
        if (!query.is_null(3)) image.after = query.text(3);
        images.push_back(std::move(image));
    }
    return images;
}

std::optional<Step> find_step(Connection& connection, std::int64_t number, bool undone) {
    Query query(connection, "SELECT name, args, at, at_offset FROM step WHERE number = ? AND undone = ?");
    if (!query.with(number, undone ? 1 : 0).next()) return std::nullopt;
    Step step;
    step.number = number;
    step.name = query.text(0);
    for (const auto& arg : nlohmann::json::parse(query.text(1), nullptr, false))
        if (arg.is_string()) step.args.push_back(arg);
    step.at = Timestamp{query.integer(2), static_cast<int>(query.integer(3))};
    step.undone = undone;
    return step;
}

/// Takes every image from one side to the other, provided that each record still stands on the first.
Result<Outcome> move(Connection& connection, Step step, Body Image::*from, Body Image::*to,
                     const char* order) {
    if (auto sound = connection.mend_journal(); !sound) return tl::unexpected(sound.error());
    SQLite::Transaction transaction(connection.db(), SQLite::TransactionBehavior::IMMEDIATE);
    Outcome outcome;
    for (const auto& image : images_of(connection, step.number, order)) {
        const bool back = to == &Image::before;
        if (body_of(connection, image.kind, image.id) != image.*from)
            return back
                       ? fail("undo.changed_since",
                              "This can't be undone any more: the {} was changed again since. Undo the later "
                              "change first, or change it by hand.",
                              word(image.kind))
                       : fail("redo.changed_since",
                              "This can't be done again any more: the {} was changed since. Do it by hand.",
                              word(image.kind));
        const auto removal = back ? Removal::way_back : Removal::wished;
        auto status =
            set_record(connection, image.kind, image.id, image.*from, image.*to, removal, outcome.change);
        if (!status && (status.error().code == "store.hangs" || status.error().code == "store.no_parent"))
            return back
                       ? fail(
                             "undo.hangs",
                             "This can't be undone: something recorded since belongs to the {}. Undo or take "
                             "that out first.",
                             word(image.kind))
                       : fail("redo.hangs",
                              "This can't be done again: what the {} belongs to is no longer there.",
                              word(image.kind));
        if (!status) return tl::unexpected(status.error());
    }
    step.undone = !step.undone;
    Query(connection, "UPDATE step SET undone = ? WHERE number = ?")
        .with(step.undone ? 1 : 0, step.number)
        .run();
    if (auto stored = connection.commit(transaction); !stored) return tl::unexpected(stored.error());
    outcome.step = std::move(step);
    return outcome;
}

}  // namespace

Result<Outcome> apply(Connection& connection, Step info, std::span<const Edit> edits) {
    return guarded(connection, [&]() -> Result<Outcome> {
        if (auto sound = connection.mend_journal(); !sound) return tl::unexpected(sound.error());
        SQLite::Transaction transaction(connection.db(), SQLite::TransactionBehavior::IMMEDIATE);
        Outcome outcome;
        info.number = 0;
        if (info.part_of_last)
            if (const auto last = last_step_of(connection, edits))
                info = find_step(connection, *last, false).value();
        int position = info.number == 0 ? 0 : next_position(connection, info.number);
        for (const auto& edit : edits) {
            const Image image = image_of(connection, edit);
            if (image.before == image.after) continue;
            auto status = set_record(connection, image.kind, image.id, image.before, image.after,
                                     Removal::wished, outcome.change);
            if (!status) return tl::unexpected(status.error());
            if (info.number == 0) info.number = write_step(connection, info);
            write_image(connection, info.number, position++, image);
        }
        if (auto stored = connection.commit(transaction); !stored) return tl::unexpected(stored.error());
        outcome.step = std::move(info);
        return outcome;
    });
}

Result<Outcome> undo(Connection& connection, std::int64_t number) {
    return guarded(connection, [&]() -> Result<Outcome> {
        auto step = find_step(connection, number, false);
        if (!step)
            return fail("undo.gone", "There is nothing to undo: this step was undone already or is too old.");
        return move(connection, std::move(*step), &Image::after, &Image::before, "DESC");
    });
}

Result<Outcome> redo(Connection& connection, std::int64_t number) {
    return guarded(connection, [&]() -> Result<Outcome> {
        auto step = find_step(connection, number, true);
        if (!step)
            return fail("redo.gone", "There is nothing to do again: this step stands already or is too old.");
        return move(connection, std::move(*step), &Image::before, &Image::after, "ASC");
    });
}

}  // namespace lapwing::store
