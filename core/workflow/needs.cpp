// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/needs.h"

namespace lapwing::workflow {
namespace {

template <class T>
Result<T> there(Result<std::optional<T>> found, std::string_view code, std::string_view what) {
    if (!found) return tl::unexpected(found.error());
    if (!*found) return fail(code, "This {} is no longer in the library. Go back and look again.", what);
    return std::move(**found);
}

}  // namespace

Result<Engine> need_engine(const Now& now, EngineId id) {
    return there(now.library.engine(id), "engine.gone", "engine");
}

Result<Session> need_session(const Now& now, SessionId id) {
    return there(now.library.session(id), "session.gone", "session");
}

Result<Visit> need_visit(const Now& now, SessionId id) {
    return there(now.library.visit(id), "session.gone", "session");
}

Result<Tester> need_tester(const Now& now, TesterId id) {
    return there(now.library.tester(id), "tester.gone", "tester");
}

Status check_cylinder(const Now& now, const Session& session, int cylinder) {
    const auto engine = need_engine(now, session.engine);
    if (!engine) return tl::unexpected(engine.error());
    if (find_cylinder(*engine, cylinder) == nullptr)
        return fail("cylinder.unknown", "{} has no cylinder {}. Look at the cylinders on its engine card.",
                    engine->name, cylinder);
    return {};
}

}  // namespace lapwing::workflow
