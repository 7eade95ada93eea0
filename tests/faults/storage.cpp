// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>
#include <fstream>
#include <random>

#include "tests/faults/disk.h"

namespace lapwing::faults {
namespace {

constexpr std::size_t sector = 512;

std::string folder_of(const std::string& name) {
    return fs::path(name).parent_path().string();
}

void put(std::string& file, std::int64_t at, std::string_view bytes) {
    const auto from = static_cast<std::size_t>(at);
    if (file.size() < from + bytes.size()) file.resize(from + bytes.size(), '\0');
    file.replace(from, bytes.size(), bytes);
}

void apply(std::string& file, const Wish& wish) {
    if (wish.kind == Wish::Kind::write)
        put(file, wish.at, wish.bytes);
    else
        file.resize(static_cast<std::size_t>(wish.at), '\0');
}

void apply(std::map<std::string, int>& names, const Wish& wish) {
    switch (wish.kind) {
        case Wish::Kind::create:
        case Wish::Kind::make_folder:
            names[wish.name] = wish.file;
            break;
        case Wish::Kind::rename:
            names.erase(wish.name);
            names[wish.to] = wish.file;
            break;
        case Wish::Kind::remove:
            names.erase(wish.name);
            break;
        default:
            break;
    }
}

/// Some of the sectors of a write that was on its way.
void put_torn(std::string& file, const Wish& wish, double chance, std::mt19937& random) {
    std::bernoulli_distribution keep(chance);
    const auto end = static_cast<std::size_t>(wish.at) + wish.bytes.size();
    for (auto from = static_cast<std::size_t>(wish.at); from < end;) {
        const auto to = std::min(end, (from / sector + 1) * sector);
        if (keep(random))
            put(file, static_cast<std::int64_t>(from),
                std::string_view(wish.bytes).substr(from - static_cast<std::size_t>(wish.at), to - from));
        from = to;
    }
}

}  // namespace

Storage::Storage(Image at_first) {
    for (const auto& name : at_first.folders)
        names_[name] = -1;
    for (auto& [name, bytes] : at_first.files) {
        names_[name] = static_cast<int>(files_.size());
        files_.push_back({std::move(bytes), {}});
    }
}

void Storage::take(const Wish& wish) {
    if (wish.file >= static_cast<int>(files_.size())) files_.resize(static_cast<std::size_t>(wish.file) + 1);
    switch (wish.kind) {
        case Wish::Kind::write:
        case Wish::Kind::truncate:
            files_[static_cast<std::size_t>(wish.file)].pending.push_back(wish);
            break;
        case Wish::Kind::sync: {
            auto& file = files_[static_cast<std::size_t>(wish.file)];
            if (!wish.forgotten)
                for (const auto& one : file.pending)
                    apply(file.synced, one);
            file.pending.clear();
            break;
        }
        case Wish::Kind::sync_folder: {
            const auto here = [&](const Wish& one) {
                return folder_of(one.kind == Wish::Kind::rename ? one.to : one.name) == wish.name;
            };
            for (const auto& one : pending_names_)
                if (here(one)) apply(names_, one);
            std::erase_if(pending_names_, here);
            break;
        }
        default:
            pending_names_.push_back(wish);
    }
}

Image Storage::after_power_cut(Left left, std::uint32_t seed) const {
    std::mt19937 random(seed);
    auto names = names_;
    std::map<std::string, int> done_in;  // by folder: how many of its changes got done
    for (const auto& wish : pending_names_) {
        if (left == Left::synced) break;
        const auto folder = folder_of(wish.kind == Wish::Kind::rename ? wish.to : wish.name);
        if (left == Left::drawn && !done_in.contains(folder))
            done_in[folder] =
                std::uniform_int_distribution<int>(0, static_cast<int>(pending_names_.size()) * 2)(random);
        if (left == Left::everything || done_in[folder]-- > 0) apply(names, wish);
    }
    Image image;
    for (const auto& [name, number] : names) {
        // A file is lost with the name of its folder.
        if (const auto folder = folder_of(name); !folder.empty() && !image.folders.contains(folder)) continue;
        if (number < 0) {
            image.folders.insert(name);
            continue;
        }
        const auto& file = files_[static_cast<std::size_t>(number)];
        std::string bytes = file.synced;
        const double chance = std::uniform_real_distribution<double>(0.2, 1.0)(random);
        for (const auto& wish : file.pending) {
            if (left == Left::everything)
                apply(bytes, wish);
            else if (left == Left::drawn && wish.kind == Wish::Kind::write)
                put_torn(bytes, wish, chance, random);
            else if (left == Left::drawn && std::bernoulli_distribution(chance)(random))
                apply(bytes, wish);
        }
        image.files[name] = std::move(bytes);
    }
    return image;
}

std::map<std::string, int> Storage::names() const {
    auto names = names_;
    for (const auto& wish : pending_names_)
        apply(names, wish);
    return names;
}

void Image::lay_out(const fs::path& place) const {
    for (const auto& name : folders)
        fs::create_directory(place / name);
    for (const auto& [name, bytes] : files) {
        std::ofstream out(place / name, std::ios::binary);
        out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    }
}

Image Image::of(const fs::path& place) {
    Image image;
    for (const auto& entry : fs::recursive_directory_iterator(place)) {
        const auto name = entry.path().lexically_relative(place).string();
        if (name.ends_with("-shm")) continue;
        if (entry.is_directory()) {
            image.folders.insert(name);
            continue;
        }
        std::ifstream in(entry.path(), std::ios::binary);
        image.files[name] = {std::istreambuf_iterator<char>(in), {}};
    }
    return image;
}

}  // namespace lapwing::faults
