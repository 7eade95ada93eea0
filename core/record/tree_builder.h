// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace lapwing::record {

/// Builds the tree of a JSON text that `check_json_text` has nothing against. The library's own way copies
/// all that an object holds whenever the object grows, and so takes twice the memory; here nothing grows.
/// `Json` and `Events` are the library's tree and listener, which no header names.
template <class Json, class Events>
class TreeBuilder final : public Events {
public:
    explicit TreeBuilder(const std::vector<std::uint16_t>& names) : names_(names) {}

    bool null() override { return put(nullptr); }
    bool boolean(bool value) override { return put(value); }
    bool number_integer(typename Json::number_integer_t value) override { return put(value); }
    bool number_unsigned(typename Json::number_unsigned_t value) override { return put(value); }
    bool number_float(typename Json::number_float_t value, const typename Json::string_t&) override {
        return put(value);
    }
    // Not moved: the text in hand was grown bit by bit and has room to spare.
    bool string(typename Json::string_t& value) override { return put(std::as_const(value)); }
    bool binary(typename Json::binary_t&) override { return false; }
    bool start_object(std::size_t) override {
        constexpr std::size_t beside = 1;  // for what travels in a record
        put(Json::object());
        last_->template get_ref<typename Json::object_t&>().reserve(names_[object_++] + beside);
        open_.push_back(last_);
        return true;
    }
    bool key(typename Json::string_t& name) override {
        auto& object = open_.back()->template get_ref<typename Json::object_t&>();
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
    bool parse_error(std::size_t, const std::string&, const typename Json::exception&) override {
        return false;
    }

    Json root;

private:
    /// Where it belongs: at the end of a list, at the name just read, or as the whole.
    bool put(auto&& value) {
        if (open_.empty()) last_ = &root;
        if (!open_.empty() && open_.back()->is_array()) {
            auto& list = open_.back()->template get_ref<typename Json::array_t&>();
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

}  // namespace lapwing::record
