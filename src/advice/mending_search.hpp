#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "advice/attempt.hpp"
#include "advice/mending_lever.hpp"
#include "judging/sheet.hpp"

namespace entrywise {

/// What an attempt comes to.
struct Outcome {
    PointsAtRisk risk;
    double numbers_outside = 0.0;  ///< as `numbers_outside` counts them
};

/// Levers and what they are set to, in the order of the levers.
struct MendingPlan {
    std::vector<std::pair<std::size_t, double>> settings;
    Outcome outcome;          ///< as it was last worked out
    double disruption = 0.0;  ///< of all its changes
    std::size_t changes = 0;  ///< as many as it is told as
    double cost = 0.0;        ///< disruption, what is at risk beyond the aim, and numbers out of the style
};

/// Looks for the least change that brings the points at risk down to an aim. Levers are taken one by one, the
/// one that helps most for what it disturbs first, up to `most_changes`; after each, all that were taken are
/// tuned together, by a local search that needs no derivatives (Rowan's subplex, as NLopt has it). In the
/// end levers that are no longer needed go. Nothing in it is left to chance or to the clock.
class MendingSearch {
  public:
    using WorkedOut = std::function<Outcome(const Attempt&)>;

    static constexpr std::size_t most_changes = 4;

    /// `worked_out` tells what an attempt comes to; it is called some hundred times.
    MendingSearch(const std::vector<MendingLever>& levers, Attempt start, WorkedOut worked_out);

    /// The best plan of so many changes without the excluded levers; its risk may lie above the aim.
    MendingPlan plan_for(double aim, const std::set<std::size_t>& excluded, std::size_t most = most_changes);

    /// The plan with no more than another, higher aim needs.
    MendingPlan relaxed(const MendingPlan& plan, double aim) const;

    /// The plan with its settings tuned for another aim, further levers taken where that is not enough.
    MendingPlan tightened(const MendingPlan& plan, double aim, const std::set<std::size_t>& excluded,
                          std::size_t most = most_changes);

    /// The plan as it can be weighed and set, with or without the rests that are hardly worth weighing;
    /// levers that rounding brings back to where they are now go.
    MendingPlan rounded(const MendingPlan& plan, bool with_rests) const;

    Attempt attempt_of(const MendingPlan& plan) const;

    const PointsAtRisk& risk_at_start() const { return at_start_.risk; }

    std::vector<Change> told(const MendingPlan& plan) const;

    /// How often an attempt was worked out so far: a measure of time that is the same on every machine.
    std::size_t evaluations() const { return evaluations_; }

  private:
    /// Points at risk to come down to, and the disruption that a point beyond them is worth.
    struct Aim {
        double points = 0.0;
        double price = 0.0;
    };

    struct FirstLook {
        std::size_t lever = 0;
        double cost = 0.0;
    };

    void work_out(MendingPlan& plan, const Aim& aim) const;
    void put_price(MendingPlan& plan, const Aim& aim) const;
    MendingPlan with(const MendingPlan& plan, std::size_t lever, double setting, const Aim& aim) const;
    bool fits(const MendingPlan& plan, std::size_t lever, std::size_t most) const;
    MendingPlan best_with(const MendingPlan& plan, std::size_t lever, const Aim& aim) const;
    MendingPlan tuned(MendingPlan plan, const Aim& aim, std::size_t evaluations) const;
    MendingPlan grown(MendingPlan plan, const Aim& aim, const std::set<std::size_t>& excluded,
                      std::size_t most) const;
    std::vector<MendingPlan> with_one_more(const MendingPlan& plan, const Aim& aim,
                                           const std::set<std::size_t>& excluded, std::size_t most) const;
    MendingPlan eased(MendingPlan plan, const Aim& aim) const;
    MendingPlan pruned(MendingPlan plan, const Aim& aim) const;
    void look_at_all(double aim);

    const std::vector<MendingLever>& levers_;
    Attempt start_;
    WorkedOut worked_out_;
    Outcome at_start_;
    mutable std::size_t evaluations_ = 0;
    std::vector<std::size_t> by_promise_;  ///< levers, those that help most by themselves first
};

}  // namespace entrywise
