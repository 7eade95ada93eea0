// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "platform/cli/arguments.h"

#include <algorithm>
#include <cmath>
#include <regex>

namespace lapwing::cli {
namespace {

const Option* find(const Verb& verb, std::string_view name) {
    const auto found = std::ranges::find(verb.options, name, &Option::name);
    return found == verb.options.end() ? nullptr : &*found;
}

bool is_option(std::string_view word) {
    if (word.size() < 2 || word.front() != '-') return false;
    // A negative number is a value.
    return std::string_view("0123456789.,").find(word[1]) == std::string_view::npos;
}

std::string command(const Verb& verb) {
    return "lapwing-cli " + std::string(verb.name);
}

std::string usage_of(const Option& option) {
    std::string out(option.name);
    if (!option.value.empty()) out += ' ' + std::string(option.value);
    return option.needed ? out : '[' + out + ']';
}

/// Lines of at most 100 characters, all but the first indented.
std::string wrapped(std::string_view text, std::size_t first_at, std::size_t indent) {
    constexpr std::size_t width = 100;
    std::string out;
    std::size_t at = first_at;
    while (!text.empty()) {
        const auto space = text.find(' ');
        const auto word = text.substr(0, space);
        if (!out.empty()) {
            const bool fits = at + 1 + word.size() <= width;
            out += fits ? " " : '\n' + std::string(indent, ' ');
            at = fits ? at + 1 : indent;
        }
        out += word;
        at += word.size();
        text.remove_prefix(space == std::string_view::npos ? text.size() : space + 1);
    }
    return out;
}

struct Amount {
    std::string_view dimension;
    double si = 0.0;
};

/// In whichever dimension knows the unit.
std::optional<Amount> amount_of(double number, std::string_view symbol) {
    std::optional<Amount> out;
    const auto try_one = [&]<class Tag>(Tag) {
        if (const auto unit = Unit<Tag>::find(symbol)) out = Amount{Tag::name, unit->quantity(number).si()};
    };
    try_one(PressureTag{});
    try_one(LengthTag{});
    try_one(VolumeTag{});
    try_one(AreaTag{});
    try_one(TemperatureTag{});
    try_one(RotationTag{});
    return out;
}

}  // namespace

Status above_absolute_zero(const TypedTemperature& temperature) {
    if (temperature.si() >= 0.0) return {};
    return fail("units.below_absolute_zero",
                "{} is colder than anything can be. Give a temperature above -273.15 degC.",
                temperature.digits() + ' ' + std::string(temperature.unit().symbol()));
}

tl::expected<Arguments, Failure> Arguments::parse(const Verb& verb, std::span<const std::string> words) {
    Arguments out;
    bool options_ended = false;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const std::string& word = words[i];
        if (!options_ended && word == "--") {
            options_ended = true;
            continue;
        }
        if (options_ended || !is_option(word)) {
            out.operands_.push_back(word);
            continue;
        }
        const auto equals = word.starts_with("--") ? word.find('=') : std::string::npos;
        const std::string name = word.substr(0, equals);
        const Option* option = find(verb, name);
        if (!option)
            return wrong_use(fmt::format("{} has no option {}: {} --help lists the known ones.",
                                         command(verb), name, command(verb)));
        std::string value;
        if (option->value.empty()) {
            if (equals != std::string::npos)
                return wrong_use(
                    fmt::format("{} is a switch: write it without \"{}\".", name, word.substr(equals)));
        } else if (equals != std::string::npos) {
            value = word.substr(equals + 1);
        } else {
            for (auto left = 1 + std::ranges::count(option->value, ' '); left > 0; --left) {
                if (i + 1 >= words.size() || is_option(words[i + 1]))
                    return wrong_use(fmt::format("{} needs a value after it: {}.", name, option->value));
                value += (value.empty() ? "" : " ") + words[++i];
            }
        }
        if (!out.given_.emplace(name, value).second)
            return wrong_use(fmt::format("{} is given twice: give it once.", name));
    }
    for (const Option& option : verb.options)
        if (option.needed && !out.has(option.name))
            return wrong_use(fmt::format("{} needs {} {}.", command(verb), option.name, option.value));
    const auto least = static_cast<std::size_t>(
        std::ranges::count_if(verb.operands, [](std::string_view name) { return name.front() != '['; }));
    if (out.operands_.size() < least)
        return wrong_use(fmt::format("{} needs {}.", command(verb), verb.operands[out.operands_.size()]));
    if (out.operands_.size() > verb.operands.size())
        return wrong_use(
            fmt::format("{} does not know what to do with \"{}\": {} --help shows how it is used.",
                        command(verb), out.operands_[verb.operands.size()], command(verb)));
    return out;
}

