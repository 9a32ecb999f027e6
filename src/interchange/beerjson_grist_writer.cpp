#include "interchange/beerjson_grist_writer.hpp"

#include <array>
#include <string>
#include <string_view>

#include "base/text.hpp"

namespace entrywise {

namespace {

std::string_view type_of(const Fermentable& fermentable) {
    const bool is_dry = lowered(fermentable.name).find("dry") != std::string::npos;
    switch (fermentable.kind) {
        case FermentableKind::sugar:
            return "sugar";
        case FermentableKind::fruit:
            return "fruit";
        case FermentableKind::malt_extract:
            return is_dry ? "dry extract" : "extract";
        case FermentableKind::base:
        case FermentableKind::toasted:
        case FermentableKind::crystal:
        case FermentableKind::roasted:
        case FermentableKind::adjunct:
            return "grain";
    }
    return "other";
}

/// The groups of the standard that a kind is surely in.
std::string_view group_of(FermentableKind kind) {
    switch (kind) {
        case FermentableKind::base:
            return "base";
        case FermentableKind::crystal:
            return "caramel";
        case FermentableKind::roasted:
            return "roasted";
        case FermentableKind::toasted:
            return "specialty";
        case FermentableKind::adjunct:
            return "adjunct";
        default:
            return {};
    }
}

}  // namespace

BeerJson beerjson_fermentable(const GristAddition& addition) {
    const Fermentable& fermentable = addition.fermentable;
    BeerJson json;
    json["name"] = fermentable.name;
    json["type"] = std::string(type_of(fermentable));
    if (const std::string_view group = group_of(fermentable.kind); !group.empty()) {
        json["grain_group"] = std::string(group);
    }
    json["yield"]["fine_grind"] = beerjson_amount(fermentable.extract.middle, exchange_share_units());
    json["color"] = beerjson_amount(fermentable.color.middle, exchange_color_units(), "EBC");
    json["amount"] = beerjson_amount(addition.mass, exchange_mass_units());
    constexpr std::array<std::string_view, 3> uses{"add_to_mash", "add_to_boil", "add_to_fermentation"};
    json["timing"]["use"] = std::string(uses.at(static_cast<std::size_t>(addition.use)));
    return json;
}

}  // namespace entrywise
