#include "judging/impression.hpp"

#include <algorithm>

#include "quantity/printed_precision.hpp"

namespace entrywise {

namespace {

template <class Value>
std::span<const Value> first_of(const Estimate<Value>& estimate, std::size_t draws) {
    return std::span<const Value>(estimate.draws()).first(std::min(draws, estimate.count()));
}

template <class Value>
Span<Value> reach_of(std::span<const Value> draws) {
    Span<Value> reach{draws.front(), draws.front()};
    for (const Value& draw : draws) {
        reach.low = std::min(reach.low, draw);
        reach.high = std::max(reach.high, draw);
    }
    return reach;
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

double share_told(std::span<const double> levels) {
    const auto told = std::count_if(levels.begin(), levels.end(),
                                    [](double level) { return level >= Impression::told_from; });
    return static_cast<double>(told) / static_cast<double>(levels.size());
}

}  // namespace

Impression::Impression(const Beer& beer, const Profile& profile)
    : Impression(beer, profile, beer.alcohol.count()) {}

Impression::Impression(const Beer& beer, const Profile& profile, std::size_t first_draws)
    : beer_(beer),
      profile_(profile),
      draws_(std::min(first_draws, beer.alcohol.count())),
      is_roasty_(profile.level[Attribute::flavor_roast].median() >
                 profile.level[Attribute::flavor_caramel].median()),
      original_gravity_(printed(first_of(beer.original_gravity.total, draws_))),
      final_gravity_(printed(first_of(beer.final_gravity, draws_))),
      alcohol_(printed(first_of(beer.alcohol, draws_))),
      bitterness_(printed(first_of(beer.tasted_bitterness, draws_))),
      reach_of_bitterness_(reach_of(first_of(beer.tasted_bitterness, draws_))),
      reach_of_alcohol_(reach_of(first_of(beer.alcohol, draws_))) {
    for (const Attribute attribute : all_attributes()) {
        reach_[attribute] = reach_of(level(attribute));
        const bool is_all_told = reach_[attribute].low >= told_from;
        const bool is_never_told = reach_[attribute].high < told_from;
        told_[attribute] = is_all_told ? 1.0 : is_never_told ? 0.0 : share_told(level(attribute));
    }
    for (const Attribute attribute : profile.untold) {
        is_untold_[attribute] = true;
    }
}

std::span<const double> Impression::level(Attribute attribute) const {
    return first_of(profile_.level[attribute], draws_);
}

}  // namespace entrywise
