// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "qml/viewmodels/history_backed.h"

namespace lapwing {

HistoryBacked::~HistoryBacked() = default;

void HistoryBacked::refresh() {
    begun_ = true;
    think();
}

}  // namespace lapwing
