#include "judging/guide_habit.hpp"

#include <algorithm>
#include <optional>

#include "brewing/balling.hpp"
#include "quantity/plato.hpp"
#include "sensing/bitterness.hpp"
#include "sensing/palate.hpp"

namespace entrywise {

namespace {

/// The beer in the middle of a style's ranges.
struct MiddleBeer {
    SpecificGravity original_gravity;
    Extract real_extract;
    Attenuation attenuation;
    AlcoholByVolume alcohol;
    Bitterness bitterness;
    Carbonation carbonation;
};

template <class Quantity>
std::optional<Quantity> middle(const std::optional<Range<Quantity>>& range) {
    const bool closed = range && range->low && range->high;
    return closed ? std::optional(0.5 * (*range->low + *range->high)) : std::nullopt;
}

Carbonation customary_carbonation(const Style& style) {
    constexpr Carbonation usual = 2.5 * volume_of_co2;
    return style.custom.carbonation ? 0.5 * (style.custom.carbonation->low + style.custom.carbonation->high)
                                    : usual;
}

std::optional<MiddleBeer> middle_beer(const Style& style) {
    const auto original_gravity = middle(style.ranges.original_gravity);
    const auto final_gravity = middle(style.ranges.final_gravity);
    const auto alcohol = middle(style.ranges.alcohol);
    const auto bitterness = middle(style.ranges.bitterness);
    if (!original_gravity || !final_gravity || !alcohol || !bitterness) {
        return std::nullopt;
    }
    const Extract original = extract_of(*original_gravity);
    const Extract apparent = extract_of(*final_gravity);
    return MiddleBeer{.original_gravity = *original_gravity,
                      .real_extract = real_extract(original, apparent),
                      .attenuation = apparent_attenuation(original, apparent),
                      .alcohol = *alcohol,
                      .bitterness = *bitterness,
                      .carbonation = customary_carbonation(style)};
}

double sweetness_of(const MiddleBeer& beer) {
    const Concentration nothing;
    return sweetness_index(beer.real_extract, beer.alcohol, nothing, nothing, beer.bitterness,
                           beer.carbonation, 0.0);
}

/// The level that the numbers give, for the attributes that numbers alone decide.
std::optional<double> level_of(Attribute attribute, const MiddleBeer& beer) {
    const Concentration nothing;
    switch (attribute) {
        case Attribute::flavor_bitterness:
            return bitterness_level(beer.bitterness, beer.alcohol, beer.real_extract, nothing);
        case Attribute::flavor_balance:
            return balance_level(beer.bitterness, beer.original_gravity, beer.attenuation);
        case Attribute::flavor_finish:
            return finish_level(sweetness_of(beer));
        case Attribute::flavor_sweetness:
            return sweetness_level(sweetness_of(beer));
        case Attribute::mouthfeel_body:
            return body_level(beer.real_extract, beer.alcohol, nothing, beer.carbonation, false);
        case Attribute::mouthfeel_carbonation:
            return carbonation_level(beer.carbonation);
        case Attribute::mouthfeel_warmth:
            return warmth_level(beer.alcohol, beer.real_extract);
        case Attribute::aroma_alcohol:
        case Attribute::flavor_alcohol:
            return alcohol_level(beer.alcohol);
        default:
            return std::nullopt;
    }
}

}  // namespace

double guide_habit(Attribute attribute, const Style& style) {
    const auto& expectation = style.expected[attribute];
    const auto beer = middle_beer(style);
    const auto level = beer ? level_of(attribute, *beer) : std::nullopt;
    if (!expectation || !level) {
        return 0.0;
    }
    return *level - std::clamp(*level, expectation->low, expectation->high);
}

}  // namespace entrywise
