#include "sensing/middle_of_style.hpp"

#include <algorithm>
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "brewing/balling.hpp"
#include "brewing/color.hpp"
#include "quantity/plato.hpp"
#include "sensing/appearance.hpp"
#include "sensing/bitterness.hpp"
#include "sensing/customary_roast.hpp"
#include "sensing/customary_toast.hpp"
#include "sensing/grain.hpp"
#include "sensing/nose.hpp"
#include "sensing/palate.hpp"

namespace entrywise {

namespace {

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

bool names_any(const std::vector<std::string>& grist, std::initializer_list<std::string_view> words) {
    return std::any_of(grist.begin(), grist.end(), [&](const std::string& name) {
        return std::any_of(words.begin(), words.end(),
                           [&](std::string_view word) { return name.find(word) != std::string::npos; });
    });
}

// How the color of a style's middle is read as crystal malt. A gram of 120 EBC in a liter brings half a malt
// color unit (from its color); that kilned and crystal malts color up to about 24 units, that half of what is
// above pale is crystal malt where that is typical, and how kilned malts darken as they get richer, are
// working values.
constexpr double load_of_a_gram_of_crystal_malt = 0.5;
constexpr double highest_load = 24.0;
constexpr double load_of_pale_malt = 5.0;

Concentration caramel_in(const MiddleOfStyle& beer, const Custom& custom) {
    const double share = names_any(custom.grist_typical, {"crystal"})    ? 0.5
                         : names_any(custom.grist_possible, {"crystal"}) ? 0.2
                                                                         : 0.05;
    const double beyond =
        std::min(in(morey_load(beer.color), malt_color_unit), highest_load) - load_of_pale_malt;
    return share * std::max(beyond, 0.0) / load_of_a_gram_of_crystal_malt * gram_per_liter;
}

double richness_of(Color color) {
    constexpr double of_colorless_malt = 0.5;
    constexpr double by_srm = 0.1;
    constexpr double darkest_kilned = 15.0;
    return of_colorless_malt + by_srm * std::min(in(color, srm), darkest_kilned);
}

}  // namespace

std::optional<MiddleOfStyle> middle_of(const Style& style) {
    const auto original_gravity = middle(style.ranges.original_gravity);
    const auto final_gravity = middle(style.ranges.final_gravity);
    const auto alcohol = middle(style.ranges.alcohol);
    const auto bitterness = middle(style.ranges.bitterness);
    const auto color = middle(style.ranges.color);
    if (!original_gravity || !final_gravity || !alcohol || !bitterness || !color) {
        return std::nullopt;
    }
    MiddleOfStyle beer;
    const Extract apparent = extract_of(*final_gravity);
    beer.original_gravity = *original_gravity;
    beer.final_gravity = *final_gravity;
    beer.original_extract = extract_of(*original_gravity);
    beer.real_extract = real_extract(beer.original_extract, apparent);
    beer.attenuation = apparent_attenuation(beer.original_extract, apparent);
    beer.alcohol = *alcohol;
    beer.bitterness = *bitterness;
    beer.color = *color;
    beer.carbonation = customary_carbonation(style);
    beer.malt_richness = richness_of(*color);
    // Where such grain is typical, some 30 g of oats or as much as tastes as full; lactose some 20 g (common
    // practice). A mixed culture takes what grain adds.
    const bool is_mixed = style.fermentation == "mixed" || style.fermentation == "spontaneous";
    if (!is_mixed && names_any(style.custom.grist_typical, {"oats", "rye", "wheat", "flaked barley"})) {
        beer.grain_body = 30.0 * gram_per_liter;
    }
    if (names_any(style.custom.grist_typical, {"lactose"})) {
        beer.lactose = 20.0 * gram_per_liter;
    }
    // Wheat as above, and a fifth of the extract from what brings no protein where that is typical.
    if (names_any(style.custom.grist_typical, {"wheat"})) {
        beer.grain_head = 30.0 * gram_per_liter;
    }
    if (names_any(style.custom.grist_typical, {"sugar", "candi", "corn", "rice"})) {
        beer.adjunct_share = 0.2;
    }
    beer.roast = customary_roast(style.custom, beer.color);
    beer.caramel = caramel_in(beer, style.custom);
    beer.toast = customary_toast(style.custom, beer.original_extract);
    beer.yeast = customary_yeast(style.custom, beer.original_gravity);
    if (const auto& sour = style.expected[Attribute::flavor_sour]) {
        beer.sour = 0.5 * (sour->low + sour->high);
    }
    return beer;
}

ByAttribute<std::optional<double>> levels_at_middle(const MiddleOfStyle& beer, const Perception& perception) {
    const double roast = roast_level(perception.roast, beer.roast);
    const double caramel = caramel_level(perception.caramel, beer.caramel);
    const double toast = toast_level(beer.toast);
    const double malt = malt_level(perception.malt, beer.real_extract, beer.malt_richness,
                                   bitterness_ratio(beer.bitterness, beer.original_gravity), beer.sour);
    const double finish = finish_level(perception.finish, {.real_extract = beer.real_extract,
                                                           .alcohol = beer.alcohol,
                                                           .bitterness = beer.bitterness,
                                                           .carbonation = beer.carbonation,
                                                           .lactose = beer.lactose,
                                                           .sour = beer.sour});
    ByAttribute<std::optional<double>> levels;
    levels[Attribute::aroma_sour] = beer.sour * share_in_the_nose(Attribute::aroma_sour);
    levels[Attribute::flavor_bitterness] =
        bitterness_level(perception.bitterness, beer.bitterness, beer.original_gravity, beer.sour, roast);
    levels[Attribute::flavor_balance] = balance_level(
        perception.balance, beer.bitterness, beer.original_gravity, beer.attenuation, beer.carbonation);
    levels[Attribute::flavor_finish] = finish;
    levels[Attribute::flavor_sweetness] = sweetness_level(perception.sweetness, finish);
    levels[Attribute::flavor_malt] = malt;
    levels[Attribute::aroma_malt] = malt * share_in_the_nose(Attribute::aroma_malt);
    levels[Attribute::flavor_roast] = roast;
    levels[Attribute::aroma_roast] = roast * share_in_the_nose(Attribute::aroma_roast);
    levels[Attribute::flavor_toast] = toast;
    levels[Attribute::aroma_toast] = toast * share_in_the_nose(Attribute::aroma_toast);
    if (beer.yeast) {
        levels[Attribute::aroma_ester] = levels[Attribute::flavor_ester] = beer.yeast->ester;
        levels[Attribute::aroma_phenol] = levels[Attribute::flavor_phenol] = beer.yeast->phenol;
        levels[Attribute::aroma_diacetyl] = levels[Attribute::flavor_diacetyl] = beer.yeast->diacetyl;
        levels[Attribute::aroma_sulfur] = beer.yeast->sulfur;
    }
    levels[Attribute::flavor_caramel] = caramel;
    levels[Attribute::aroma_caramel] = caramel * share_in_the_nose(Attribute::aroma_caramel);
    levels[Attribute::flavor_alcohol] = alcohol_level(perception.alcohol_flavor, beer.alcohol);
    levels[Attribute::aroma_alcohol] = alcohol_level(perception.alcohol_aroma, beer.alcohol);
    levels[Attribute::mouthfeel_warmth] = alcohol_level(perception.warmth, beer.alcohol);
    const double body = body_level(perception.body, {.real_extract = beer.real_extract,
                                                     .alcohol = beer.alcohol,
                                                     .malt_richness = beer.malt_richness,
                                                     .grain_body = beer.grain_body,
                                                     .carbonation = beer.carbonation});
    levels[Attribute::mouthfeel_body] = body;
    levels[Attribute::mouthfeel_creaminess] =
        creaminess_level(body, beer.grain_body, beer.lactose, beer.carbonation, false);
    levels[Attribute::mouthfeel_carbonation] = carbonation_level(beer.carbonation);
    levels[Attribute::appearance_head_size] = head_size_level(beer.carbonation, beer.grain_head);
    levels[Attribute::appearance_head_retention] = head_retention_level(
        beer.grain_head, beer.bitterness, beer.alcohol, beer.adjunct_share, beer.carbonation, beer.sour);
    return levels;
}

}  // namespace entrywise
