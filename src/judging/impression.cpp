#include "judging/impression.hpp"

#include <algorithm>

#include "base/reach.hpp"
#include "quantity/printed_precision.hpp"

namespace entrywise {

namespace {

template <class Value>
std::span<const Value> first_of(const Estimate<Value>& estimate, std::size_t draws) {
    return std::span<const Value>(estimate.draws()).first(std::min(draws, estimate.count()));
}

template <class Value>
Span<Value> span_of(std::span<const Value> draws) {
    const auto [low, high] = reach_of(draws);
    return {low, high};
}

template <class Quantity>
std::vector<Quantity> printed(std::span<const Quantity> draws) {
    std::vector<Quantity> values;
    values.reserve(draws.size());
    for (const Quantity& draw : draws) {
        values.push_back(at_printed_precision(draw));
    }
    return values;
}

template <class Quantity>
std::vector<Quantity> beginning_of(const std::vector<Quantity>& values, std::size_t count) {
    return {values.begin(), values.begin() + static_cast<std::ptrdiff_t>(count)};
}

double share_told(std::span<const double> levels) {
    const auto told = std::count_if(levels.begin(), levels.end(),
                                    [](double level) { return level >= Impression::told_from; });
    return static_cast<double>(told) / static_cast<double>(levels.size());
}

}  // namespace

Impression::Impression(const Beer& beer, const Profile& profile)
    : beer_(beer),
      profile_(profile),
      draws_(beer.alcohol.count()),
      is_roasty_(profile.level[Attribute::flavor_roast].median() >
                 profile.level[Attribute::flavor_caramel].median()),
      original_gravity_(printed(first_of(beer.original_gravity.total, draws_))),
      final_gravity_(printed(first_of(beer.final_gravity, draws_))),
      alcohol_(printed(first_of(beer.alcohol, draws_))),
      bitterness_(printed(first_of(beer.tasted_bitterness, draws_))) {
    find_reach();
    for (const Attribute attribute : all_attributes()) {
        const bool is_always_told = reach_[attribute].low >= told_from;
        const bool is_never_told = reach_[attribute].high < told_from;
        told_[attribute] = is_always_told ? 1.0 : is_never_told ? 0.0 : share_told(level(attribute));
    }
    for (const Attribute attribute : profile.untold) {
        is_untold_[attribute] = true;
    }
}

Impression::Impression(const Impression& all_draws, std::size_t first_draws)
    : beer_(all_draws.beer_),
      profile_(all_draws.profile_),
      draws_(std::min(first_draws, all_draws.draws_)),
      is_untold_(all_draws.is_untold_),
      told_(all_draws.told_),
      is_roasty_(all_draws.is_roasty_),
      original_gravity_(beginning_of(all_draws.original_gravity_, draws_)),
      final_gravity_(beginning_of(all_draws.final_gravity_, draws_)),
      alcohol_(beginning_of(all_draws.alcohol_, draws_)),
      bitterness_(beginning_of(all_draws.bitterness_, draws_)) {
    find_reach();
}

void Impression::find_reach() {
    for (const Attribute attribute : all_attributes()) {
        reach_[attribute] = span_of(level(attribute));
    }
    reach_of_bitterness_ = span_of(first_of(beer_.tasted_bitterness, draws_));
    reach_of_alcohol_ = span_of(first_of(beer_.alcohol, draws_));
}

std::span<const double> Impression::level(Attribute attribute) const {
    return first_of(profile_.level[attribute], draws_);
}

}  // namespace entrywise
