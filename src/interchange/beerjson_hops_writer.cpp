#include "interchange/beerjson_hops_writer.hpp"

namespace entrywise {

namespace {

BeerJson hop_timing(const HopAddition& addition, KettleSteps& steps) {
    BeerJson timing;
    if (addition.time) {
        timing["duration"] = whole_time(*addition.time);
    }
    switch (addition.use) {
        case HopUse::mash:
            timing["use"] = "add_to_mash";
            break;
        case HopUse::first_wort:
            timing["use"] = "add_to_boil";
            timing["step"] = steps.first_wort();
            break;
        case HopUse::boil:
            timing["use"] = "add_to_boil";
            break;
        case HopUse::whirlpool:
            timing["use"] = "add_to_boil";
            timing["step"] = steps.whirlpool(addition.temperature, addition.time);
            break;
        case HopUse::dry_hop:
            timing["use"] = "add_to_fermentation";
            break;
    }
    return timing;
}

}  // namespace

BeerJson beerjson_hop(const HopAddition& addition, KettleSteps& steps) {
    BeerJson json;
    json["name"] = addition.hop.name;
    json["form"] = addition.form == HopForm::pellet  ? "pellet"
                   : addition.form == HopForm::whole ? "leaf"
                                                     : "extract";
    json["alpha_acid"] = beerjson_amount(addition.hop.alpha.middle, exchange_share_units());
    json["beta_acid"] = beerjson_amount(addition.hop.beta.middle, exchange_share_units());
    json["amount"] = beerjson_amount(addition.mass, exchange_mass_units());
    json["timing"] = hop_timing(addition, steps);
    return json;
}

}  // namespace entrywise
