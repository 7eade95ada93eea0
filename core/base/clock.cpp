// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/base/clock.h"

#include <ctime>

namespace lapwing {
namespace {

using namespace std::chrono;

bool read_digits(std::string_view text, std::size_t at, std::size_t count, int& out) {
    if (at + count > text.size()) return false;
    out = 0;
    for (std::size_t i = at; i < at + count; ++i) {
        if (text[i] < '0' || text[i] > '9') return false;
        out = out * 10 + (text[i] - '0');
    }
    return true;
}

}  // namespace

std::string to_rfc3339(Timestamp at) {
    const sys_time<milliseconds> local{milliseconds{at.unix_ms + std::int64_t{at.offset_min} * 60'000}};
    const auto day = floor<days>(local);
    const year_month_day date{day};
    const hh_mm_ss time{local - day};
    const int offset = at.offset_min < 0 ? -at.offset_min : at.offset_min;
    return fmt::format("{:04}-{:02}-{:02}T{:02}:{:02}:{:02}.{:03}{}{:02}:{:02}",
                       static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                       static_cast<unsigned>(date.day()), time.hours().count(), time.minutes().count(),
                       time.seconds().count(), time.subseconds().count(), at.offset_min < 0 ? '-' : '+',
                       offset / 60, offset % 60);
}

Result<Timestamp> parse_rfc3339(std::string_view text) {
    const auto refuse = [&] {
        return fail("time.malformed", "\"{}\" is not a time with offset, such as 2026-03-14T09:30:00+01:00.",
                    std::string(text));
    };
    int y{}, mo{}, d{}, h{}, mi{}, s{};
    if (!read_digits(text, 0, 4, y) || !read_digits(text, 5, 2, mo) || !read_digits(text, 8, 2, d) ||
        !read_digits(text, 11, 2, h) || !read_digits(text, 14, 2, mi) || !read_digits(text, 17, 2, s))
        return refuse();
    if (text[4] != '-' || text[7] != '-' || (text[10] != 'T' && text[10] != 't') || text[13] != ':' ||
        text[16] != ':')
        return refuse();
    std::size_t at = 19;
    int ms = 0;
    if (at < text.size() && text[at] == '.') {
        int scale = 100;
        const std::size_t first = ++at;
        while (at < text.size() && text[at] >= '0' && text[at] <= '9') {
            ms += (text[at++] - '0') * scale;
            scale /= 10;
        }
        if (at == first) return refuse();
    }
    int offset = 0;
    if (at + 1 == text.size() && (text[at] == 'Z' || text[at] == 'z')) {
        offset = 0;
    } else {
        int oh{}, om{};
        if (at + 6 != text.size() || (text[at] != '+' && text[at] != '-') || text[at + 3] != ':' ||
            !read_digits(text, at + 1, 2, oh) || !read_digits(text, at + 4, 2, om) ||
            oh * 60 + om > 18 * 60 || om > 59)
            return refuse();
        offset = (text[at] == '-' ? -1 : 1) * (oh * 60 + om);
    }
    const year_month_day date{year{y}, month{static_cast<unsigned>(mo)}, day{static_cast<unsigned>(d)}};
    // A leap second (60) is folded into the second after it, as every calendar library here does.
    if (!date.ok() || h > 23 || mi > 59 || s > 60) return refuse();
    const auto local = sys_days{date}.time_since_epoch() + hours{h} + minutes{mi} + seconds{s};
    return Timestamp{duration_cast<milliseconds>(local).count() + ms - std::int64_t{offset} * 60'000, offset};
}

Timestamp SystemClock::now() const {
    const auto now = system_clock::now();
    const std::time_t seconds_now = system_clock::to_time_t(now);
    std::tm local{};
    localtime_r(&seconds_now, &local);
    return Timestamp{duration_cast<milliseconds>(now.time_since_epoch()).count(),
                     static_cast<int>(local.tm_gmtoff / 60)};
}

}  // namespace lapwing
