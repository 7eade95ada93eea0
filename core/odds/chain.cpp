// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/odds/chain.h"

#include <Eigen/Cholesky>
#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace lapwing::odds {

Chain::Chain(const EngineModel& model, std::uint64_t seed)
    : model_(model),
      random_(seed),
      z_(model.size(), 0.0),
      m2_(model.size(), 0.0),
      over_standing_(model.size(), 0.0),
      weighed_(model.size()),
      path_at_(model.size(), nullptr),
      least_kept_(model.oil_kept(least_kept_z)),
      most_kept_(model.oil_kept(most_kept_z)) {
    const std::size_t count = model.cylinders().size();
    cylinder_log_.resize(count);
    cylinder_new_.resize(count);
    before_oil_.resize(count);
    left_open_.resize(count);
    usual_.resize(count);
    const auto make = [](std::size_t first, std::size_t last) {
        Block out;
        for (std::size_t i = first; i < last; ++i)
            out.at.push_back(i);
        const auto size = static_cast<Eigen::Index>(out.at.size());
        out.mean = Eigen::VectorXd::Zero(size);
        out.spread = Eigen::MatrixXd::Zero(size, size);
        out.log_scale = std::log(2.38 / std::sqrt(static_cast<double>(size)));
        return out;
    };
    for (const auto& cylinder : model.cylinders())
        cylinder_blocks_.push_back(make(cylinder.first, cylinder.last));
    shared_block_ = make(0, model.shared_end());
    cylinder_effort_.assign(count, 1.0);
    for (const auto& cylinder : model.cylinders()) {
        const auto paths = cylinder.own.size();
        path_effort_.emplace_back(paths, 1.0 / static_cast<double>(paths));
    }
    const auto note = [&](const PathPlace& path) {
        path_at_[path.area] = path_at_[path.cranking] = &path;
        all_paths_.push_back(&path);
    };
    for (const auto& cylinder : model.cylinders()) {
        for (const PathPlace& path : cylinder.own)
            note(path);
        for (const auto& state : cylinder.earlier)
            for (const PathPlace& path : state.apart)
                note(path);
    }
    for (const PathPlace& joint : model.joints())
        note(joint);
    joint_effort_.assign(model.joints().size(), 1.0);
    for (const auto& cylinder : model.cylinders())
        watched_.emplace_back(cylinder.all.size());
    watched_log_leak_.assign(count, 0.0);
    watched_log_cranking_.assign(count, 0.0);
    standing_.resize(count);
    cranking_.resize(count);
    for (std::size_t c = 0; c < count; ++c)
        for (const ExitEvidence& exit : model.evidence().cylinders[c].exits) {
            const std::pair heard{model.evidence().curves[exit.curve].tester, c};
            if (model.evidence().leak_testers[heard.first].air_doubt > 0.0 &&
                (heard_failed_.empty() || heard_failed_.back() != heard))
                heard_failed_.push_back(heard);
        }
    start();
}

/// Each cylinder begins at one of several draws from the prior, picked by how well it fits.
void Chain::start() {
    for (double& one : z_)
        one = normal();
    for (std::size_t i = 0; i < model_.shared_end(); ++i)
        z_[i] *= 0.5;
    model_.shared(z_, shared_);
    engine_log_ = model_.engine_likelihood(shared_);
    constexpr int draws = 200;
    for (std::size_t c = 0; c < cylinder_log_.size(); ++c) {
        const auto& own = model_.cylinders()[c];
        std::vector<double> kept(z_.begin() + static_cast<std::ptrdiff_t>(own.first),
                                 z_.begin() + static_cast<std::ptrdiff_t>(own.last));
        // Gumbel's trick picks in proportion to the likelihood without summing up.
        double best = -1e300;
        for (int draw = 0; draw < draws; ++draw) {
            for (std::size_t i = own.first; i < own.last; ++i)
                z_[i] = normal();
            const double score =
                model_.cylinder_likelihood(z_, shared_, c) - std::log(-std::log(uniform() + 1e-300));
            if (score > best) {
                best = score;
                std::copy(z_.begin() + static_cast<std::ptrdiff_t>(own.first),
                          z_.begin() + static_cast<std::ptrdiff_t>(own.last), kept.begin());
            }
        }
        std::ranges::copy(kept, z_.begin() + static_cast<std::ptrdiff_t>(own.first));
        cylinder_log_[c] = model_.cylinder_likelihood(z_, shared_, c);
    }
    for (const PathPlace* path : path_at_)
        if (path) refresh(*path);
}

