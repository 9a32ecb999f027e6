#pragma once

#include <vector>

#include "judging/style_comparison.hpp"
#include "judging/surroundings.hpp"
#include "report/json_text.hpp"
#include "style/phrase.hpp"
#include "style/style.hpp"

namespace entrywise {

/// `entrywise/styles-list/1`: guide, code, name, category and numbers of each style.
Json style_list_json(const std::vector<Style>& styles);

/// `entrywise/styles-show/1`: all that a style lays down, with levels and words, and its surroundings.
Json style_json(const Style& shown_style, const Surroundings& surroundings, const PhraseBook& phrases);

/// `entrywise/styles-compare/1`: two styles trait by trait, and what separates them.
Json style_comparison_json(const StyleComparison& comparison);

}  // namespace entrywise
