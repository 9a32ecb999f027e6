#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "report/json_text.hpp"
#include "screening/flight.hpp"
#include "screening/screen.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// An entry as a check object, without causes and corrections, and with what a screening tells besides; one
/// that cannot be read as a fault object. Where no style is declared, style, sheet and what goes with them
/// are null.
Json screening_json(const Screening& screening, const ScoreSheet& score_sheet);

/// The object as one line.
std::string json_line(const Json& document);

/// The whole evening as one object: the entries at these places, each given as the text of an object, then
/// the flights, the duplicates and the counts over all of them.
std::string screen_json_text(const std::vector<std::string>& objects, const std::vector<Screened>& screened,
                             const std::vector<std::size_t>& places, const std::vector<Flight>& flights);

}  // namespace entrywise
