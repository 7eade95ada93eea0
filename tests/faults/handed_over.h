// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "tests/faults/disk.h"
#include "tests/faults/flow.h"

/// What leaves the library and comes back whole: files that lie beside its folder. The report's PDF is Qt's
/// to write and has no part in this.
namespace lapwing::faults {

Deed hand_over_session_file();
Deed hand_over_readings();
Deed back_up_everything();
/// Brings the engine back that was deleted; what is still here stays as it is.
Deed restore_everything();

/// The files beside the library, by name; those that are half done have names that begin with a dot.
std::map<std::string, std::string> files_beside(const Image& image);
/// Of these the ones that a person was given.
std::map<std::string, std::string> handed_over(const Image& image);

/// What is wrong with a file that a deed handed over, read back as a receiver does; empty when nothing is.
std::string fault_of(const Person& person, const std::string& name);

}  // namespace lapwing::faults
