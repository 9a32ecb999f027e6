#pragma once

#include "style/perception.hpp"
#include "style/phrase.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

/// What a judge brings to the table, whatever the style: the score sheet, a palate, and the words.
struct Handbook {
    ScoreSheet score_sheet;
    Perception perception;
    PhraseBook phrases;
};

}  // namespace entrywise
