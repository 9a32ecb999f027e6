#include "style/perception.hpp"

#include <array>

namespace entrywise {

namespace {

template <auto map, auto member>
double& constant(Perception& perception) {
    return perception.*map.*member;
}

template <auto member>
double& constant_of_body_curve(Perception& perception) {
    return perception.body.curve.*member;
}

constexpr std::array bitterness_attributes{Attribute::flavor_bitterness};
constexpr std::array<MapConstant, 4> bitterness_constants{{
    {"by_amount", constant<&Perception::bitterness, &BitternessMap::by_amount>},
    {"by_ratio", constant<&Perception::bitterness, &BitternessMap::by_ratio>},
    {"masked_by_sour", constant<&Perception::bitterness, &BitternessMap::masked_by_sour>},
    {"masked_by_roast", constant<&Perception::bitterness, &BitternessMap::masked_by_roast>},
}};

constexpr std::array balance_attributes{Attribute::flavor_balance};
constexpr std::array<MapConstant, 4> balance_constants{{
    {"at_even", constant<&Perception::balance, &BalanceMap::at_even>},
    {"by_doubling", constant<&Perception::balance, &BalanceMap::by_doubling>},
    {"by_attenuation", constant<&Perception::balance, &BalanceMap::by_attenuation>},
    {"by_carbonation", constant<&Perception::balance, &BalanceMap::by_carbonation>},
}};

constexpr std::array finish_attributes{Attribute::flavor_finish};
constexpr std::array<MapConstant, 6> finish_constants{{
    {"of_usual_beer", constant<&Perception::finish, &FinishMap::of_usual_beer>},
    {"by_extract", constant<&Perception::finish, &FinishMap::by_extract>},
    {"by_alcohol", constant<&Perception::finish, &FinishMap::by_alcohol>},
    {"by_ten_ibu", constant<&Perception::finish, &FinishMap::by_ten_ibu>},
    {"by_carbonation", constant<&Perception::finish, &FinishMap::by_carbonation>},
    {"by_sour", constant<&Perception::finish, &FinishMap::by_sour>},
}};

constexpr std::array sweetness_attributes{Attribute::flavor_sweetness};
constexpr std::array<MapConstant, 2> sweetness_constants{{
    {"at_medium_finish", constant<&Perception::sweetness, &SweetnessMap::at_medium_finish>},
    {"by_finish", constant<&Perception::sweetness, &SweetnessMap::by_finish>},
}};

constexpr std::array malt_attributes{Attribute::flavor_malt, Attribute::aroma_malt};
constexpr std::array<MapConstant, 5> malt_constants{{
    {"of_usual_beer", constant<&Perception::malt, &MaltMap::of_usual_beer>},
    {"by_extract", constant<&Perception::malt, &MaltMap::by_extract>},
    {"masked_by_ratio", constant<&Perception::malt, &MaltMap::masked_by_ratio>},
    {"by_richness", constant<&Perception::malt, &MaltMap::by_richness>},
    {"masked_by_sour", constant<&Perception::malt, &MaltMap::masked_by_sour>},
}};

constexpr std::array caramel_attributes{Attribute::flavor_caramel, Attribute::aroma_caramel};
constexpr std::array<MapConstant, 2> caramel_constants{{
    {"half_at", constant<&Perception::caramel, &SaturationCurve::half_at>},
    {"steepness", constant<&Perception::caramel, &SaturationCurve::steepness>},
}};

constexpr std::array roast_attributes{Attribute::flavor_roast, Attribute::aroma_roast};
constexpr std::array<MapConstant, 2> roast_constants{{
    {"half_at", constant<&Perception::roast, &SaturationCurve::half_at>},
    {"steepness", constant<&Perception::roast, &SaturationCurve::steepness>},
}};

constexpr std::array alcohol_flavor_attributes{Attribute::flavor_alcohol};
constexpr std::array<MapConstant, 2> alcohol_flavor_constants{{
    {"unnoticed", constant<&Perception::alcohol_flavor, &AlcoholMap::unnoticed>},
    {"by_percent", constant<&Perception::alcohol_flavor, &AlcoholMap::by_percent>},
}};

constexpr std::array alcohol_aroma_attributes{Attribute::aroma_alcohol};
constexpr std::array<MapConstant, 2> alcohol_aroma_constants{{
    {"unnoticed", constant<&Perception::alcohol_aroma, &AlcoholMap::unnoticed>},
    {"by_percent", constant<&Perception::alcohol_aroma, &AlcoholMap::by_percent>},
}};

constexpr std::array warmth_attributes{Attribute::mouthfeel_warmth};
constexpr std::array<MapConstant, 2> warmth_constants{{
    {"unnoticed", constant<&Perception::warmth, &AlcoholMap::unnoticed>},
    {"by_percent", constant<&Perception::warmth, &AlcoholMap::by_percent>},
}};

constexpr std::array body_attributes{Attribute::mouthfeel_body};
constexpr std::array<MapConstant, 5> body_constants{{
    {"half_at", constant_of_body_curve<&SaturationCurve::half_at>},
    {"steepness", constant_of_body_curve<&SaturationCurve::steepness>},
    {"by_richness", constant<&Perception::body, &BodyMap::by_richness>},
    {"easing_by_alcohol", constant<&Perception::body, &BodyMap::easing_by_alcohol>},
    {"thinning_by_carbonation", constant<&Perception::body, &BodyMap::thinning_by_carbonation>},
}};

constexpr std::array<FittedMap, 11> maps{{
    {"bitterness", bitterness_attributes, bitterness_constants},
    {"balance", balance_attributes, balance_constants},
    {"finish", finish_attributes, finish_constants},
    {"sweetness", sweetness_attributes, sweetness_constants},
    {"malt", malt_attributes, malt_constants},
    {"caramel", caramel_attributes, caramel_constants},
    {"roast", roast_attributes, roast_constants},
    {"alcohol_flavor", alcohol_flavor_attributes, alcohol_flavor_constants},
    {"alcohol_aroma", alcohol_aroma_attributes, alcohol_aroma_constants},
    {"warmth", warmth_attributes, warmth_constants},
    {"body", body_attributes, body_constants},
}};

}  // namespace

std::span<const FittedMap> fitted_maps() {
    return maps;
}

}  // namespace entrywise