std::string Arguments::text(std::string_view name, std::string_view otherwise) const {
    const auto found = given_.find(name);
    return found == given_.end() ? std::string(otherwise) : found->second;
}

double Arguments::number(std::string_view name, double otherwise) {
    const auto found = given_.find(name);
    if (found == given_.end()) return otherwise;
    const auto digits = canonical_digits(found->second);
    if (digits) return digits_value(*digits);
    complain(name,
             fmt::format("\"{}\" is not a bare number. Write it without a unit, like 0.85.", found->second));
    return otherwise;
}

int Arguments::count(std::string_view name, int low, int high, int otherwise) {
    const double read = number(name, otherwise);
    if (read == std::floor(read) && read >= low && read <= high) return static_cast<int>(read);
    complain(name, fmt::format("\"{}\" must be a whole number from {} to {}.", text(name), low, high));
    return otherwise;
}

std::size_t Arguments::choice(std::string_view name, std::span<const std::string_view> words) {
    const auto found = given_.find(name);
    if (found == given_.end()) return 0;
    const auto place = std::ranges::find(words, std::string_view(found->second));
    if (place != words.end()) return static_cast<std::size_t>(place - words.begin());
    complain(name, fmt::format("\"{}\" is not known; known are {}.", found->second, fmt::join(words, ", ")));
    return 0;
}

void Arguments::complain(std::string_view name, std::string_view sentence, Exit exit) {
    if (!wrong_) wrong_ = Failure{exit, fmt::format("{}: {}", name, sentence)};
}

std::string Arguments::as_typed(const std::string& sentence) const {
    static const std::regex amount(R"((-?\d+(?:\.\d+)?(?:e[+-]?\d+)?) ([A-Za-z][A-Za-z0-9/]*))");
    std::string out;
    auto from = sentence.begin();
    for (std::sregex_iterator at(sentence.begin(), sentence.end(), amount), end; at != end; ++at) {
        const auto typed = like(std::stod(at->str(1)), at->str(2));
        if (!typed) continue;
        out.append(from, (*at)[0].first);
        out += *typed;
        from = (*at)[0].second;
    }
    return out.append(from, sentence.end());
}

std::optional<std::string> Arguments::like(double number, std::string_view symbol) const {
    const auto said = amount_of(number, symbol);
    if (!said) return std::nullopt;
    constexpr double rounded = 1e-5;  // the core says six digits
    for (const auto& [name, text] : given_) {
        const auto split = detail::split_quantity(text);
        const auto typed = split ? amount_of(digits_value(split->digits), split->symbol) : std::nullopt;
        if (typed && typed->dimension == said->dimension &&
            std::abs(typed->si - said->si) <= rounded * std::abs(said->si))
            return split->digits + ' ' + std::string(split->symbol);
    }
    return std::nullopt;
}

void Arguments::either(std::string_view one, std::string_view other) {
    if (has(one) && has(other)) complain(one, fmt::format("give it or {}, not both.", other));
}

std::string help_of(const Verb& verb) {
    std::string usage = "usage: " + command(verb);
    for (const auto operand : verb.operands)
        usage += ' ' + std::string(operand);
    const std::size_t indent = command(verb).size() + 8;
    std::string line = usage;
    for (const Option& option : verb.options) {
        const std::string piece = usage_of(option);
        if (line.size() + 1 + piece.size() > 100) {
            usage += '\n' + std::string(indent, ' ') + piece;
            line = std::string(indent, ' ') + piece;
        } else {
            usage += ' ' + piece;
            line += ' ' + piece;
        }
    }
    std::string out = usage + "\n\n" + wrapped(verb.does, 0, 0) + "\n";
    std::size_t width = 0;
    for (const Option& option : verb.options)
        width = std::max(width, option.name.size() + 1 + option.value.size());
    if (!verb.options.empty()) out += '\n';
    for (const Option& option : verb.options) {
        const std::string head = fmt::format("{} {}", option.name, option.value);
        out += fmt::format("  {:<{}}  {}\n", head, width, wrapped(option.help, width + 4, width + 4));
    }
    std::string_view more = verb.more;
    while (!more.empty()) {
        const auto end = more.find('\n');
        out += '\n' + wrapped(more.substr(0, end), 0, 0) + '\n';
        if (end == std::string_view::npos) break;
        more.remove_prefix(end + 1);
    }
    return out;
}

}  // namespace lapwing::cli
