// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/record/record.h"

/// Merging as sets of records by id, and of one record as a set of versions. A version that another one came
/// after goes; versions that were made apart all stay. Both merges are commutative, associative and
/// idempotent: it doesn't matter in which order or how often files are brought together.
///
/// Merging never takes a record away: one that is missing on a side is simply not spoken of there.
namespace lapwing {

/// Two states of one record brought together. Of several versions the one changed last stands in front (of
/// those changed at the same moment the one whose text sorts last), the rest among its other versions. Fails
/// with "merge.other_record" when kind or id differ, "merge.moved" when they belong to different engines or
/// sessions, "merge.too_many_versions".
Result<Record> merge(const Record& one, const Record& other);

/// Both dossiers' records. Fails with "merge.other_engine" and with what merging a record fails with.
Result<Dossier> merge(const Dossier& one, const Dossier& other);

/// Equal in everything but the lineage.
bool same_content(const Record& one, const Record& other);

/// All versions, each without others of its own; the one in front first. The same change made on two sides
/// counts once.
std::vector<Record> versions(const Record& record);
/// Whether a person has to choose between versions.
bool in_conflict(const Record& record);

/// `after` as the next version of `before`, changed in `library`: its lineage comes from `before` alone.
/// Unchanged contents stay the same version. Other versions stay until a person chooses.
Record changed(const Record& before, Record after, Uuid library, Timestamp now);
/// The version chosen by its place in `versions`, as the one that comes after all of them.
Record settled(const Record& record, std::size_t chosen, Uuid library, Timestamp now);

/// A file without the owner's name and contact says nothing about the owner: an engine from it, with the
/// owner that is known here put in again so that the two can be compared.
Record with_owner_of(Record incoming, const Record& here);

}  // namespace lapwing
