#pragma once

#include <vector>

#include "interchange/draft.hpp"
#include "interchange/exchange_log.hpp"
#include "interchange/named_record.hpp"
#include "reading/node.hpp"

namespace entrywise {

/// The recipes of a BeerXML 1.0 record set. None at all is a fault.
std::vector<NamedRecord> beerxml_recipes(const Node& document, ExchangeLog& log);

/// One of them as a draft. The standard fixes the units: kilograms, liters, minutes, degrees Celsius,
/// percent, degrees Lovibond, days of fermentation, volumes of carbon dioxide. Its OG and FG are measured
/// ones, and are taken as such where they say something. Elements that are not the standard's are left out.
/// Source: BeerXML, recipe exchange standard, version 1, 2003, from memory.
Draft beerxml_draft(const Node& recipe, ExchangeLog& log);

}  // namespace entrywise
