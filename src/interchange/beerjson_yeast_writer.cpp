#include "interchange/beerjson_yeast_writer.hpp"

#include <string>
#include <string_view>

namespace entrywise {

namespace {

std::string_view type_of(const YeastClass& yeast) {
    if (yeast.kveik) {
        return "kveik";
    }
    if (yeast.brettanomyces) {
        return yeast.lactic ? "mixed-culture" : "brett";
    }
    if (yeast.lactic) {
        return "lacto";
    }
    return yeast.fermentation == Fermentation::bottom ? "lager"
           : yeast.fermentation == Fermentation::top  ? "ale"
                                                      : "mixed-culture";
}

}  // namespace

BeerJson beerjson_culture(const YeastAddition& addition) {
    BeerJson json;
    json["name"] = addition.yeast.name;
    json["type"] = std::string(type_of(addition.yeast));
    json["form"] = "culture";
    if (addition.attenuation_is_stated) {
        json["attenuation"] =
            beerjson_amount(100.0 * in(addition.yeast.attenuation.middle, fully_attenuated), "%");
    }
    json["amount"] = beerjson_amount(1.0, "each");
    return json;
}

}  // namespace entrywise
