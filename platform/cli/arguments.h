// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include "core/units/typed.h"
#include "platform/cli/outcome.h"

namespace lapwing::cli {

/// Fails for a temperature that nothing can have.
Status above_absolute_zero(const TypedTemperature& temperature);

/// One option of a verb.
struct Option {
    std::string_view name;   ///< with its dashes: "--set", "-o"
    std::string_view value;  ///< what stands after it, a word each, for the help; empty for a switch
    std::string_view help;
    bool needed = false;
};

class Arguments;

/// One thing that the program does.
struct Verb {
    std::string_view name;                   ///< "sums leak"
    std::string_view does;                   ///< one line for the list of verbs
    std::vector<std::string_view> operands;  ///< one in brackets may be left out
    std::vector<Option> options;
    std::string_view more;  ///< paragraphs below the options
    /// Prints its answer on standard output.
    Outcome (*run)(Arguments& arguments) = nullptr;
};

/// What stood on the command line, held against what the verb takes. The readers below keep the first thing
/// that is wrong, so that a verb reads all it needs and then asks `wrong()` once.
class Arguments {
public:
    /// `--name value`, `--name=value` and switches in any order; `--` ends the options.
    static tl::expected<Arguments, Failure> parse(const Verb& verb, std::span<const std::string> words);

    [[nodiscard]] bool has(std::string_view name) const { return given_.contains(name); }
    [[nodiscard]] bool json() const { return has("--json"); }
    [[nodiscard]] const std::string& operand(std::size_t index) const { return operands_[index]; }
    [[nodiscard]] std::size_t operands() const { return operands_.size(); }
    [[nodiscard]] std::string text(std::string_view name, std::string_view otherwise = {}) const;

    template <class Tag>
    std::optional<Typed<Tag>> quantity(std::string_view name) {
        const auto found = given_.find(name);
        if (found == given_.end()) return std::nullopt;
        auto read = parse_quantity<Tag>(found->second);
        if (!read) {
            complain(name, read.error().english);
            return std::nullopt;
        }
        if constexpr (std::is_same_v<Tag, TemperatureTag>)
            if (const auto possible = above_absolute_zero(*read); !possible) {
                complain(name, possible.error().english, Exit::refused);
                return std::nullopt;
            }
        return std::move(*read);
    }
    /// In SI.
    template <class Tag>
    double si(std::string_view name, double otherwise = 0.0) {
        const auto read = quantity<Tag>(name);
        return read ? read->si() : otherwise;
    }
    /// A bare number.
    double number(std::string_view name, double otherwise = 0.0);
    int count(std::string_view name, int low, int high, int otherwise);
    /// Which of the words stands there; the first one when the option was not given.
    std::size_t choice(std::string_view name, std::span<const std::string_view> words);

    void complain(std::string_view name, std::string_view sentence, Exit exit = Exit::wrong_use);
    /// A sentence of the core's, which counts in kPa and mm, with the values that stood on the command line
    /// as they were typed there.
    [[nodiscard]] std::string as_typed(const std::string& sentence) const;
    /// At most one of the two may be given.
    void either(std::string_view one, std::string_view other);
    [[nodiscard]] const std::optional<Failure>& wrong() const { return wrong_; }

private:
    /// What was typed for that much, if it was.
    [[nodiscard]] std::optional<std::string> like(double number, std::string_view symbol) const;

    std::map<std::string, std::string, std::less<>> given_;
    std::vector<std::string> operands_;
    std::optional<Failure> wrong_;
};

/// The whole help of one verb.
std::string help_of(const Verb& verb);

}  // namespace lapwing::cli
