#include "advice/mend.hpp"

#include <algorithm>
#include <set>
#include <utility>

#include "advice/caution_of_change.hpp"
#include "advice/kitchen.hpp"
#include "advice/measured_before.hpp"
#include "advice/mending_levers.hpp"
#include "advice/mending_search.hpp"
#include "advice/numbers_kept.hpp"
#include "base/number.hpp"
#include "judging/specialty.hpp"
#include "judging/tasting.hpp"
#include "judging/verdict.hpp"

namespace entrywise {

namespace {

/// Draws to look for a plan with; what is proposed is worked out with all of them.
constexpr std::size_t draws_of_the_search = 16;

constexpr std::size_t most_proposals = 3;

/// The search aims a little lower than the target, for what rounding and few draws leave open.
constexpr double margin = 0.15;

/// After so many attempts no further way is looked for, or none at all (working values).
constexpr std::size_t enough_evaluations = 350;
constexpr std::size_t most_evaluations = 500;

/// A proposal that disturbs this much more than the least one is not worth showing (working value).
constexpr double most_extra_disruption = 2.0;

/// How often a plan that does not hold is tightened before it is given up.
constexpr int most_tightenings = 3;

bool keeps_numbers(const Proposal& proposal, const Mending& mending) {
    return numbers_are_kept(mending.style, mending.beer, proposal.beer);
}

/// Everything that one mending goes by.
class Mender {
  public:
    Mender(Mending& mending, const Handbook& handbook, const MendingMeans& means)
        : mending_(mending),
          handbook_(handbook),
          coarse_(mending.recipe, means, handbook, mending.stage, draws_of_the_search),
          fine_(mending.recipe, means, handbook, mending.stage, usual_draws),
          levers_(levers_of(mending.recipe, mending.beer, mending.style, means, mending.stage)),
          search_(levers_, Attempt{mending.recipe, {}, {}},
                  [this](const Attempt& attempt) { return outcome_of(coarse_.taste_of(attempt)); }) {}

    /// Looks among what the recipe has; among everything, where that may disturb less; and then for other
    /// ways than those, as long as the work allows.
    void look() {
        plans_.clear();
        const std::size_t before = search_.evaluations();
        const auto done = [&] { return search_.evaluations() - before; };
        std::set<std::size_t> excluded = levers_for_new_ingredients();
        take(excluded, MendingSearch::most_changes);
        if (mending_.proposals.empty() || mending_.proposals.front().disruption > disruption_of_new) {
            take({}, MendingSearch::most_changes);
        }
        excluded.clear();
        const bool hopeless = std::none_of(plans_.begin(), plans_.end(),
                                           [this](const MendingPlan& plan) { return may_hold(plan); });
        while (!hopeless && proposals_to_show() < most_proposals &&
               done() < (mending_.proposals.empty() ? most_evaluations : enough_evaluations)) {
            const auto lever = mainstay_of_latest();
            if (!lever || !excluded.insert(*lever).second) {
                return;
            }
            take(excluded, std::min(plans_.front().changes + 1, MendingSearch::most_changes));
        }
    }

    /// What did not hold for one target may hold for another: the plans so far with no more than that needs.
    void look_again() {
        known_.clear();
        const double aim = coarse_aim();
        for (const MendingPlan& plan : plans_) {
            if (may_hold(plan)) {
                propose(search_.relaxed(plan, aim), aim, {}, MendingSearch::most_changes);
            }
        }
    }

  private:
    std::size_t proposals_to_show() const {
        const auto& proposals = mending_.proposals;
        return static_cast<std::size_t>(
            std::count_if(proposals.begin(), proposals.end(),
                          [this](const Proposal& proposal) { return keeps_numbers(proposal, mending_); }));
    }

    Outcome outcome_of(const Tasting& tasting) const {
        return {verdict_on(tasting, mending_.style, handbook_).sheet.total,
                numbers_outside(mending_.style, tasting.beer)};
    }

    std::set<std::size_t> levers_for_new_ingredients() const {
        std::set<std::size_t> levers;
        for (std::size_t lever = 0; lever < levers_.size(); ++lever) {
            if (levers_[lever].brings_in_new) {
                levers.insert(lever);
            }
        }
        return levers;
    }

    void take(const std::set<std::size_t>& excluded, std::size_t most) {
        const double aim = coarse_aim();
        const MendingPlan plan = search_.plan_for(aim, excluded, most);
        if (!plan.settings.empty()) {
            plans_.push_back(plan);
            if (may_hold(plan)) {
                propose(plan, aim, excluded, most);
            }
        }
    }

    /// Whether few draws leave it open that the target is kept.
    bool may_hold(const MendingPlan& plan) const {
        return plan.outcome.risk.median < coarse_aim() + 2.0 * margin;
    }

    /// What few draws must come to, as far as they tell less at risk than all of them do.
    double coarse_aim() const {
        const double missed = mending_.sheet.total.median - search_.risk_at_start().median;
        return std::max(mending_.target - margin - std::max(missed, 0.0), 0.0);
    }

    /// The lever that the latest plan leans on most.
    std::optional<std::size_t> mainstay_of_latest() const {
        if (plans_.empty()) {
            return std::nullopt;
        }
        const MendingPlan& plan = plans_.back();
        const auto dearest = std::max_element(plan.settings.begin(), plan.settings.end(),
                                              [&](const auto& one, const auto& other) {
                                                  return levers_[one.first].disruption(one.second) <
                                                         levers_[other.first].disruption(other.second);
                                              });
        return dearest->first;
    }

