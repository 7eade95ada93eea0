// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/findings/findings.h"
#include "core/findings/word_kinds.h"

/// The parts that `find` is put together from, for this room and for those that weigh readings further (odds,
/// compare).
namespace lapwing::findings {

/// Air pressure of the shop.
struct Site {
    double ambient_pa = 0.0;  ///< absolute; sea level when nothing is known
    bool known = false;
    double doubt = 0.0;  ///< of it, 95 %, as a share; 0 where nothing is known
    Message basis;
    std::vector<Input> inputs;
};

Site site_of(const Engine& engine, const Session& session, const Reference& reference);
/// A decompressor that was not put out of action: readings compare cylinders only, never limits or paths.
bool decompressor_works(const Engine& engine, const Session& session);
/// A throttle that kept air out: noted as closed, or the step of holding it open marked as not done.
bool throttle_closed(const Session& session, const Engine& engine);
/// A 12 or 24 V battery that was noted as flat.
bool battery_weak(const Conditions& conditions, const Reference& reference);
Limits limits_at(const Engine& engine, const Site& site);

/// Everything that the parts look at.
struct Case {
    const Dossier& dossier;
    const Engine& engine;
    const Visit& visit;
    const Reference& reference;
    FindingsOptions options;
    Site site;
    Limits limits;