void Chain::warm_up(int sweeps) {
    constexpr int on_the_way = 120;  // from where it began
    learning_ = true;
    for (int i = 0; i < sweeps; ++i) {
        sweep();
        if (++warmed_ < on_the_way) continue;
        const bool reshape = warmed_ % 50 == 0;
        for (Block& block : cylinder_blocks_) {
            learn(block);
            if (reshape) shape(block);
        }
        learn(shared_block_);
        if (reshape) shape(shared_block_);
        watch();
    }
    share_out_effort();
    learn_to_follow();
    learning_ = false;
}

void Chain::watch() {
    watched_count_ += 1.0;
    for (std::size_t c = 0; c < watched_.size(); ++c) {
        const auto all = leaks(c);
        for (std::size_t path = 0; path < watched_[c].size(); ++path) {
            const double share = all.path_m2[path] / all.standing_m2;
            watched_[c][path].sum += share;
            watched_[c][path].squares += share * share;
            watched_[c][path].cranking += m2_[model_.cylinders()[c].all[path].cranking] / all.cranking_m2;
        }
        watched_log_leak_[c] += std::log(all.standing_m2);
        watched_log_cranking_[c] += std::log(all.cranking_m2);
    }
}

void Chain::share_out_effort() {
    if (watched_count_ < 100.0) return;
    constexpr double open = 0.06;      // standard deviation of a share that is not settled
    constexpr double matters = 0.03;   // share of a joint
    constexpr double settled = 0.015;  // what a path counts for whose share is known
    std::ranges::fill(joint_effort_, 0.25);
    for (std::size_t c = 0; c < watched_.size(); ++c) {
        double widest = 0.0;
        const auto& place = model_.cylinders()[c];
        for (std::size_t path = 0; path < watched_[c].size(); ++path) {
            const double mean = watched_[c][path].sum / watched_count_;
            const double variance = watched_[c][path].squares / watched_count_ - mean * mean;
            const double spread = std::sqrt(std::max(variance, 0.0));
            widest = std::max(widest, spread);
            if (path < place.own.size()) path_effort_[c][path] = spread + settled;
            if (path >= place.own.size() && mean > matters)
                joint_effort_[model_.evidence().cylinders[c].joints[path - place.own.size()]] = 1.0;
        }
        cylinder_effort_[c] = widest > open ? 1.0 : 0.5;
        const double all = std::accumulate(path_effort_[c].begin(), path_effort_[c].end(), 0.0);
        for (double& effort : path_effort_[c])
            effort /= all;
    }
}

void Chain::sweep() {
    // An effort of 1.3 is one move for sure and another in three cases of ten.
    const auto spend = [&](double effort, const auto& move) {
        while (effort > 0.0) {
            if (effort >= 1.0 || uniform() < effort) move();
            effort -= 1.0;
        }
    };
    for (std::size_t c = 0; c < cylinder_log_.size(); ++c)
        spend(cylinder_effort_[c], [&] { move_cylinder(c); });
    for (std::size_t j = 0; j < model_.joints().size(); ++j)
        spend(joint_effort_[j], [&] { move_joint(j); });
    move_shared();
}

void Chain::attend(const std::vector<bool>& enough) {
    constexpr double seldom = 0.15;
    constexpr double most = 3.0;
    const auto all = static_cast<double>(enough.size());
    const auto wanting = static_cast<double>(std::ranges::count(enough, false));
    // About as much work as before, where it is wanted.
    const double often = std::min(all / std::max(wanting, 1.0), most);
    for (std::size_t c = 0; c < enough.size(); ++c)
        cylinder_effort_[c] = enough[c] ? std::min(cylinder_effort_[c], seldom) : often;
    const auto& joints = model_.evidence().joints;
    for (std::size_t j = 0; j < joints.size(); ++j)
        joint_effort_[j] = enough[joints[j].first] && enough[joints[j].second] ? seldom : 0.5 + 0.5 * often;
}

void Chain::move_cylinder(std::size_t cylinder) {
    const auto& own = model_.cylinders()[cylinder];
    divide(cylinder);
    exchange(cylinder);
    redivide(cylinder);
    redraw(cylinder);
    const auto paths = own_paths(one_state(cylinder));
    trade(paths[one_of(paths.size())], std::span(&cylinder, 1));
    block(cylinder_blocks_[cylinder], cylinder);
    if (model_.evidence().cylinders[cylinder].wet) oil(cylinder);
    divide(cylinder);
    redivide(cylinder);
    partial(own.first, own.last, cylinder);
    block(cylinder_blocks_[cylinder], cylinder);
}

