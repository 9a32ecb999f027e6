#include "report/beer_json.hpp"

#include <string>

#include "report/beer_numbers.hpp"

namespace entrywise {

Json beer_json(const Beer& beer) {
    Json result = Json::object();
    for (const BeerNumber& number : numbers_of(beer)) {
        Json value = json_interval(number.value, number.decimals + 1);
        value["unit"] = std::string(number.unit);
        result[std::string(number.key)] = std::move(value);
    }
    return result;
}

}  // namespace entrywise
