#include "brewing/blend.hpp"

#include <algorithm>
#include <cmath>

#include "quantity/plato.hpp"

namespace entrywise {

namespace {

/// The part that each of the two has in the whole.
struct BlendParts {
    double first = 1.0;
    double second = 0.0;
};

template <class Value>
Estimate<Value> mixed(const Estimate<Value>& first, const Estimate<Value>& second, BlendParts parts) {
    return lift([parts](Value one, Value other) -> Value { return parts.first * one + parts.second * other; },
                first, second);
}

/// Levels follow the logarithm of an amount; none of it is level zero.
double amount_of(double level) {
    return std::exp2(level) - 1.0;
}

Estimate<double> mixed_levels(const Estimate<double>& first, const Estimate<double>& second,
                              BlendParts parts) {
    return lift(
        [parts](double one, double other) {
            return std::log2(1.0 + parts.first * amount_of(one) + parts.second * amount_of(other));
        },
        first, second);
}

/// Each source's share of the blend: its share of its own beer by what that beer brings.
template <class Value>
std::vector<SourceShare> mixed_sources(const Traced<Value>& first, const Traced<Value>& second,
                                       BlendParts parts) {
    const double brought_by_first = parts.first * first.total.median().value();
    const double brought_by_second = parts.second * second.total.median().value();
    const double all = brought_by_first + brought_by_second;
    std::vector<SourceShare> sources;
    if (all <= 0.0) {
        return sources;
    }
    for (SourceShare source : first.sources) {
        source.share *= brought_by_first / all;
        sources.push_back(source);
    }
    for (SourceShare source : second.sources) {
        source.share *= brought_by_second / all;
        source.position = in_second_beer(source.position);
        sources.push_back(source);
    }
    std::stable_sort(sources.begin(), sources.end(), [](const SourceShare& one, const SourceShare& other) {
        return one.share > other.share;
    });
    return sources;
}

template <class Value>
Traced<Value> mixed(const Traced<Value>& first, const Traced<Value>& second, BlendParts parts) {
    return {mixed(first.total, second.total, parts), mixed_sources(first, second, parts)};
}

Drivers mixed(const Drivers& first, const Drivers& second, BlendParts parts) {
    Drivers drivers = first;
    for (const auto driver :
         {&Drivers::malt, &Drivers::toast, &Drivers::caramel, &Drivers::roast, &Drivers::smoke,
          &Drivers::acid, &Drivers::grain_body, &Drivers::grain_head, &Drivers::grain_haze,
          &Drivers::dms_precursor, &Drivers::lactose, &Drivers::hop_aroma, &Drivers::hop_flavor,
          &Drivers::dry_hops, &Drivers::spice, &Drivers::salt}) {
        drivers.*driver = mixed(first.*driver, second.*driver, parts);
    }
    for (const auto level : {&Drivers::ester, &Drivers::phenol, &Drivers::diacetyl, &Drivers::sulfur,
                             &Drivers::sour, &Drivers::funk, &Drivers::fusel}) {
        drivers.*level = mixed_levels(first.*level, second.*level, parts);
    }
    drivers.dms = mixed(first.dms, second.dms, parts);
    drivers.adjunct_share = parts.first * first.adjunct_share + parts.second * second.adjunct_share;
    drivers.wheat_like_share = parts.first * first.wheat_like_share + parts.second * second.wheat_like_share;
    drivers.fruit_or_wood = first.fruit_or_wood || second.fruit_or_wood;
    return drivers;
}

/// Gravities stand one above water, which the parts keep as they add up to one.
Traced<SpecificGravity> mixed_gravity(const Traced<SpecificGravity>& first,
                                      const Traced<SpecificGravity>& second, BlendParts parts) {
    const auto above_water = [](const Traced<SpecificGravity>& gravity) {
        return Traced<SpecificGravity>{
            lift([](SpecificGravity value) -> SpecificGravity { return value - 1.0 * specific_gravity; },
                 gravity.total),
            gravity.sources};
    };
    return {mixed(first.total, second.total, parts),
            mixed_sources(above_water(first), above_water(second), parts)};
}

/// What follows from the gravities of the blend.
void derive_extracts(Beer& beer, const Beer& first, const Beer& second, BlendParts parts) {
    beer.original_extract = lift(extract_of, beer.original_gravity.total);
    beer.apparent_extract = lift(extract_of, beer.final_gravity);
    beer.real_extract = mixed(first.real_extract, second.real_extract, parts);
    beer.apparent_attenuation = lift(
        [](Extract original, Extract apparent) {
            const double left = original > 0.0 * plato ? in(apparent, original) : 0.0;
            return (1.0 - left) * fully_attenuated;
        },
        beer.original_extract, beer.apparent_extract);
}

template <class Value>
Estimate<Value> all_at(Value value, std::size_t draws) {
    return Estimate<Value>(std::vector<Value>(draws, value));
}

template <class Value>
Traced<Value> traced_at(Value value, std::size_t draws) {
    return {all_at(value, draws), {}};
}

/// Water as a beer of nothing.
Beer water(std::size_t draws) {
    Beer beer;
    beer.original_gravity = traced_at(1.0 * specific_gravity, draws);
    beer.final_gravity = all_at(1.0 * specific_gravity, draws);
    beer.real_extract = all_at(0.0 * plato, draws);
    beer.alcohol = all_at(0.0 * percent_by_volume, draws);
    beer.bitterness = traced_at(0.0 * ibu, draws);
    beer.tasted_bitterness = all_at(0.0 * ibu, draws);
    beer.color = traced_at(0.0 * srm, draws);
    Drivers& drivers = beer.drivers;
    for (const auto driver :
         {&Drivers::malt, &Drivers::toast, &Drivers::caramel, &Drivers::roast, &Drivers::smoke,
          &Drivers::acid, &Drivers::grain_body, &Drivers::grain_head, &Drivers::grain_haze,
          &Drivers::dms_precursor, &Drivers::lactose, &Drivers::hop_aroma, &Drivers::hop_flavor,
          &Drivers::dry_hops, &Drivers::spice, &Drivers::salt}) {
        drivers.*driver = traced_at(Concentration(), draws);
    }
    for (const auto level : {&Drivers::ester, &Drivers::phenol, &Drivers::diacetyl, &Drivers::sulfur,
                             &Drivers::sour, &Drivers::funk, &Drivers::fusel, &Drivers::dms}) {
        drivers.*level = all_at(0.0, draws);
    }
    return beer;
}

}  // namespace

Position in_second_beer(Position position) {
    return {position.line + second_beer_lines, position.column};
}

Beer blended(const Beer& first, const Beer& second, Share of_second) {
    const BlendParts parts{1.0 - in(of_second, whole), in(of_second, whole)};
    Beer beer = first;
    beer.original_gravity = mixed_gravity(first.original_gravity, second.original_gravity, parts);
    beer.final_gravity = mixed(first.final_gravity, second.final_gravity, parts);
    beer.alcohol = mixed(first.alcohol, second.alcohol, parts);
    beer.bitterness = mixed(first.bitterness, second.bitterness, parts);
    beer.tasted_bitterness = mixed(first.tasted_bitterness, second.tasted_bitterness, parts);
    beer.color = mixed(first.color, second.color, parts);
    derive_extracts(beer, first, second, parts);
    for (const auto formula :
         {&OtherBitterness::tinseth, &OtherBitterness::rager, &OtherBitterness::garetz}) {
        beer.other_bitterness.*formula =
            parts.first * first.other_bitterness.*formula + parts.second * second.other_bitterness.*formula;
    }
    beer.drivers = mixed(first.drivers, second.drivers, parts);
    return beer;
}

Beer diluted(const Beer& beer, Share of_water) {
    Beer result = blended(beer, water(beer.alcohol.count()), of_water);
    result.drivers.adjunct_share = beer.drivers.adjunct_share;
    result.drivers.wheat_like_share = beer.drivers.wheat_like_share;
    return result;
}

}  // namespace entrywise
