// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/record/json_tree.h"

#include <utility>
#include <vector>

#include "core/record/json_text.h"

namespace lapwing::record {
namespace {

using Json = nlohmann::ordered_json;

/// Builds a text that was looked through: no name twice, nothing too deep.
class Builder final : public nlohmann::json_sax<Json> {
public:
    explicit Builder(const std::vector<std::uint16_t>& names) : names_(names) {}

    bool null() override { return put(nullptr); }
    bool boolean(bool value) override { return put(value); }
    bool number_integer(number_integer_t value) override { return put(value); }
    bool number_unsigned(number_unsigned_t value) override { return put(value); }
    bool number_float(number_float_t value, const string_t&) override { return put(value); }
    // Not moved: the text in hand was grown bit by bit and has room to spare.
    bool string(string_t& value) override { return put(std::as_const(value)); }
    bool binary(binary_t&) override { return false; }
    bool start_object(std::size_t) override {
        constexpr std::size_t beside = 1;  // for what travels in a record
        put(Json::object());
        last_->get_ref<Json::object_t&>().reserve(names_[object_++] + beside);
        open_.push_back(last_);
        return true;
    }
    bool key(string_t& name) override {
        auto& object = open_.back()->get_ref<Json::object_t&>();
        object.emplace_back(std::as_const(name), nullptr);
        last_ = &object.back().second;
        return true;
    }
    bool end_object() override { return close(); }
    bool start_array(std::size_t) override {
        put(Json::array());
        open_.push_back(last_);
        return true;
    }
    bool end_array() override { return close(); }
    bool parse_error(std::size_t, const std::string&, const nlohmann::json::exception&) override {
        return false;
    }

    Json root;

private:
    /// Where it belongs: at the end of a list, at the name just read, or as the whole.
    bool put(auto&& value) {
        if (open_.empty()) last_ = &root;
        if (!open_.empty() && open_.back()->is_array()) {
            auto& list = open_.back()->get_ref<Json::array_t&>();
            list.emplace_back(std::forward<decltype(value)>(value));
            last_ = &list.back();
        } else {
            *last_ = std::forward<decltype(value)>(value);
        }
        return true;
    }
    bool close() {
        open_.pop_back();
        return true;
    }

    const std::vector<std::uint16_t>& names_;
    std::size_t object_ = 0;
    std::vector<Json*> open_;
    Json* last_ = nullptr;
};

}  // namespace

Result<Json> json_tree(std::string_view text) {
    std::vector<std::uint16_t> names;
    if (auto fine = check_json_text(text, most_json_values, &names); !fine)
        return tl::unexpected(fine.error());
    Builder builder(names);
    Json::sax_parse(text, &builder);
    return std::move(builder.root);
}

}  // namespace lapwing::record