    [[nodiscard]] bool two_stroke() const { return engine.cycle == StrokeCycle::two; }
    [[nodiscard]] bool decompressor_works() const {
        return findings::decompressor_works(engine, visit.session);
    }
};

Case case_of(const Dossier& dossier, const Visit& visit, const Reference& reference,
             const FindingsOptions& options);

/// A bore that is tested behind the larger restrictor.
bool is_large_bore(const Engine& engine, const Reference& reference);
/// Diameter, m, of the restrictor that a cylinder of this bore is tested behind where the tester's own is not
/// known.
double usual_restrictor_m(const Engine& engine, const Reference& reference);
/// Readings of one test of one cylinder that are wildly apart: of the dry test the final readings, of the
/// leak-down the shares held of one set pressure.
bool far_apart(const Case& at, TestKind test, const Reading& one, const Reading& other);
/// Several of them, and the newest agrees with none of the others: no gauge, starter or ring scatters like
/// that, and nothing is made of their mean.
bool wildly_apart(const Case& at, TestKind test, const std::vector<const Reading*>& readings);
/// Of one tag's dry or leak-down readings those far apart from the newest, where another one agrees with it:
/// a mean of both would be neither. Oldest first.
std::vector<const Reading*> odd_ones(const Case& at, TestKind test, int cylinder);
/// The readings that count: standing, and of one tag (that of the options, or the newest reading's), without
/// `odd_ones`. A leak-down that held next to nothing is left out where another one of the same cylinder held
/// well: see `very_low_beside`; one that held more than was set always: see `over_set`.
std::vector<const Reading*> counted(const Case& at, TestKind test, int cylinder);
/// Leak-downs that held next to nothing while another one of the same cylinder and tag held well. Both can't
/// be right, and a mean of them would be neither: open valves at the wrong TDC, or a tester not screwed in,
/// let out everything, while nothing makes a leaking cylinder hold. Oldest first.
struct VeryLow {
    std::vector<const Reading*> readings;
    const Reading* against = nullptr;  ///< the newest that held well
};
VeryLow very_low_beside(const Case& at, int cylinder);
/// Leak-downs of that tag that held more than was set, which nothing can. Oldest first.
std::vector<const Reading*> over_set(const Case& at, int cylinder);
/// Dry or leak-down readings of the tag that counts that were taken over oiled rings, where the cylinder was
/// read before the oil too. Oil helps rings to seal: a mean of both would be neither state, so they are not
/// `counted`. Oldest first.
std::vector<const Reading*> after_oil(const Case& at, TestKind test, int cylinder);
/// The tester of a reading: its own, or the session's for that test; null when neither is said.
const Tester* tester_of(const Case& at, TestKind test, const std::optional<TesterId>& own);

// One test of one cylinder.
std::optional<Cranking> cranking_of(const Case& at, TestKind test, int cylinder);
std::optional<LeakDown> leak_down_of(const Case& at, int cylinder);
std::optional<Wet> wet_of(const Case& at, int cylinder, const std::optional<Cranking>& dry);
/// The loudest standing note of each exit, of one tag as `counted`; what of it counts now: touched.h.
std::vector<Heard> exits_of(const Case& at, int cylinder);
/// Takes its path from what was heard in a neighbour's plug hole where it may have come through a valve: the
/// neighbour's may be open, and nobody listened at the exit of this cylinder's own.
void doubt_joints(const Case& at, int cylinder, std::vector<Heard>& exits);
Clearances clearances_of(const Case& at, int cylinder);
/// Found with too little clearance, by the card's range or beside its siblings, and left with enough.
bool was_put_right(const Case& at, const Clearance& valve);
std::vector<Crankcase> crankcases_of(const Case& at);
struct CrankcaseVerdict {
    State state = State::none;
    std::string_view what;  ///< behind the point of its code
};
/// Of one crankcase test, on the pad as in the findings.
CrankcaseVerdict judge_crankcase(const CrankcaseLimits& limits, const Figure& end,
                                 const std::optional<TypedTime>& hold);

/// What the cranking model says of that cylinder's dry or wet test, with its tester, adapter and oil; nothing
/// where the model isn't asked.
std::optional<ModelFacts> model_of(const Case& at, TestKind test, int cylinder);
/// The same of whichever dry or wet reading comes first, or of the test that is still to come.
std::optional<ModelFacts> model_of_visit(const Case& at);

/// State and reasons of one cranking reading against limits, or what the model (may be null) and makers in
/// general expect.
/// @param tester that it was read with; null: not known
void judge_by_limits(const Case& at, Cranking& reading, const ModelFacts* model, const Tester* tester);
/// Something lowered the reading, and how much can't be worked out (data is missing on the card, or the model
/// refuses such an engine): the code that says what.
std::optional<std::string_view> lowered_by_who_knows(const Case& at, const Tester* tester);
/// The reading had nothing lain before the check valve. Only where the model has a hose_loss.
Derived without_hose(const Cranking& reading, const ModelFacts& model);
/// After so few pulls the gauge may not have come to rest: how far a sound cylinder's would have come, by the
/// model (may be null), else what makers ask. Nothing where there were enough.
std::optional<Remark> still_rising(const Case& at, int pulls, const ModelFacts* model);
/// State and reasons, with what the model says beside them.
void judge_dry(const Case& at, int cylinder, Cranking& reading);
std::vector<Remark> expectation_of(const Case& at);
/// Spread rules over all dry readings; lowers the state of cylinders that fail.
std::vector<RuleVerdict> judge_spread(const Case& at, std::vector<CylinderFindings>& cylinders);

/// What makers' bands say of one leak, each on its own tester; nothing where none of them could be asked.
std::optional<Remark> bands_say(const std::vector<BandVerdict>& verdicts, const Reference& reference);
/// Makers' rules on the difference between cylinders' leakages: only said, no state rests on them.
std::vector<RuleVerdict> judge_leak_spread(const Case& at, const std::vector<CylinderFindings>& cylinders);

// What the tests say together.
void add_rules_of_thumb(const Case& at, std::vector<CylinderFindings>& cylinders);
void add_questions(const Case& at, CylinderFindings& cylinder);
/// Names the readings that can't all be right, and takes their verdicts back (misfits.h).
void add_misfits(const Case& at, CylinderFindings& cylinder);
void add_contradictions(const Case& at, CylinderFindings& cylinder);
void add_photo_contradictions(const Case& at, CylinderFindings& cylinder);
std::vector<Remark> weakened_by(const Case& at);
/// Steps of Prepare that say something about this visit's readings and were neither done nor crossed out.
std::vector<PrepareStep> steps_left_open(const Case& at);
Message headline_of(const Case& at, const CylinderFindings& cylinder);
Message headline_of(const Case& at, const Findings& findings);
/// What earlier visits of the dossier left open and this one has not settled.
struct LeftOpen {
    CylinderList faults;  ///< leaked in air, and no air was put on since
    std::vector<NextStep> steps;
};
LeftOpen left_open_earlier(const Case& at, const Findings& findings);
std::vector<NextStep> next_steps(const Case& at, const Findings& findings, const LeftOpen& earlier);

// Helpers.
/// Neighbours on one bank, as they stand.
std::vector<std::pair<int, int>> neighbours(const Engine& engine);
/// Both at top dead centre together, one of them on overlap (four-stroke, firing order known).
bool companions(const Engine& engine, const Reference& reference, int a, int b);
bool is_valve(Path path);
/// Of the same side's other valves in this engine: their median, m, where this clearance of `valve` lies far
/// below it and the card has no range to hold it against.
std::optional<double> siblings_far_above(const Engine& engine, const Visit& visit, const Reference& reference,
                                         const Clearance& valve, const TypedLength& clearance);
/// A valve of this cylinder whose clearance, as it is now, lies far below its siblings'; the smallest.
struct FarBelow {
    const Clearance* valve = nullptr;
    double siblings = 0.0;  ///< their median, m