/// What the oil of a wet test did: how much stayed, how well it sealed.
void Chain::oil(std::size_t cylinder) {
    const auto& own = model_.cylinders()[cylinder];
    const std::size_t which = one_of(3);
    if (which != 0) set(own.oil_kept, normal());
    if (which != 1) set(own.oil_seals, normal());
    judge(0.0, std::span(&cylinder, 1));
}

void Chain::move_shared() {
    rescale();
    reopen_heard();
    block(shared_block_, whole_engine, true);
    partial(0, model_.shared_end(), whole_engine, true);
    partial(0, model_.shared_end(), whole_engine, true);
    partial(0, model_.shared_end(), whole_engine, false);
}

/// A path's area changes and what it is while cranking stays.
void Chain::trade(const PathPlace& path, std::span<const std::size_t> cylinders) {
    const auto& map = model_.maps()[path.map];
    const double old_area = map.log_area(z_[path.area]);
    const double area = old_area + 0.4 * normal();
    if (area <= map.least() || area >= map.most()) return;
    const double z = map.z(area);
    const double cranking = z_[path.cranking] - (area - old_area) / model_.static_to_cranking();
    const double log_prior = map.log_density(z) - map.log_density(z_[path.area]) -
                             0.5 * (cranking * cranking - z_[path.cranking] * z_[path.cranking]);
    set(path.area, z);
    set(path.cranking, cranking);
    judge(log_prior, cylinders);
}

const EngineModel::State& Chain::one_state(std::size_t cylinder) {
    const auto& own = model_.cylinders()[cylinder];
    if (own.earlier.empty()) return own;
    const std::size_t state = one_of(own.earlier.size() + 1);
    return state == 0 ? static_cast<const EngineModel::State&>(own) : own.earlier[state - 1];
}

void Chain::redraw(std::size_t cylinder) {
    const auto paths = own_paths(one_state(cylinder));
    const PathPlace& path = paths[one_of(paths.size())];
    set(path.area, normal());
    if (uniform() < 0.5) set(path.cranking, normal());
    judge(0.0, std::span(&cylinder, 1));
}

/// A few unknowns, each drawn anew in part so that the prior is kept.
void Chain::partial(std::size_t first, std::size_t last, std::size_t cylinder, bool follows) {
    constexpr std::array steps{0.25, 0.6, 1.0};
    const double step = steps[one_of(steps.size())];
    const double rest = std::sqrt(1.0 - step * step);
    const std::size_t count = 1 + one_of(4);
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t place = first + one_of(last - first);
        set(place, rest * z_[place] + step * normal());
    }
    const auto log_prior = follows ? follow() : 0.0;
    if (!log_prior) return take_back();
    if (cylinder == whole_engine)
        judge_all(*log_prior);
    else
        judge(0.0, std::span(&cylinder, 1));
}

void Chain::block(Block& of, std::size_t cylinder, bool follows) {
    if (of.factor.size() == 0) return;
    const auto size = static_cast<Eigen::Index>(of.at.size());
    Eigen::VectorXd step(size);
    for (Eigen::Index i = 0; i < size; ++i)
        step[i] = normal();
    constexpr std::array strides{1.0, 1.0, 0.3};
    step = of.factor.triangularView<Eigen::Lower>() * step;
    step *= std::exp(of.log_scale) * strides[one_of(strides.size())];
    double log_prior = 0.0;
    for (Eigen::Index i = 0; i < size; ++i) {
        const std::size_t place = of.at[static_cast<std::size_t>(i)];
        const double old = z_[place];
        set(place, old + step[i]);
        log_prior += 0.5 * (old * old - z_[place] * z_[place]);
    }
    if (follows) {
        const auto more = follow();
        if (!more) return take_back();
        log_prior += *more;
    }
    const bool kept =
        cylinder == whole_engine ? judge_all(log_prior) : judge(log_prior, std::span(&cylinder, 1));
    if (learning_) of.log_scale += 0.02 * ((kept ? 1.0 : 0.0) - 0.25);
}

void Chain::learn(Block& of) {
    const auto size = static_cast<Eigen::Index>(of.at.size());
    Eigen::VectorXd now(size);
    for (Eigen::Index i = 0; i < size; ++i)
        now[i] = z_[of.at[static_cast<std::size_t>(i)]];
    of.count += 1.0;
    const Eigen::VectorXd off = now - of.mean;
    of.mean += off / of.count;
    of.spread += off * (now - of.mean).transpose();
}

