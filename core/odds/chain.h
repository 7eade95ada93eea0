// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <Eigen/Core>
#include <boost/random/mersenne_twister.hpp>
#include <boost/random/normal_distribution.hpp>
#include <boost/random/uniform_01.hpp>
#include <cstdint>
#include <span>
#include <vector>

#include "core/odds/engine_model.h"

namespace lapwing::odds {

/// One Markov chain over all unknowns of an engine (Metropolis and Hastings). All unknowns are standard
/// normal before the evidence, so most moves keep the prior and are judged by the evidence alone; the moves
/// that shift air from one path to another are judged by both. Block moves learn their shape while warming up
/// and keep it from then on. Deterministic for a seed: the random numbers are Boost's, the same everywhere.
class Chain {
public:
    Chain(const EngineModel& model, std::uint64_t seed);

    /// `sweeps` in which block moves learn.
    void warm_up(int sweeps);
    void sweep();
    [[nodiscard]] std::span<const double> z() const { return z_; }

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
    void transfer(std::size_t cylinder);
    void divert(std::size_t joint);
    void widen(std::size_t joint);
    void trade(std::size_t cylinder);
    void redraw(std::size_t cylinder);
    void oil(std::size_t cylinder);
    void partial(std::size_t first, std::size_t last, std::size_t cylinder);
    void block(Block& of, std::size_t cylinder);
    void learn(Block& of);
    void shape(Block& of) const;
    void watch();
    void share_out_effort();

    /// Sets one unknown for the move at hand; `judge` keeps or undoes all that were set.
    void set(std::size_t place, double value);
    /// `log_prior`: change of the prior's logarithm where the move does not keep it.
    bool judge(double log_prior, std::span<const std::size_t> cylinders);
    bool judge_all(double log_prior);
    /// Adds the cylinders whose evidence a path of this cylinder concerns.
    void touch(std::size_t cylinder, const PathPlace& path);
    [[nodiscard]] double normal() { return normal_(random_); }
    [[nodiscard]] double uniform() { return uniform_(random_); }
    [[nodiscard]] std::size_t one_of(std::size_t count);
    [[nodiscard]] std::size_t largest(std::span<const PathPlace> paths) const;

    const EngineModel& model_;
    boost::random::mt19937_64 random_;
    boost::random::normal_distribution<double> normal_;
    boost::random::uniform_01<double> uniform_;
    std::vector<double> z_;
    EngineModel::SharedState shared_;
    EngineModel::SharedState proposed_;
    double engine_log_ = 0.0;
    std::vector<double> cylinder_log_;
    std::vector<double> cylinder_new_;
    struct Undo {
        std::size_t place;
        double value;
    };
    std::vector<Undo> undo_;
    std::vector<std::size_t> touched_;
    std::vector<Block> cylinder_blocks_;
    Block shared_block_;
    /// How often a cylinder's and a joint's moves are made: often where much is open. Learned while warming
    /// up.
    std::vector<double> cylinder_effort_, joint_effort_;
    struct Watched {
        double sum = 0.0, squares = 0.0;
    };
    std::vector<std::vector<Watched>> watched_;  ///< shares of each cylinder's paths
    double watched_count_ = 0.0;
    bool learning_ = false;
    int warmed_ = 0;
    static constexpr std::size_t whole_engine = static_cast<std::size_t>(-1);
};

}  // namespace lapwing::odds
