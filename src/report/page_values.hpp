#pragma once

#include <optional>
#include <string>
#include <vector>

#include "advice/caution.hpp"
#include "advice/check.hpp"
#include "report/json_text.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

// Values that several templates of `src/report/page` take.

/// `low–high`.
std::string span_words(const std::string& low, const std::string& high);

/// The head of a page: what kind of report it is, of which recipe, and what the recipe is held against.
Json head_values(const Recipe& recipe, const std::optional<Style>& style, const std::string& kind,
                 const std::string& entered_as);

/// The five numbers with pictures, as list `numbers`.
Json number_values(const Beer& beer, const Style& style, const Sheet& sheet);

/// The sections with pictures, as list `sections`, without the total.
Json section_values(const Sheet& sheet, const ScoreSheet& score_sheet);

/// `text` of each.
Json caution_values(const std::vector<Caution>& cautions);

/// Texts as a list of objects with `text`.
Json text_values(const std::vector<std::string>& texts);

}  // namespace entrywise
