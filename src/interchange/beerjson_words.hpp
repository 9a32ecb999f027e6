#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

#include "interchange/exchange_log.hpp"
#include "interchange/record.hpp"
#include "interchange/written.hpp"

namespace entrywise {

// What the readers of all parts of a BeerJSON recipe need.

/// Whether a text holds any of the words, case aside.
bool holds(const std::string& text, std::initializer_list<std::string_view> words);

/// An ingredient's name as remarks say it.
std::string quoted_name(const std::optional<Written>& name);

/// The mass of an addition; what is measured otherwise is left out, and that is told.
std::optional<Written> weighed(Record& addition, const std::string& name, ExchangeLog& log);

/// A step's temperature: where it ends, since what it starts from is the step before.
std::optional<Written> end_of_step(std::string_view what, const std::optional<Written>& start,
                                   const std::optional<Written>& end, ExchangeLog& log);

}  // namespace entrywise
