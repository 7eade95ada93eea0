// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/store/attachment_files.h"
#include "core/store/queries.h"
#include "core/workflow/command.h"

namespace lapwing::workflow {

// What the use cases have in common: finding what they work on, and the sentence when it isn't there.

Result<Engine> need_engine(const Now& now, EngineId id);
Result<Session> need_session(const Now& now, SessionId id);
Result<Visit> need_visit(const Now& now, SessionId id);
Result<Tester> need_tester(const Now& now, TesterId id);

/// The record with that id; "record.gone" when there is none.
template <class T>
Result<T> need(const Now& now, Uuid id) {
    const auto kind = static_cast<RecordKind>(Record(T{}).index());
    auto found = now.library.record(kind, id);
    if (!found) return tl::unexpected(found.error());
    if (!*found)
        return fail("record.gone", "This {} is no longer in the library. Go back and look again.",
                    word(kind));
    return std::get<T>(std::move(**found));
}

/// Gives a record made on the screen its id and its time.
template <class T>
void complete(T& record, Timestamp& at, const Now& now) {
    if (record.id.is_nil()) record.id = decltype(record.id)::make(now.clock);
    if (at == Timestamp{}) at = now.clock.now();
}

/// "cylinder.unknown" unless the engine of the session has that cylinder.
Status check_cylinder(const Now& now, const Session& session, int cylinder);

/// A command that puts one record, if it can exist.
template <class T>
Result<Command> put_checked(std::string name, std::vector<std::string> args, T record) {
    return checked(std::move(record)).map([&](T sound) {
        return Command{std::move(name), std::move(args), {Put{std::move(sound)}}};
    });
}

}  // namespace lapwing::workflow
