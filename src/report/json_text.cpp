#include "report/json_text.hpp"

#include <cmath>

#include "base/number.hpp"

namespace entrywise {

std::string json_text(const Json& document) {
    constexpr int indent = 2;
    constexpr bool ascii_only = true;
    return document.dump(indent, ' ', ascii_only, Json::error_handler_t::replace) + '\n';
}

Json json_number(double number, int decimals) {
    return std::isfinite(number) ? Json(rounded(number, decimals)) : Json(nullptr);
}

Json json_object(std::size_t keys) {
    Json result = Json::object();
    result.get_ref<Json::object_t&>().reserve(keys);
    return result;
}

Json json_interval(const Interval80<double>& interval, int decimals) {
    constexpr std::size_t keys_and_a_unit = 4;
    Json result = json_object(keys_and_a_unit);
    result["median"] = json_number(interval.median, decimals);
    result["low"] = json_number(interval.low, decimals);
    result["high"] = json_number(interval.high, decimals);
    return result;
}

Json json_or_null(std::optional<double> number) {
    return number ? Json(*number) : Json(nullptr);
}

Json json_line(int line_or_column) {
    return line_or_column > 0 ? Json(line_or_column) : Json(nullptr);
}

Json json_recipe(const Recipe& recipe) {
    Json result;
    result["name"] = recipe.name;
    result["file"] = recipe.file;
    return result;
}

}  // namespace entrywise
