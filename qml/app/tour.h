// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

class QQuickWindow;

namespace lapwing {

class Composition;

/// Does the main job on the demo session through the running app: brings the demo in, walks the pages, takes
/// a screenshot of each, and writes the report, the session file and the table. Prints what it wrote.
///
/// @param folder  made when missing; what lies there under the same names is replaced
/// @return the program's exit code
int run_tour(Composition& app, QQuickWindow& window, const QString& folder);

}  // namespace lapwing
