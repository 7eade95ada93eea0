// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstddef>
#include <functional>
#include <vector>

#include "core/record/record.h"

namespace lapwing {

/// In one session file: bringing them in takes a bounded memory. The busiest engine has far fewer.
inline constexpr std::size_t most_records = 10'000;

std::size_t count_records(const Dossier& dossier);

/// One after the other, parents first, without holding them all a second time; `take` ends it with an error.
Status each_record(const Dossier& dossier, const std::function<Status(Record)>& take);

/// records_of a dossier that is needed no longer.
std::vector<Record> take_records(Dossier&& dossier);

}  // namespace lapwing
