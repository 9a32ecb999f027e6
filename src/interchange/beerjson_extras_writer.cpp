#include "interchange/beerjson_extras_writer.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace entrywise {

namespace {

std::string_view type_of(ExtraKind kind) {
    switch (kind) {
        case ExtraKind::spice:
            return "spice";
        case ExtraKind::tea:
            return "herb";
        case ExtraKind::wood:
            return "wood";
        case ExtraKind::fining:
            return "fining";
        case ExtraKind::acid:
        case ExtraKind::salt:
            return "water agent";
        case ExtraKind::fruit:
        case ExtraKind::coffee:
        case ExtraKind::cocoa:
        case ExtraKind::nut:
            return "flavor";
        case ExtraKind::other:
            return "other";
    }
    return "other";
}

}  // namespace

BeerJson beerjson_extra(const ExtraAddition& extra, KettleSteps& steps) {
    BeerJson json;
    json["name"] = extra.name;
    json["type"] = std::string(type_of(extra.kind));
    json["amount"] = extra.mass     ? beerjson_amount(*extra.mass, exchange_mass_units())
                     : extra.volume ? beerjson_amount(*extra.volume, exchange_volume_units())
                                    : beerjson_amount(1.0, "each");
    BeerJson timing;
    if (extra.time) {
        timing["duration"] = whole_time(*extra.time);
    }
    timing["use"] = extra.use == ExtraUse::mash        ? "add_to_mash"
                    : extra.use == ExtraUse::fermenter ? "add_to_fermentation"
                                                       : "add_to_boil";
    if (extra.use == ExtraUse::whirlpool) {
        timing["step"] = steps.whirlpool(std::nullopt, extra.time);
    }
    json["timing"] = timing;
    return json;
}

}  // namespace entrywise