    [[nodiscard]] const TypedLength& now() const { return valve->left ? *valve->left : *valve->found; }
};
std::optional<FarBelow> far_below_siblings(const Engine& engine, const Visit& visit,
                                           const Reference& reference, int cylinder, ValveSide side);
/// Whether the clearance of the valve that the path names must be looked at before a verdict. `wanted`: it is
/// recorded, but nobody has said what it should be. `siblings`: likewise, and it lies far below theirs.
enum class ClearanceNeed { none, record, wanted, siblings, adjust, retest };
ClearanceNeed clearance_need(const Case& at, const CylinderFindings& cylinder, Path path);
/// The valve that was put right after the cylinder was last tested: no verdict before it is tested again.
std::optional<Path> retest_of(const Case& at, const CylinderFindings& cylinder);
bool hears(const CylinderFindings& cylinder, Exit exit);
bool asks(const CylinderFindings& cylinder, std::string_view code);
/// Whether the wrong TDC is asked about, in whichever words.
bool asks_tdc(const CylinderFindings& cylinder);
/// Whether this test is to be done again before it counts.
bool does_again(const CylinderFindings& cylinder, TestKind test);
/// What the dry test says of the cylinder as it is now. Where the wet one can't be right beside it, either
/// may be the slip: no fault by that.
State dry_state(const CylinderFindings& cylinder);
/// The test to be done again before anything is said of the cylinder. What air said stands whatever oil did.
std::optional<TestKind> stands_in_the_way(const CylinderFindings& cylinder);
/// The loudest exit's path where exactly one stands out.
const Heard* loudest(const CylinderFindings& cylinder);
/// The neighbour in whose plug hole air was heard loudest, where exactly one stands out.
std::optional<int> heard_neighbour(const CylinderFindings& cylinder);
/// The same where that is the loudest exit of all, and yet no proof of the joint (`doubt_joints`).
std::optional<int> doubted_joint(const CylinderFindings& cylinder);
/// Rings pass some air when they are sound, and a valve may not have seated yet; these let out none.
bool may_not_leak(Path path);
/// Air noticed where none may pass, however little it is: into the coolant, out past the head gasket, or into
/// a neighbour through the joint. The loudest of them; null: none, or something comes before any verdict.
const Heard* gasket_air(const CylinderFindings& cylinder);
/// What that alone makes of the cylinder: a trace is looked at again, more is a fault.
State gasket_state(const CylinderFindings& cylinder);
/// Two exits that are equally loud, and louder than the rest, and mean different paths; null where not.
std::optional<std::pair<const Heard*, const Heard*>> equally_loud(const CylinderFindings& cylinder);
/// Its dry test read above the factory range.
bool reads_above(const CylinderFindings& cylinder);
/// Its only leak-downs held more than was set, which nothing can.
bool held_over_set_alone(const CylinderFindings& cylinder);
/// Leakage in range: what air still passes is what rings may let by.
bool seals_well(const CylinderFindings& cylinder);

template <class... Args>
Message say(std::string_view code, Args&&... args) {
    return Message{std::string(code), std::vector<Arg>{Arg(std::forward<Args>(args))...}};
}
template <class... Args>
Remark remark(std::string_view code, Args&&... args) {
    return Remark{say(code, std::forward<Args>(args)...), {}};
}
Message source_of(const Basis& basis);
Message source_of_card(const FactoryLimits& limits);
Input input(std::string_view name, std::string symbol, Arg value);
Figure figure(Dimension dimension, double si, std::optional<double> u95 = {});

}  // namespace lapwing::findings
