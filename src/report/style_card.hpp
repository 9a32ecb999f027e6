#pragma once

#include <string>

#include "judging/surroundings.hpp"
#include "report/terminal.hpp"
#include "style/handbook.hpp"
#include "style/style.hpp"

namespace entrywise {

/// The most lines of a card on a page of 80 columns: what a printer sets on a sheet.
inline constexpr std::size_t card_lines = 66;

/// What a judge holds at the table: first what marks the style, what is out of place and what the entry form
/// must say; then each section in the order of tasting, with its points: what must be there, what may and
/// what may not; last the styles that the beer may rather be, what is customary, and the numbers.
std::string style_card(const Style& shown_style, const Surroundings& surroundings, const Handbook& handbook,
                       const TextStyle& style);

}  // namespace entrywise