    void propose(MendingPlan plan, double aim, const std::set<std::size_t>& excluded, std::size_t most) {
        for (int tightening = 0; tightening <= most_tightenings; ++tightening) {
            const MendingPlan weighed = search_.rounded(plan, true);
            const MendingPlan plain = search_.rounded(plan, false);
            if (weighed.settings.empty() || is_known(weighed)) {
                return;
            }
            if (plain.settings != weighed.settings && over_target(proposal_of(plain)) <= 0.0) {
                accept(plain);
                return;
            }
            const double over = over_target(proposal_of(weighed));
            if (over <= 0.0) {
                accept(weighed);
                return;
            }
            aim -= std::max(over, 0.1) + 0.05;
            const MendingPlan tighter = search_.tightened(plan, aim, excluded, most);
            if (tighter.settings == plan.settings) {
                break;
            }
            plan = tighter;
        }
        known_.push_back(levers_in(plan));
    }

    /// As printed.
    double over_target(const Proposal& proposal) const {
        return rounded(proposal.sheet.total.median, 1) - mending_.target;
    }

    void accept(const MendingPlan& plan) {
        mending_.proposals.push_back(proposal_of(plan));
        known_.push_back(levers_in(plan));
    }

    static std::vector<std::size_t> levers_in(const MendingPlan& plan) {
        std::vector<std::size_t> levers;
        for (const auto& [lever, setting] : plan.settings) {
            levers.push_back(lever);
        }
        return levers;
    }

    bool is_known(const MendingPlan& plan) const {
        return std::find(known_.begin(), known_.end(), levers_in(plan)) != known_.end();
    }

    Proposal proposal_of(const MendingPlan& plan) {
        Proposal proposal;
        proposal.attempt = search_.attempt_of(plan);
        proposal.changes = search_.told(plan);
        proposal.disruption = plan.disruption;
        for (const auto& [lever, setting] : plan.settings) {
            proposal.brings_in_new = proposal.brings_in_new || levers_[lever].brings_in_new;
        }
        Tasting tasting = fine_.taste_of(proposal.attempt);
        proposal.sheet = verdict_on(tasting, mending_.style, handbook_).sheet;
        proposal.cautions = cautions_of_change(mending_.recipe, mending_.beer, tasting.recipe, tasting.beer);
        if (mending_.stage == Stage::recipe) {
            proposal.no_longer_measured = drop_untrue_measurements(mending_.recipe, proposal.attempt.recipe);
        }
        proposal.beer = std::move(tasting.beer);
        return proposal;
    }

    Mending& mending_;
    const Handbook& handbook_;
    Kitchen coarse_;
    Kitchen fine_;
    std::vector<MendingLever> levers_;
    MendingSearch search_;
    std::vector<MendingPlan> plans_;
    std::vector<std::vector<std::size_t>> known_;
};

/// What a declaration that is missing costs; nothing where none is.
double points_of_missing(const Sheet& sheet) {
    const auto found = std::find_if(sheet.findings.begin(), sheet.findings.end(), [](const Finding& finding) {
        return finding.attribute == "declaration";
    });
    return found == sheet.findings.end() ? 0.0 : found->points;
}

/// A way that takes the beer out of the style's numbers is shown only where there is no other.
void leave_out_those_that_lose_numbers(Mending& mending) {
    const auto keeps = [&mending](const Proposal& proposal) { return keeps_numbers(proposal, mending); };
    if (std::any_of(mending.proposals.begin(), mending.proposals.end(), keeps)) {
        std::erase_if(mending.proposals, [&keeps](const Proposal& proposal) { return !keeps(proposal); });
    }
}

double least_disruption(const std::vector<Proposal>& proposals) {
    const auto least = std::min_element(
        proposals.begin(), proposals.end(),
        [](const Proposal& one, const Proposal& other) { return one.disruption < other.disruption; });
    return least == proposals.end() ? 0.0 : least->disruption;
}

}  // namespace

Mending mend(const Recipe& recipe, const Style& style, const Handbook& handbook, const MendingMeans& means,
             const MendingWish& wish, const std::optional<Style>& base_style) {
    Mending mending;
    mending.recipe = recipe;
    mending.base_style = style.varies ? base_style : std::nullopt;
    mending.style = mending.base_style ? judged_style(style, *mending.base_style) : style;
    mending.stage = wish.stage;
    mending.wanted = wish.target;
    mending.target = wish.target;
    Tasting tasting = taste(recipe, handbook.perception);
    mending.undeclared = points_of_missing(verdict_on(tasting, mending.style, handbook).sheet);
    mending.style.must_declare.clear();
    mending.sheet = verdict_on(tasting, mending.style, handbook).sheet;
    mending.beer = std::move(tasting.beer);
    if (mending.is_in_already()) {
        return mending;
    }
    Mender mender(mending, handbook, means);
    mender.look();
    if (mending.proposals.empty() && 0.5 * mending.sheet.total.median > wish.target) {
        mending.target = rounded(0.5 * mending.sheet.total.median, 1);
        mender.look_again();
    }
    std::stable_sort(mending.proposals.begin(), mending.proposals.end(),
                     [](const Proposal& one, const Proposal& other) {
                         return std::pair(one.changes.size(), one.disruption) <
                                std::pair(other.changes.size(), other.disruption);
                     });
    leave_out_those_that_lose_numbers(mending);
    std::erase_if(mending.proposals, [least = least_disruption(mending.proposals)](const Proposal& proposal) {
        return proposal.disruption > least + most_extra_disruption;
    });
    mending.proposals.resize(std::min(mending.proposals.size(), most_proposals));
    return mending;
}

}  // namespace entrywise
