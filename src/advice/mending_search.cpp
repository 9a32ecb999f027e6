#include "advice/mending_search.hpp"

#include <nlopt.hpp>

#include <algorithm>
#include <cmath>
#include <optional>

namespace entrywise {

namespace {

/// A point at risk beyond the aim counts as much as this disruption; where nothing is worth that and the aim
/// is not reached, more (working values).
constexpr double usual_price = 3.0;
constexpr double highest_price = 30.0;

/// What is at risk with bad luck counts a little too, so that the search sees a way where the middle does not
/// move (working value).
constexpr double price_of_bad_luck = 0.3;

/// A number of the style that is lost by the width of its range counts as much as this disruption: an India
/// pale ale brewed weaker than any is no longer the style, whatever a palate makes of it (working value).
constexpr double price_of_numbers_lost = 6.0;

/// One that is outside already, and not brought in, as much as this: a mild of 5 % is none yet, though a
/// palate finds little amiss (working value).
constexpr double price_of_numbers_left = 1.0;

/// After the first lever only so many are tried again: the rest did not help by themselves.
constexpr std::size_t promising = 14;

constexpr double least_gain = 0.02;

Mass nothing() {
    return 0.0 * kilogram;
}

/// Additions of no mass are left out.
void leave_out_nothing(Recipe& recipe) {
    std::erase_if(recipe.grist, [](const GristAddition& addition) { return addition.mass <= nothing(); });
    std::erase_if(recipe.hops, [](const HopAddition& addition) { return addition.mass <= nothing(); });
    std::erase_if(recipe.extras,
                  [](const ExtraAddition& extra) { return extra.mass && *extra.mass <= nothing(); });
}

}  // namespace

MendingSearch::MendingSearch(const std::vector<MendingLever>& levers, Attempt start, WorkedOut worked_out)
    : levers_(levers),
      start_(std::move(start)),
      worked_out_(std::move(worked_out)),
      at_start_(worked_out_(start_)) {}

Attempt MendingSearch::attempt_of(const MendingPlan& plan) const {
    Attempt attempt = start_;
    for (const auto& [lever, setting] : plan.settings) {
        levers_[lever].apply(attempt, setting);
    }
    leave_out_nothing(attempt.recipe);
    return attempt;
}

std::vector<Change> MendingSearch::told(const MendingPlan& plan) const {
    const Attempt mended = attempt_of(plan);
    std::vector<Change> changes;
    for (const auto& [lever, setting] : plan.settings) {
        for (Change& change : levers_[lever].told(mended, setting)) {
            changes.push_back(std::move(change));
        }
    }
    return changes;
}

void MendingSearch::work_out(MendingPlan& plan, const Aim& aim) const {
    plan.disruption = 0.0;
    plan.changes = 0;
    for (const auto& [lever, setting] : plan.settings) {
        plan.disruption += levers_[lever].disruption(setting);
        plan.changes += levers_[lever].counts_as;
    }
    if (plan.settings.empty()) {
        plan.outcome = at_start_;
    } else {
        plan.outcome = worked_out_(attempt_of(plan));
        ++evaluations_;
    }
    put_price(plan, aim);
}

void MendingSearch::put_price(MendingPlan& plan, const Aim& aim) const {
    const PointsAtRisk& risk = plan.outcome.risk;
    const double left = std::min(plan.outcome.numbers_outside, at_start_.numbers_outside);
    const double lost = plan.outcome.numbers_outside - left;
    plan.cost = plan.disruption + aim.price * std::max(risk.median - aim.points, 0.0) +
                price_of_bad_luck * risk.high + price_of_numbers_left * left + price_of_numbers_lost * lost;
}

MendingPlan MendingSearch::with(const MendingPlan& plan, std::size_t lever, double setting,
                                const Aim& aim) const {
    MendingPlan more = plan;
    const auto place = std::find_if(more.settings.begin(), more.settings.end(),
                                    [lever](const auto& each) { return each.first > lever; });
    more.settings.insert(place, {lever, setting});
    work_out(more, aim);
    return more;
}

bool MendingSearch::fits(const MendingPlan& plan, std::size_t lever, std::size_t most) const {
    const std::vector<std::string>& wanted = levers_[lever].touches;
    const bool free = std::none_of(plan.settings.begin(), plan.settings.end(), [&](const auto& taken) {
        const std::vector<std::string>& touched = levers_[taken.first].touches;
        return std::find_first_of(wanted.begin(), wanted.end(), touched.begin(), touched.end()) !=
               wanted.end();
    });
    return free && plan.changes + levers_[lever].counts_as <= most;
}

MendingPlan MendingSearch::best_with(const MendingPlan& plan, std::size_t lever, const Aim& aim) const {
    std::optional<MendingPlan> best;
    for (const double trial : levers_[lever].trials) {
        if (levers_[lever].tunable && trial == levers_[lever].now) {
            continue;
        }
        MendingPlan tried = with(plan, lever, trial, aim);
        if (!best || tried.cost < best->cost) {
            best = std::move(tried);
        }
    }
    return best ? *best : plan;
}

void MendingSearch::look_at_all(double aim) {
    if (!by_promise_.empty()) {
        return;
    }
    std::vector<FirstLook> looks;
    const MendingPlan none{{}, at_start_, 0.0, 0, 0.0};
    for (std::size_t lever = 0; lever < levers_.size(); ++lever) {
        looks.push_back({lever, best_with(none, lever, {aim, usual_price}).cost});
    }
    std::stable_sort(looks.begin(), looks.end(),
                     [](const FirstLook& one, const FirstLook& other) { return one.cost < other.cost; });
    for (const FirstLook& look : looks) {
        by_promise_.push_back(look.lever);
    }
}

MendingPlan MendingSearch::tuned(MendingPlan plan, const Aim& aim, std::size_t evaluations) const {
    std::vector<std::size_t> tunable;
    std::vector<double> point;
    for (std::size_t index = 0; index < plan.settings.size(); ++index) {
        const MendingLever& lever = levers_[plan.settings[index].first];
        if (lever.tunable && lever.highest > lever.lowest) {
            tunable.push_back(index);
            const double part = (plan.settings[index].second - lever.lowest) / (lever.highest - lever.lowest);
            point.push_back(std::clamp(part, 0.0, 1.0));
        }
    }
    if (tunable.empty()) {
        return plan;
    }
    MendingPlan best = plan;
    auto cost = [&](const std::vector<double>& parts) {
        MendingPlan tried = plan;
        for (std::size_t index = 0; index < tunable.size(); ++index) {
            const MendingLever& lever = levers_[plan.settings[tunable[index]].first];
            tried.settings[tunable[index]].second =
                lever.lowest + parts[index] * (lever.highest - lever.lowest);
        }
        work_out(tried, aim);
        if (tried.cost < best.cost) {
            best = tried;
        }
        return tried.cost;
    };
    nlopt::opt search(nlopt::LN_SBPLX, static_cast<unsigned>(point.size()));
    search.set_lower_bounds(0.0);
    search.set_upper_bounds(1.0);
    search.set_initial_step(0.12);
    search.set_xtol_rel(1e-2);
    search.set_maxeval(static_cast<int>(evaluations));
    using Cost = decltype(cost);
    search.set_min_objective([](const std::vector<double>& parts, std::vector<double>& /*slopes*/,
                                void* function) { return (*static_cast<Cost*>(function))(parts); },
                             &cost);
    double lowest = 0.0;
    try {
        search.optimize(point, lowest);
    } catch (const nlopt::roundoff_limited&) {
        // As far as it came, the best is kept.
    }
    return best;
}

std::vector<MendingPlan> MendingSearch::with_one_more(const MendingPlan& plan, const Aim& aim,
                                                      const std::set<std::size_t>& excluded,
                                                      std::size_t most) const {
    std::vector<MendingPlan> plans;
    for (const std::size_t lever : by_promise_) {
        if (plans.size() == promising) {
            break;
        }
        if (!excluded.contains(lever) && fits(plan, lever, most)) {
            plans.push_back(best_with(plan, lever, aim));
        }
    }
    return plans;
}

MendingPlan MendingSearch::grown(MendingPlan plan, const Aim& usual_aim,
                                 const std::set<std::size_t>& excluded, std::size_t most) const {
    const auto by_cost = [](const MendingPlan& one, const MendingPlan& other) {
        return one.cost < other.cost;
    };
    Aim aim = usual_aim;
    while (plan.changes < most && plan.outcome.risk.median > aim.points) {
        std::vector<MendingPlan> plans = with_one_more(plan, aim, excluded, most);
        auto best = std::min_element(plans.begin(), plans.end(), by_cost);
        const bool worth_it = best != plans.end() && best->cost < plan.cost - least_gain;
        if (!worth_it) {
            aim.price = highest_price;
            put_price(plan, aim);
            std::for_each(plans.begin(), plans.end(), [&](MendingPlan& each) { put_price(each, aim); });
            best = std::min_element(plans.begin(), plans.end(), by_cost);
        }
        if (best == plans.end() || best->cost >= plan.cost - least_gain) {
            break;
        }
        plan = tuned(*best, aim, 10 + 8 * best->settings.size());
    }
    put_price(plan, usual_aim);
    return plan;
}

/// Without the levers that the others have made needless.
MendingPlan MendingSearch::pruned(MendingPlan plan, const Aim& aim) const {
    for (std::size_t index = 0; plan.settings.size() > 1 && index < plan.settings.size();) {
        MendingPlan fewer = plan;
        fewer.settings.erase(fewer.settings.begin() + static_cast<std::ptrdiff_t>(index));
        work_out(fewer, aim);
        if (fewer.outcome.risk.median > aim.points && fewer.cost < plan.cost + aim.price) {
            fewer = tuned(fewer, aim, 10 + 8 * fewer.settings.size());
        }
        const bool as_good = fewer.outcome.risk.median <= std::max(aim.points, plan.outcome.risk.median);
        if (as_good && fewer.cost <= plan.cost) {
            plan = fewer;
            index = 0;
        } else {
            ++index;
        }
    }
    return plan;
}

/// With each setting nearer to where it is now, where that costs less: a local search stays on its side of a
/// hill, and an amount of nothing is at the foot of one.
MendingPlan MendingSearch::eased(MendingPlan plan, const Aim& aim) const {
    for (std::size_t index = 0; index < plan.settings.size(); ++index) {
        const auto [lever, setting] = plan.settings[index];
        for (const double way_back : {0.2, 0.4, 0.6, 0.8}) {
            if (!levers_[lever].tunable) {
                break;
            }
            MendingPlan nearer = plan;
            nearer.settings[index].second = setting + way_back * (levers_[lever].now - setting);
            work_out(nearer, aim);
            if (nearer.cost < plan.cost) {
                plan = nearer;
            }
        }
    }
    return plan;
}

MendingPlan MendingSearch::plan_for(double aim, const std::set<std::size_t>& excluded, std::size_t most) {
    look_at_all(aim);
    const Aim usual{aim, usual_price};
    MendingPlan none;
    work_out(none, usual);
    MendingPlan plan = grown(none, usual, excluded, most);
    return plan.outcome.risk.median > aim ? plan : eased(pruned(std::move(plan), usual), usual);
}

MendingPlan MendingSearch::relaxed(const MendingPlan& plan, double aim) const {
    const Aim usual{aim, usual_price};
    MendingPlan again = plan;
    put_price(again, usual);
    return eased(pruned(again, usual), usual);
}

MendingPlan MendingSearch::tightened(const MendingPlan& plan, double aim,
                                     const std::set<std::size_t>& excluded, std::size_t most) {
    look_at_all(aim);
    const Aim usual{aim, usual_price};
    MendingPlan again = plan;
    work_out(again, usual);
    return grown(tuned(again, usual, 10 + 8 * again.settings.size()), usual, excluded, most);
}

MendingPlan MendingSearch::rounded(const MendingPlan& plan, bool with_rests) const {
    MendingPlan result = plan;
    result.settings.clear();
    result.changes = 0;
    result.disruption = 0.0;
    for (const auto& [index, setting] : plan.settings) {
        const MendingLever& lever = levers_[index];
        const bool rest = !with_rests && setting < lever.rather_none_below;
        const double to = rest ? lever.lowest : lever.rounded(setting);
        if (!lever.tunable || to != lever.rounded(lever.now)) {
            result.settings.emplace_back(index, to);
            result.changes += lever.counts_as;
            result.disruption += lever.disruption(to);
        }
    }
    return result;
}

}  // namespace entrywise
