#pragma once

#include <nlohmann/json.hpp>

#include <algorithm>
#include <span>
#include <string_view>

#include "base/number.hpp"
#include "base/text.hpp"
#include "interchange/exchange_units.hpp"
#include "quantity/text.hpp"

namespace entrywise {

// Amounts as BeerJSON writes them.

using BeerJson = nlohmann::ordered_json;

BeerJson beerjson_amount(double number, std::string_view unit);

/// A quantity in the unit that a recipe file would write it in, by the standard's name of that unit.
template <class Quantity>
BeerJson beerjson_amount(Quantity quantity, std::span<const ExchangeUnit> units,
                         std::string_view spelling = {}) {
    const std::string text = to_text(quantity, spelling);
    const auto number = leading_number(text);
    const std::string_view unit = number ? trimmed(number->rest) : std::string_view();
    const auto found = std::find_if(units.begin(), units.end(), [&](const ExchangeUnit& known) {
        return known.spelling == unit || (unit.empty() && known.spelling == "SG");
    });
    return number && found != units.end() ? beerjson_amount(number->number, found->unit) : BeerJson();
}

/// The standard's times are whole numbers: the largest unit in which this one is, or the nearest second.
BeerJson whole_time(Duration duration);

}  // namespace entrywise
