// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringList>
#include <string_view>

/// English source texts by code; assets/i18n/gather finds them for the context "Findings". Internal to this
/// room.
namespace lapwing::format {

/// Null for a code that has no text. "<code>/alike" is said instead of <code> where the difference that it
/// opens with rounds to nothing.
const char* sentenceOf(std::string_view code);
// What a test is judged by, and what is worth doing next; what is said of a number; those of core/odds, of
// proposals for the plan, and of core/compare. sentenceOf knows them too.
const char* judgedSentenceOf(std::string_view code);
const char* nextSentenceOf(std::string_view code);
const char* numberSentenceOf(std::string_view code);
const char* oddsSentenceOf(std::string_view code);
const char* planSentenceOf(std::string_view code);
const char* compareSentenceOf(std::string_view code);
const char* numberWordOf(std::string_view code);  ///< wordOf knows these two too
const char* compareWordOf(std::string_view code);
const char* wordOf(std::string_view code);
const char* titleOf(std::string_view code);    ///< name of a derived number
const char* inWordsOf(std::string_view code);  ///< its formula in words; may be empty
/// Name of a record's field, by its path ("limits.lowest") or last name.
const char* fieldOf(std::string_view path);

/// Puts "%1" to "%9" in at one go, so that a percent sign in a person's own text stays what it is.
QString filled(const QString& pattern, const QStringList& args);

/// `code` tells apart what one English word stands for under two codes ("none").
QString translated(const char* english, std::string_view code = {});

}  // namespace lapwing::format
