// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

/// What the app under the thumb tells the one that kills it, one line each through a pipe:
///
///   reopened CYLINDER DIGITS   the pad is back, and this stands on it ("-" for nothing)
///   typed CYLINDER DIGITS      a key is about to go down, and then this stands there
///   stored CYLINDER DIGITS     what was typed so far has reached the library
///   keep CYLINDER DIGITS       Keep was touched
///   tick CYLINDER DIGITS       the tick was shown
namespace lapwing::test::kill {

inline constexpr int pipe_end = 3;  ///< the child's writing end
inline constexpr int cylinders = 4;

}  // namespace lapwing::test::kill
