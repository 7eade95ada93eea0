// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <deque>
#include <mutex>
#include <optional>
#include <string>
#include <vector>

#include "core/findings/derivation.h"
#include "core/findings/reference.h"
#include "core/model/visit.h"
#include "core/physics/cranking.h"

/// What the cranking model has to say about one engine in one visit. Two steps: `model_inputs` collects what
/// the model is given and costs nothing; `model_facts` runs the model and takes milliseconds. Who shows facts
/// while a person types makes the inputs, compares them with those of the facts at hand, and works out new
/// facts elsewhere when they differ.
namespace lapwing::findings {

struct DerivedRange {
    Figure low;
    Figure high;
    Derivation from;
};

/// Why the model stays silent.
enum class ModelSilence {
    none,
    data_missing,  ///< bore, stroke or compression ratio is not on the card
    decompressor,  ///< one is at work: readings compare cylinders only
};

/// All SI; a guess is named in `notes`. Two equal inputs give equal facts.
struct ModelInputs {
    ModelSilence silence = ModelSilence::none;
    std::vector<Word> missing;  ///< "input:bore" and so on

    double bore_m = 0.0;
    double stroke_m = 0.0;
    double rod_m = 0.0;
    double compression_ratio = 0.0;
    double compression_ratio_doubt = 0.0;  ///< half width
    bool trapped_ratio = false;            ///< two-stroke
    double closing_rad = 0.0;              ///< after BDC, at the seat; two-stroke: exhaust port
    double closing_doubt_rad = 0.0;        ///< half width
    double speed_rad_s = 0.0;              ///< mean, as a counter shows it
    double speed_dip = 1.0;                ///< speed near top dead centre over the mean
    double speed_dip_doubt = 0.0;          ///< standard, as a share of the speed
    double speed_doubt = 0.0;              ///< of that speed, standard, dip and mean together, as a share
    double site_pa = 0.0;                  ///< station pressure, absolute
    double site_doubt = 0.0;               ///< of it, 95 %, as a share
    double air_k = 0.0;
    double wall_k = 0.0;

    double fitting_m3 = 0.0;
    double hose_m3 = 0.0;
    bool valve_at_gauge = false;
    double crack_pa = 0.0;

    double oil_m3 = 0.0;
    double oil_doubt = 0.0;  ///< of it, 95 %, as a share
    double oil_kept_least = 0.0;
    double oil_kept_most = 0.0;

    double own_doubt = 0.0;          ///< of the model's reading, standard, a share
    double correction_doubt = 0.0;   ///< of what the model takes off or adds, standard, a share of it
    double first_share_doubt = 0.0;  ///< of the first puff's share, 95 %, a share of it

    // What the visit's circumstances ask to be sized; absent where they don't apply.
    std::optional<double> throttle_fill_least, throttle_fill_most;
    std::optional<double> slow_speed_rad_s;  ///< a weak battery's
    std::optional<double> warm_wall_k;       ///< the engine was cold
    std::optional<double> may_be_warm_k;     ///< whether it was cold is not noted
    std::optional<double> easy_crack_pa;     ///< the check valve has a tyre-valve core
    /// Closing that a working decompressor comes to; `silence` is then decompressor.
    std::optional<double> released_least_rad, released_most_rad;

    std::vector<Input> inputs;  ///< for derivations
    std::vector<Message> notes;
    std::vector<Input> oil_inputs;
    std::vector<Message> oil_notes;

    bool operator==(const ModelInputs&) const = default;
};

/// Volume of the chamber at top dead centre. Only where nothing is missing.
double chamber_m3(const ModelInputs& inputs);

/// The case that the model runs: this engine with nothing leaking and no oil, with this tester in this shop.
/// Only where nothing is missing.
physics::CrankingCase cranking_case(const ModelInputs& inputs);

/// Whether something stood in the way of these readings that factory limits don't allow for (they are meant
/// for a warm engine, cranked well, throttle open, check valve at the plug hole), and that the model can
/// size.
bool below_par(const ModelInputs& inputs);

/// What has to be put right before a reading is held against a factory limit.
struct Correction {
    double factor = 1.0;  ///< reading x factor: as a limit means it
    double u95 = 0.0;     ///< of the factor
    std::vector<Derivation> from;
};

struct ModelFacts {
    ModelInputs inputs;  ///< that these facts came from

    /// Reading of a cylinder that seals well, as this tester shows it in this shop.
    std::optional<DerivedRange> healthy;
    /// The same in a sentence, or why there is none.
    Remark healthy_says;
    /// First puff of the final reading of such a cylinder.
    std::optional<Derived> healthy_first_share;
    /// How much of what this gauge comes to in the end it shows after each pull, for such a cylinder.
    std::vector<Derived> reached;
    /// What a cylinder that seals well would read with its decompressor at work; only where one is.
    std::optional<DerivedRange> released;

    /// Share of the chamber at top dead centre that the oil put in takes up.
    std::optional<Derived> oil_fill;
    /// Rise, as a share of the dry reading, that the mere volume of the oil explains; absent where so much
    /// oil would lock the engine.
    std::optional<DerivedRange> oil_rise;

    /// What the volume before the check valve takes off a reading, as a share of it, and reading x correction
    /// = reading without it. Absent where there is no such volume.
    std::optional<Derived> hose_loss;
    double hose_correction = 1.0;

    /// All of hose and circumstances together; absent where there is none.
    std::optional<Correction> correction;

    // How much lower than otherwise, as a share of the reading; absent where the circumstance isn't there.
    std::optional<DerivedRange> throttle_loss;
    std::optional<Derived> slow_loss;
    std::optional<Derived> cold_loss;
    std::optional<Derived> core_loss;
};

/// For the dry or wet test of a visit with `tester` (null: not known; `adapter`: its name, may be empty) and
/// that much oil (absent: what is common for this size of cylinder). Cheap.
ModelInputs model_inputs(const Engine& engine, const Session& session, const Reference& reference,
                         const Tester* tester, const std::string& adapter = {},
                         const std::optional<TypedVolume>& oil = {});

/// Runs the model a dozen times: a few milliseconds. What it refuses is said in `healthy_says`.
ModelFacts model_facts(const ModelInputs& inputs);

/// Only hose and circumstances, and the correction that they come to: what a state rests on where the card
/// has limits. Nothing of it costs anything where there are none.
ModelFacts model_correction(const ModelInputs& inputs);

/// Remembers the facts of the last few inputs. `find` runs anew with every record that changes, mostly with
/// the same engine, tester and shop: the model's milliseconds are then spent once. It is handed to `find`
/// rather than kept by it, so that `find` stays a pure function; with or without one the findings are the
/// same. Any thread may use it.
class ModelCache {
public:
    [[nodiscard]] ModelFacts facts(const ModelInputs& inputs);
    /// The same of `model_correction`, or more where all is known already.
    [[nodiscard]] ModelFacts correction(const ModelInputs& inputs);
    /// What `facts` would give, if it is known already. Never waits for the model.
    [[nodiscard]] std::optional<ModelFacts> known(const ModelInputs& inputs) const;

private:
    static constexpr std::size_t enough = 16;
    mutable std::mutex mutex_;
    std::deque<ModelFacts> known_, corrections_;
};

}  // namespace lapwing::findings
