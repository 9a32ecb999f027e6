#pragma once

#include <string>

#include "advice/change.hpp"
#include "advice/mend.hpp"
#include "quantity/measures.hpp"
#include "style/score_sheet.hpp"

namespace entrywise {

// What every form of a mending says in the same words.

/// A setting as a table prints it, in the units of the recipe; where there is none of an ingredient, the word
/// for that.
std::string setting_words(const Change& change, const Change::Value& value, const char* nothing,
                          const Measures& measures);

/// What a judge would still note, or that there is nothing.
std::string left_over_words(const Sheet& sheet);

/// `Two changes, with a new ingredient`.
std::string proposal_words(const Proposal& proposal, const Mending& mending);

/// That the entry form leaves out what it must say.
std::string undeclared_words(const Mending& mending);

/// Where the beer stands, and how far the proposals go.
std::string mend_opening_words(const Mending& mending, const ScoreSheet& score_sheet);

/// Where else to enter it; empty where nowhere.
std::string mend_elsewhere_words(const Mending& mending);

/// What it comes to.
std::string mend_summary_words(const Mending& mending, const ScoreSheet& score_sheet);

}  // namespace entrywise
