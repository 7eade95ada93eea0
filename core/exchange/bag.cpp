// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/bag.h"

#include <algorithm>
#include <charconv>

#include "core/base/utf8.h"
#include "core/model/check.h"

namespace lapwing::exchange {
namespace {

/// Lines that end with LF, CR or CRLF, as RFC 8493 allows; the last may lack its end.
std::vector<std::string_view> lines_of(std::string_view text) {
    std::vector<std::string_view> out;
    while (!text.empty()) {
        const auto end = text.find_first_of("\r\n");
        out.push_back(text.substr(0, end));
        if (end == std::string_view::npos) break;
        text.remove_prefix(text.substr(end).starts_with("\r\n") ? end + 2 : end + 1);
    }
    return out;
}

bool same_letters(std::string_view a, std::string_view b) {
    return std::ranges::equal(a, b, [](char x, char y) {
        const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; };
        return lower(x) == lower(y);
    });
}

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

bool to_number(std::string_view text, std::uint64_t& out) {
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), out);
    return !text.empty() && error == std::errc{} && end == text.data() + text.size();
}

}  // namespace

Status check_declaration(std::string_view bagit_txt) {
    const auto refuse = [] {
        return fail(
            "bag.declaration",
            "The file's bagit.txt is not the two lines that BagIt asks for: ask the sender to send the "
            "original file again.");
    };
    constexpr std::string_view version_label = "BagIt-Version: ";
    constexpr std::string_view encoding_label = "Tag-File-Character-Encoding: ";
    const auto lines = lines_of(bagit_txt);
    if (lines.size() != 2 || !lines[0].starts_with(version_label) || !lines[1].starts_with(encoding_label))
        return refuse();
    const auto version = lines[0].substr(version_label.size());
    const auto encoding = lines[1].substr(encoding_label.size());
    if (version != "1.0" && version != "0.97")
        return fail(
            "bag.version",
            "The file is packed by version {} of BagIt; 1.0 can be read. Update Lapwing, or ask for an "
            "older form.",
            version);
    if (!same_letters(encoding, "UTF-8"))
        return fail("bag.encoding", "The file's lists are written in {}; only UTF-8 can be read.", encoding);
    return {};
}

Result<std::vector<ManifestLine>> parse_manifest(std::string_view text, std::string_view name) {
    std::vector<ManifestLine> out;
    std::size_t number = 0;
    for (const auto line : lines_of(text)) {
        ++number;
        if (trimmed(line).empty()) continue;
        const auto refuse = [&] {
            return fail(
                "bag.manifest_line",
                "Line {} of {} is not a checksum and a path: the file was changed on its way. Ask the "
                "sender to send it again.",
                number, name);
        };
        const auto hex_end = line.find_first_not_of("0123456789abcdefABCDEF");
        if (hex_end == 0 || hex_end == std::string_view::npos || hex_end % 2 != 0) return refuse();
        const auto path_at = line.find_first_not_of(" \t", hex_end);
        if (path_at == hex_end || path_at == std::string_view::npos) return refuse();
        std::string_view path = line.substr(path_at);
        // Checksum tools mark a file read as binary by an asterisk before its path.
        if (path.starts_with('*')) path.remove_prefix(1);
        std::string checksum(line.substr(0, hex_end));
        for (auto& c : checksum)
            if (c >= 'A' && c <= 'F') c = static_cast<char>(c + 32);
        out.push_back({std::move(checksum), decode_path(path)});
    }
    return out;
}

std::string manifest_text(const std::vector<ManifestLine>& lines) {
    std::string out;
    for (const auto& line : lines)
        out += line.checksum + "  " + encode_path(line.path) + '\n';
    return out;
}

std::string encode_path(std::string_view path) {
    std::string out;
    for (const char c : path) {
        if (c == '\n')
            out += "%0A";
        else if (c == '\r')
            out += "%0D";
        else if (c == '%')
            out += "%25";
        else
            out += c;
    }
    return out;
}

std::string decode_path(std::string_view written) {
    std::string out;
    for (std::size_t i = 0; i < written.size(); ++i) {
        const auto code = written.substr(i, 3);
        const bool known = same_letters(code, "%0A") || same_letters(code, "%0D") || code == "%25";
        if (known) {
            out += code == "%25" ? '%' : same_letters(code, "%0A") ? '\n' : '\r';
            i += 2;
        } else {
            out += written[i];
        }
    }
    return out;
}

Result<BagInfo> parse_bag_info(std::string_view text) {
    BagInfo out;
    for (const auto line : lines_of(text)) {
        if (trimmed(line).empty()) continue;
        if (line.front() == ' ' || line.front() == '\t') {
            if (out.empty()) return fail("bag.info", "bag-info.txt begins with the rest of a line.");
            out.back().second += '\n' + std::string(trimmed(line));
            continue;
        }
        const auto colon = line.find(':');
        if (colon == 0 || colon == std::string_view::npos)
            return fail("bag.info", "bag-info.txt has a line without a label: \"{}\".",
                        line.substr(0, cut_between_letters(line, 80)));
        out.emplace_back(std::string(trimmed(line.substr(0, colon))),
                         std::string(trimmed(line.substr(colon + 1))));
    }
    return out;
}

std::string bag_info_text(const BagInfo& info) {
    std::string out;
    for (const auto& [label, value] : info)
        out.append(label).append(": ").append(value).append("\n");
    return out;
}

Result<std::optional<Oxum>> payload_oxum(const BagInfo& info) {
    std::optional<Oxum> out;
    for (const auto& [label, value] : info) {
        if (!same_letters(label, "Payload-Oxum")) continue;
        Oxum oxum;
        const auto point = value.find('.');
        if (out || point == std::string::npos ||
            !to_number(std::string_view(value).substr(0, point), oxum.bytes) ||
            !to_number(std::string_view(value).substr(point + 1), oxum.files))
            return fail("bag.oxum",
                        "bag-info.txt does not say its size (Payload-Oxum) once and as two numbers.");
        out = oxum;
    }
    return out;
}

std::optional<Error> path_fault(std::string_view path) {
    std::string shown;
    for (const char c : path.substr(0, cut_between_letters(path, 120)))
        shown += static_cast<unsigned char>(c) < 0x20 || c == 0x7f ? '?' : c;
    if (!model::is_utf8(path)) shown.assign(1, '?');
    const auto refuse = [&](std::string_view why) {
        return fail("bag.path",
                    "The file holds an entry that must not be unpacked ({}): \"{}\". It was not made by this "
                    "app: "
                    "do not trust it.",
                    why, shown)
            .value();
    };
    if (path.empty() || path.size() > 1000) return refuse("its name is empty or too long");
    if (!model::is_utf8(path)) return refuse("its name is not text");
    if (std::ranges::any_of(path, [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; }))
        return refuse("control characters in its name");
    if (path.front() == '/') return refuse("absolute path");
    if (path.find('\\') != std::string_view::npos) return refuse("backslash in its name");
    if (path.size() > 1 && path[1] == ':') return refuse("absolute path");
    while (true) {
        const auto slash = path.find('/');
        const auto part = path.substr(0, slash);
        if (part == "..") return refuse("it leads out of its folder");
        if (part.empty() || part == ".") return refuse("a part of its path is empty");
        if (slash == std::string_view::npos) return std::nullopt;
        path.remove_prefix(slash + 1);
    }
}

}  // namespace lapwing::exchange
