// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/record/json_text.h"

#include <nlohmann/json.hpp>
#include <unordered_set>
#include <vector>

namespace lapwing {
namespace {

using Json = nlohmann::ordered_json;

/// Hears the parser out, without building anything. (The parser that can be watched while it builds looks
/// through a list again for each object in it, which takes hours for a list of many.)
class Watch final : public nlohmann::json_sax<Json> {
public:
    Watch(std::size_t most_values, std::vector<std::uint16_t>* counts)
        : most_values_(most_values), counts_(counts) {}

    bool null() override { return count(); }
    bool boolean(bool) override { return count(); }
    bool number_integer(number_integer_t) override { return count(); }
    bool number_unsigned(number_unsigned_t) override { return count(); }
    bool number_float(number_float_t, const string_t&) override { return count(); }
    bool string(string_t&) override { return count(); }
    bool binary(binary_t&) override { return count(); }
    bool start_object(std::size_t) override {
        names_.push_back({{}, object_++});
        if (counts_ != nullptr) counts_->push_back(0);
        return open();
    }
    bool key(string_t& name) override {
        auto& [seen, object] = names_.back();
        if (seen.size() == most_json_names) return too_many();
        if (seen.insert(name).second) {
            if (counts_ != nullptr) ++(*counts_)[object];
            return true;
        }
        found = fail("record.twice",
                     "The file names \"{}\" twice in one place: it was not written by this app.", name);
        return false;
    }
    bool end_object() override {
        names_.pop_back();
        --depth_;
        return true;
    }
    bool start_array(std::size_t) override { return open(); }
    bool end_array() override {
        --depth_;
        return true;
    }
    bool parse_error(std::size_t at, const std::string&, const nlohmann::json::exception& why) override {
        constexpr int number_overflow = 406;
        found = why.id == number_overflow
                    ? fail("record.number", "The file holds a number that is too large to be one.")
                    : fail("record.not_json",
                           "The file is damaged or was not written by this app: it stops being JSON at byte "
                           "{}.",
                           at);
        return false;
    }

    Status found;

private:
    bool count() { return ++values_ <= most_values_ || too_many(); }
    bool open() {
        if (++depth_ <= deepest_json) return count();
        found =
            fail("record.too_deep",
                 "The file nests more than {} levels deep: it was not written by this app.", deepest_json);
        return false;
    }
    bool too_many() {
        found = fail("record.too_many",
                     "The file holds more than {} values, or more than {} names in one place: no session has "
                     "so many, and it was not written by this app.",
                     most_values_, most_json_names);
        return false;
    }

    std::size_t most_values_;
    std::size_t values_ = 0;
    int depth_ = 0;
    struct Names {
        std::unordered_set<std::string> seen;
        std::size_t object;  // counted from the first
    };
    std::vector<Names> names_;
    std::size_t object_ = 0;
    std::vector<std::uint16_t>* counts_;
};

}  // namespace

Status check_json_text(std::string_view text, std::size_t most_values, std::vector<std::uint16_t>* names) {
    if (text.size() > longest_json)
        return fail("record.too_large", "The text is {} bytes long: at most {} are read.", text.size(),
                    longest_json);
    Watch watch(most_values, names);
    Json::sax_parse(text, &watch);
    return watch.found;
}

}  // namespace lapwing