void Chain::shape(Block& of) const {
    if (of.count < 20.0) return;
    const auto size = of.spread.rows();
    // Before much is learned, and where a mode was not visited, the prior's own width stands in.
    constexpr double prior_weight = 10.0;
    const Eigen::MatrixXd covariance =
        (of.spread + 0.2 * prior_weight * Eigen::MatrixXd::Identity(size, size)) / (of.count + prior_weight);
    of.factor = covariance.llt().matrixL();
}

std::size_t Chain::one_path(std::size_t cylinder) {
    const auto& effort = path_effort_[cylinder];
    double left = uniform();
    std::size_t path = 0;
    while (path + 1 < effort.size() && left >= effort[path])
        left -= effort[path++];
    return path;
}

std::pair<std::size_t, std::size_t> Chain::two_paths(std::size_t cylinder) {
    const std::size_t one = one_path(cylinder);
    std::size_t two = one;
    while (two == one)
        two = one_path(cylinder);
    return {one, two};
}

std::size_t Chain::one_of(std::size_t count) {
    return std::min(static_cast<std::size_t>(uniform() * static_cast<double>(count)), count - 1);
}

void Chain::set(std::size_t place, double value) {
    remember(place);
    z_[place] = value;
    const PathPlace* path = path_at_[place];
    if (!path) return;
    if (place == path->area) {
        remember(path->cranking);
        m2_[place] = std::exp(model_.log_area(z_, *path));
    } else {
        over_standing_[place] = std::exp(model_.static_to_cranking() * value);
    }
    m2_[path->cranking] = m2_[path->area] * over_standing_[path->cranking];
}

void Chain::propose() {
    if (!model_.slice_is_of(z_, proposed_) && model_.slice_is_of(z_, shared_)) {
        proposed_.slices = shared_.slices;
        proposed_.slice_at = shared_.slice_at;
    }
    model_.shared(z_, proposed_);
}

void Chain::take_back() {
    while (to_undo_ > 0) {
        const Undo& last = undo_[--to_undo_];
        z_[last.place] = last.value;
        m2_[last.place] = last.m2;
        over_standing_[last.place] = last.over_standing;
    }
}

bool Chain::judge(double log_prior, std::span<const std::size_t> cylinders, bool pressures_kept) {
    Fate fate(random_, uniform_);
    double change = log_prior;
    for (std::size_t i = 0; i < cylinders.size(); ++i) {
        const std::size_t c = cylinders[i];
        double others = change - cylinder_log_[c];
        for (const std::size_t later : cylinders.subspan(i + 1))
            others += model_.most_likely(later) - cylinder_log_[later];
        const auto likelihood = model_.cylinder_likelihood(z_, m2_, shared_, c, fate, others, pressures_kept);
        if (!likelihood) {
            take_back();
            return false;
        }
        cylinder_new_[c] = *likelihood;
        change += cylinder_new_[c] - cylinder_log_[c];
    }
    if (!fate.keeps(change)) {
        take_back();
        return false;
    }
    for (const std::size_t c : cylinders)
        cylinder_log_[c] = cylinder_new_[c];
    to_undo_ = 0;
    return true;
}

bool Chain::judge_all(double log_prior) {
    propose();
    Fate fate(random_, uniform_);
    const double engine = model_.engine_likelihood(proposed_);
    double change = log_prior + engine - engine_log_;
    double later = 0.0;
    for (std::size_t c = 0; c < cylinder_log_.size(); ++c)
        later += model_.most_likely(c) - cylinder_log_[c];
    for (std::size_t c = 0; c < cylinder_log_.size(); ++c) {
        later -= model_.most_likely(c) - cylinder_log_[c];
        const auto likelihood =
            model_.cylinder_likelihood(z_, m2_, proposed_, c, fate, change - cylinder_log_[c] + later, false);
        if (!likelihood) {
            take_back();
            return false;
        }
        cylinder_new_[c] = *likelihood;
        change += cylinder_new_[c] - cylinder_log_[c];
    }
    if (!fate.keeps(change)) {
        take_back();
        return false;
    }
    std::swap(shared_, proposed_);
    std::ranges::fill(usual_, Usual{});
    engine_log_ = engine;
    cylinder_log_ = cylinder_new_;
    to_undo_ = 0;
    return true;
}

}  // namespace lapwing::odds
