#include "report/estimate_json.hpp"

#include <vector>

#include "report/beer_json.hpp"
#include "report/version.hpp"

namespace entrywise {

namespace {

Json sources_json(const std::vector<SourceShare>& sources) {
    constexpr int share_decimals = 3;
    Json result = Json::array();
    for (const SourceShare& source : sources) {
        Json entry;
        entry["ingredient"] = source.ingredient;
        entry["line"] = source.position.line;
        entry["share"] = json_number(source.share, share_decimals);
        result.push_back(std::move(entry));
    }
    return result;
}

Json other_bitterness_json(const OtherBitterness& other) {
    constexpr int ibu_decimals = 1;
    Json result;
    result["tinseth"] = json_number(in(other.tinseth, ibu), ibu_decimals);
    result["rager"] = json_number(in(other.rager, ibu), ibu_decimals);
    result["garetz"] = json_number(in(other.garetz, ibu), ibu_decimals);
    result["unit"] = "IBU";
    return result;
}

}  // namespace

Json estimate_json(const Recipe& recipe, const Beer& beer) {
    Json document;
    document["format"] = "entrywise/estimate/1";
    document["program"] = program_version();
    document["recipe"] = json_recipe(recipe);
    document["beer"] = beer_json(beer);
    document["sources"]["original_gravity"] = sources_json(beer.original_gravity.sources);
    document["sources"]["bitterness"] = sources_json(beer.bitterness.sources);
    document["sources"]["color"] = sources_json(beer.color.sources);
    document["other_bitterness"] = other_bitterness_json(beer.other_bitterness);
    document["assumed"] = beer.assumptions;
    return document;
}

}  // namespace entrywise
