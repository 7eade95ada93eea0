// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "core/workflow/bring_in.h"
#include "core/workflow/desk.h"

namespace lapwing {

/// What files brought for one engine and nobody has marked as seen: kept beside the half-typed digits, so
/// that it is still there tomorrow.
struct News {
    struct Item {
        RecordKind kind = RecordKind::note;
        Uuid id;
        std::optional<Record> before;  ///< as it was here; absent when it was not here
        bool seen = false;             ///< its card was touched

        bool operator==(const Item&) const = default;
    };
    QString from;  ///< whose key the last file carried; empty when nobody's
    Timestamp at;
    std::vector<Item> items;

    bool operator==(const News&) const = default;
};

/// Empty when there is nothing new, or nothing that can be read.
News news_of(const workflow::Desk& desk, EngineId engine);
/// Adds what a preview announced and was then brought in. What was new before and not seen stays, with its
/// oldest version.
void add_news(workflow::Desk& desk, EngineId engine, const workflow::Preview& preview, const QString& from);
void mark_seen(workflow::Desk& desk, EngineId engine, Uuid record);
void forget_news(workflow::Desk& desk, EngineId engine);

}  // namespace lapwing
