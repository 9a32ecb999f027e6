#pragma once

#include "advice/check.hpp"
#include "report/json_text.hpp"

namespace entrywise {

/// A recipe held against a style, as an `entrywise/check/1` document. The score sheet is the one that it was
/// judged by.
Json check_json(const Check& check, const ScoreSheet& score_sheet);

}  // namespace entrywise
