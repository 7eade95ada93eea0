// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <limits>
#include <vector>

#include "core/workflow/desk.h"

namespace lapwing {

/// A text as a search reads it: capitals, accents and joined letters don't count, and an umlaut is found as
/// German writes it without one too ("Müller" by "muller", "mueller" and "müller", and each the other way).
class SearchText {
public:
    explicit SearchText(const QString& text);

    [[nodiscard]] bool has(const SearchText& part) const {
        return plain_.contains(part.plain_) || spelled_.contains(part.spelled_);
    }
    [[nodiscard]] bool begins(const SearchText& part) const {
        return plain_.startsWith(part.plain_) || spelled_.startsWith(part.spelled_);
    }
    [[nodiscard]] bool is(const SearchText& other) const {
        return plain_ == other.plain_ || spelled_ == other.spelled_;
    }

private:
    QString plain_;    ///< ü as u
    QString spelled_;  ///< ü as ue
};

/// Looks through the list of engines. What it reads of them is kept until it is told to forget it: a key of
/// a search has thousands of them to go through.
class EngineSearch {
public:
    /// Places in `engines` of the first `most` that fit: by words that must all occur in name, tags or
    /// description, or after "#" by a tag, as far as it is typed.
    [[nodiscard]] std::vector<std::size_t> find(
        const std::vector<workflow::EngineSummary>& engines, const QString& text,
        std::size_t most = std::numeric_limits<std::size_t>::max()) const;
    /// The engines have changed.
    void forget() { read_.clear(); }

    /// What is asked for to see the engines with that tag.
    [[nodiscard]] static QString for_tag(const QString& tag);

private:
    struct Read {
        SearchText all;
        std::vector<SearchText> tags;
    };
    void read(const std::vector<workflow::EngineSummary>& engines) const;

    mutable std::vector<Read> read_;
};

}  // namespace lapwing
