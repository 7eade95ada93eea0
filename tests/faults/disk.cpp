// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/faults/disk.h"

#include <stdexcept>

#include "tests/faults/calls.h"

namespace lapwing::faults {

Disk::Disk(fs::path root) : root_(std::move(root)), at_first_(Image::of(root_)) {
    for (const auto& folder : at_first_.folders)
        names_[folder] = -1;
    for (const auto& [name, bytes] : at_first_.files)
        names_[name] = files_++;
    if (Calls::watched.exchange(this) != nullptr) throw std::logic_error("one disk is watched already");
}

Disk::Disk(fs::path root, const Storage& before) : Disk(std::move(root)) {
    const std::lock_guard lock(mutex_);
    names_ = before.names();
    files_ = before.files();
}

Disk::~Disk() {
    Calls::watched = nullptr;
}

std::size_t Disk::wishes() const {
    const std::lock_guard lock(mutex_);
    return log_.size();
}

std::vector<Wish> Disk::log() const {
    const std::lock_guard lock(mutex_);
    return log_;
}

bool Disk::is_complete() const {
    const std::lock_guard lock(mutex_);
    Storage storage(at_first_);
    for (const auto& wish : log_)
        storage.take(wish);
    return storage.after_power_cut(Left::everything) == Image::of(root_);
}

std::size_t Disk::calls() const {
    const std::lock_guard lock(mutex_);
    return calls_.size();
}

std::string Disk::call(std::size_t number) const {
    const std::lock_guard lock(mutex_);
    return number < calls_.size() ? calls_[number] : std::string();
}

void Disk::refuse(std::size_t number, int system_error, Lasting lasting) {
    const std::lock_guard lock(mutex_);
    refuse_at_ = number;
    system_error_ = system_error;
    lasting_ = lasting;
    refusing_ = refused_ = false;
}

void Disk::make_room() {
    const std::lock_guard lock(mutex_);
    refuse_at_ = SIZE_MAX;
    refusing_ = false;
}

bool Disk::refused() const {
    const std::lock_guard lock(mutex_);
    return refused_;
}

bool Disk::refuses(const std::string& call, bool needs_room) {
    const std::size_t number = calls_.size();
    calls_.push_back(call);
    const bool here = number == refuse_at_;
    if (here && lasting_ == Lasting::until_room) refusing_ = true;
    if (!here && !(refusing_ && needs_room)) return false;
    refused_ = true;
    return true;
}

}  // namespace lapwing::faults
