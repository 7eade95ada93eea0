// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <Eigen/Core>
#include <boost/random/mersenne_twister.hpp>
#include <boost/random/normal_distribution.hpp>
#include <boost/random/uniform_01.hpp>
#include <cstdint>
#include <limits>
#include <optional>
#include <span>
#include <vector>

#include "core/odds/engine_model.h"

namespace lapwing::odds {

/// One Markov chain over all unknowns of an engine (Metropolis and Hastings). All unknowns are standard
/// normal before the evidence, so some moves keep the prior and are judged by the evidence alone. Evidence
/// ties unknowns to one another, and the others go along such ties: air that leaves by another path with
/// every pressure kept (chain_divide.cpp, chain_joints.cpp), what all cylinders share with the cylinders
/// following (chain_shared.cpp). Block moves and following learn their shape while warming up and keep it
/// from then on. Deterministic for a seed: the random numbers are Boost's, the same everywhere.
class Chain {
public:
    Chain(const EngineModel& model, std::uint64_t seed);

    /// `sweeps` in which block moves learn.
    void warm_up(int sweeps);
    void sweep();
    /// Moves cylinders that are `enough` known seldom, the others often. Once warm.
    void attend(const std::vector<bool>& enough);
    [[nodiscard]] std::span<const double> z() const { return z_; }
    /// As EngineModel::leaks at the place where the chain is.
    [[nodiscard]] EngineModel::Leaks leaks(std::size_t cylinder) const {
        return EngineModel::leaks_of(m2_, model_.cylinders()[cylinder]);
    }

private:
    /// A block of unknowns that move together.
    struct Block {
        std::vector<std::size_t> at;
        Eigen::VectorXd mean;
        Eigen::MatrixXd spread;  ///< sum of squares while learning
        Eigen::MatrixXd factor;
        double count = 0.0;
        double log_scale = 0.0;
    };

    void start();
    void move_cylinder(std::size_t cylinder);
    void move_joint(std::size_t joint);
    void move_shared();
    void rescale();
    void reopen_heard();
    void divide(std::size_t cylinder);
    void redivide(std::size_t cylinder);
    void exchange(std::size_t cylinder);
    void reopen(std::size_t joint);
    void shift(std::size_t joint);
    void trade(const PathPlace& path, std::span<const std::size_t> cylinders);
    void redraw(std::size_t cylinder);
    void oil(std::size_t cylinder);
    void partial(std::size_t first, std::size_t last, std::size_t cylinder, bool follows = false);
    void block(Block& of, std::size_t cylinder, bool follows = false);
    void learn(Block& of);
    void shape(Block& of) const;
    void watch();
    void share_out_effort();
    /// A path of a cylinder, or two of them in either order; mostly those of which least is known.
    [[nodiscard]] std::size_t one_path(std::size_t cylinder);
    [[nodiscard]] std::pair<std::size_t, std::size_t> two_paths(std::size_t cylinder);
    void learn_to_follow();

    /// What a path passes, effective m2: standing still and while cranking.
    struct Amount {
        double standing = 0.0;
        double cranking = 0.0;
    };
    /// An amount as the prior sees it: logarithms of the densities of its standing area and, given that, of
    /// its cranking area, both by m2.
    struct Weighed {
        Amount amount;
        double standing = 0.0;
        double cranking = 0.0;
        double standing_z = 0.0, cranking_z = 0.0;  ///< the unknowns that it comes from
        bool possible = false;
        [[nodiscard]] double both() const { return standing + cranking; }
    };
    [[nodiscard]] Amount amount(const PathPlace& path) const { return {m2_[path.area], m2_[path.cranking]}; }
    /// Works out a path's areas anew, its unknowns having changed.
    void refresh(const PathPlace& path);
    [[nodiscard]] Weighed weigh(const PathPlace& path, const Amount& amount) const;
    /// The same of what it passes now: most moves are taken back, and what was weighed last is so still.
    [[nodiscard]] const Weighed& weigh_now(const PathPlace& path);
    /// An area drawn from the prior; a cranking area drawn for a standing one.
    [[nodiscard]] double drawn_standing(const PathPlace& path);
    [[nodiscard]] double drawn_cranking(double standing);
    void put(const PathPlace& path, const Weighed& what);

    /// What a wet reading rests on before a move.
    struct Wet {
        double less = 0.0;  ///< m2 that oil takes off the leak
        double leak = 0.0;  ///< m2 while cranking, oiled
        double rings = 0.0;
    };
    [[nodiscard]] Wet wet(std::size_t cylinder) const;
    /// And what else is kept: the leak of each state, the newest first. The newest alone needs no keeping.
    struct Kept {
        Wet wet;
        std::array<Amount, Words<Tag>::list.size()> sums;
    };
    [[nodiscard]] Kept kept(std::size_t cylinder) const;
    [[nodiscard]] Amount sum(const EngineModel::State& state) const;
    /// Sets what oil did so that the wet reading is what it was, and mostly touched parts so that each state
    /// leaks what it did. The change of the prior's logarithm and of the measure; absent: nothing could do
    /// that.
    std::optional<double> keep(std::size_t cylinder, const Kept& before, bool wet_is_kept = false);
    /// What oil leaves of two paths while cranking; `kept`: the sum that counts is that past the oil.
    struct OilShare {
        double one = 1.0, two = 1.0;
        bool kept = false;
    };
    [[nodiscard]] OilShare oil_share(std::size_t cylinder, std::size_t one, std::size_t two);
    std::optional<double> keep_wet(std::size_t cylinder, const Wet& before);
    std::optional<double> keep_sum(const EngineModel::State& state, const Amount& before);
    /// The newest state or one before it, and its own paths.
    [[nodiscard]] const EngineModel::State& one_state(std::size_t cylinder);
    [[nodiscard]] std::span<const PathPlace> own_paths(const EngineModel::State& state) const {
        return std::span(state.all).first(model_.cylinders()[state.cylinder].own.size());
    }

