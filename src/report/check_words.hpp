#pragma once

#include <string>
#include <vector>

#include "advice/check.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

// What every form of a check says in the same words.

/// The whole score if nothing else goes wrong, with its bands: `30–40 of 50, very good to excellent`.
std::string frame_words(const Sheet& sheet, const ScoreSheet& score_sheet);

/// What points at risk are, and what they are not.
std::string risk_words();

/// What was not judged, and why.
std::vector<std::string> not_judged_sentences(const Check& check);

/// How many of the numbers are most likely inside.
std::string numbers_words(const Sheet& sheet);

}  // namespace entrywise
