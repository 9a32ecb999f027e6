#include "report/beer_numbers.hpp"

#include "base/number.hpp"
#include "quantity/printed_precision.hpp"

namespace entrywise {

namespace {

template <class Quantity>
Interval80<double> plain(const Estimate<Quantity>& estimate, Quantity unit) {
    const auto interval = estimate.interval();
    return {in(interval.median, unit), in(interval.low, unit), in(interval.high, unit)};
}

template <class Quantity>
std::optional<PlainRange> plain(const std::optional<Range<Quantity>>& range) {
    if (!range) {
        return std::nullopt;
    }
    PlainRange result{.low = {}, .high = {}, .below_high = range->below_high};
    if (range->low) {
        result.low = range->low->value();
    }
    if (range->high) {
        result.high = range->high->value();
    }
    return result;
}

template <class Quantity>
std::vector<double> plain_draws(const Estimate<Quantity>& estimate) {
    std::vector<double> draws;
    draws.reserve(estimate.count());
    for (const Quantity& draw : estimate.draws()) {
        draws.push_back(draw.value());
    }
    return draws;
}

}  // namespace

std::vector<BeerNumber> numbers_of(const Beer& beer) {
    constexpr Attenuation one_percent = 0.01 * fully_attenuated;
    std::vector<BeerNumber> numbers;
    for (const Number number : guide_numbers()) {
        numbers.push_back(number_of(beer, number));
    }
    numbers.push_back(
        {"carbonation", "carbonation", "vol", carbonation_decimals, plain(beer.carbonation, volume_of_co2)});
    numbers.push_back(
        {"real_extract", "real extract", "°P", extract_decimals, plain(beer.real_extract, plato)});
    numbers.push_back({"apparent_attenuation", "apparent attenuation", "%", attenuation_percent_decimals,
                       plain(beer.apparent_attenuation, one_percent)});
    return numbers;
}

BeerNumber number_of(const Beer& beer, Number number) {
    switch (number) {
        case Number::final_gravity:
            return {"final_gravity", "final gravity", "SG", specific_gravity_decimals,
                    plain(beer.final_gravity, specific_gravity)};
        case Number::alcohol:
            return {"alcohol", "alcohol", "% vol", alcohol_decimals, plain(beer.alcohol, percent_by_volume)};
        case Number::bitterness:
            return {"bitterness", "bitterness", "IBU", bitterness_decimals,
                    plain(beer.bitterness.total, ibu)};
        case Number::color:
            return {"color", "color", "SRM", color_decimals, plain(beer.color.total, srm)};
        case Number::original_gravity:
            break;
    }
    return {"original_gravity", "original gravity", "SG", specific_gravity_decimals,
            plain(beer.original_gravity.total, specific_gravity)};
}

std::vector<double> draws_of(const Beer& beer, Number number) {
    switch (number) {
        case Number::original_gravity:
            return plain_draws(beer.original_gravity.total);
        case Number::final_gravity:
            return plain_draws(beer.final_gravity);
        case Number::alcohol:
            return plain_draws(beer.alcohol);
        case Number::bitterness:
            return plain_draws(beer.bitterness.total);
        case Number::color:
            return plain_draws(beer.color.total);
    }
    return {};
}

std::optional<PlainRange> range_of(const StyleRanges& ranges, Number number) {
    switch (number) {
        case Number::original_gravity:
            return plain(ranges.original_gravity);
        case Number::final_gravity:
            return plain(ranges.final_gravity);
        case Number::alcohol:
            return plain(ranges.alcohol);
        case Number::bitterness:
            return plain(ranges.bitterness);
        case Number::color:
            return plain(ranges.color);
    }
    return std::nullopt;
}

std::string_view side_of(const BeerNumber& number, const PlainRange& range) {
    const double median = rounded(number.value.median, number.decimals);
    if (range.low && median < *range.low) {
        return "below";
    }
    if (range.high && (median > *range.high || (median == *range.high && range.below_high))) {
        return "above";
    }
    return {};
}

const std::vector<Number>& guide_numbers() {
    static const std::vector<Number> numbers{Number::original_gravity, Number::final_gravity, Number::alcohol,
                                             Number::bitterness, Number::color};
    return numbers;
}

}  // namespace entrywise