    /// Works out what all cylinders share for the move at hand; the slice only where what it hangs on moved.
    void propose();
    /// Sets one unknown for the move at hand; `judge` keeps or undoes all that were set.
    void set(std::size_t place, double value);
    void remember(std::size_t place) {
        if (to_undo_ == undo_.size()) undo_.resize(2 * undo_.size() + 16);
        undo_[to_undo_++] = {place, z_[place], m2_[place], over_standing_[place]};
    }
    void take_back();
    /// `log_prior`: change of the prior's logarithm where the move does not keep it. `pressures_kept`: about;
    /// what is heard at the exits decides.
    bool judge(double log_prior, std::span<const std::size_t> cylinders, bool pressures_kept = false);
    bool judge_all(double log_prior);
    /// Leaks follow a change of what all cylinders share, so that readings stay about what they are. A shear:
    /// it keeps volume. The change of the prior's logarithm; absent: out of bounds.
    std::optional<double> follow();
    /// Logarithm of a cylinder's cranking reading at its usual leak; share of the set pressure that it holds.
    [[nodiscard]] double usual_reading(std::size_t cylinder, const EngineModel::SharedState& at) const;
    [[nodiscard]] double usual_held(std::size_t cylinder, const EngineModel::SharedState& at) const;
    [[nodiscard]] double normal() { return normal_(random_); }
    [[nodiscard]] double uniform() { return uniform_(random_); }
    [[nodiscard]] std::size_t one_of(std::size_t count);

    const EngineModel& model_;
    boost::random::mt19937_64 random_;
    boost::random::normal_distribution<double> normal_;
    boost::random::uniform_01<double> uniform_;
    std::vector<double> z_;
    std::vector<double> m2_;                 ///< areas, at the places of the unknowns that they hang on
    std::vector<double> over_standing_;      ///< by place of a cranking area: that over the standing one
    std::vector<Weighed> weighed_;           ///< by place of an area: what `weigh_now` said last
    std::vector<const PathPlace*> path_at_;  ///< by place; null: not a path's
    std::vector<const PathPlace*> all_paths_;
    std::vector<std::pair<double, double>>
        joint_turns_;  ///< of `follow`: change of logarithms, standing, cranking
    /// What the oil's share decides of a wet reading before a move, for as long as that stays.
    struct BeforeOil {
        double leak_m2 = -1.0;
        std::optional<CrankDoubts> slice_at;
        CrankSurface::Slice::AlongOil line;
    };
    std::vector<BeforeOil> before_oil_;
    /// What `follow` asks of the place where the chain is, for as long as what all share stays.
    struct Usual {
        std::optional<double> reading, held;
    };
    std::vector<Usual> usual_;
    /// What oil leaves open of the rings in a wet reading, at the place of its unknown.
    struct LeftOpen {
        double z = std::numeric_limits<double>::quiet_NaN();
        double share = 1.0;
    };
    mutable std::vector<LeftOpen> left_open_;
    static constexpr double least_kept_z = -6.0, most_kept_z = 6.0;
    const EngineModel::Share least_kept_, most_kept_;
    EngineModel::SharedState shared_;
    EngineModel::SharedState proposed_;
    double engine_log_ = 0.0;
    std::vector<double> cylinder_log_;
    std::vector<double> cylinder_new_;
    struct Undo {
        std::size_t place;
        double value, m2, over_standing;
    };
    std::vector<Undo> undo_;  ///< its first `to_undo_`
    std::size_t to_undo_ = 0;
    std::vector<std::size_t> touched_;
    std::vector<Block> cylinder_blocks_;
    Block shared_block_;
    /// How often a cylinder's and a joint's moves are made: often where much is open. Learned while warming
    /// up.
    std::vector<double> cylinder_effort_, joint_effort_;
    std::vector<std::vector<double>> path_effort_;  ///< by own path; adds up to one. Learned likewise
    struct Watched {
        double sum = 0.0, squares = 0.0;
        double cranking = 0.0;  ///< sum of shares while cranking
    };
    std::vector<std::vector<Watched>> watched_;                    ///< shares of each cylinder's paths
    std::vector<double> watched_log_leak_, watched_log_cranking_;  ///< sums
    /// How a cylinder's paths follow its readings; learned while warming up.
    struct Follower {
        double leak = 0.0;            ///< m2, the usual one; 0: it does not follow
        std::vector<double> by_path;  ///< change of the area's logarithm for one of what is read
    };
    std::vector<Follower> standing_, cranking_;
    double watched_count_ = 0.0;
    /// Cylinders that were listened to with the air of a leak-down tester that failed its check.
    std::vector<std::pair<std::size_t, std::size_t>> heard_failed_;  ///< tester, cylinder
    bool learning_ = false;
    int warmed_ = 0;
    static constexpr std::size_t whole_engine = static_cast<std::size_t>(-1);
};

}  // namespace lapwing::odds
