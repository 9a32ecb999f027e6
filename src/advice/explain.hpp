#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "advice/caution.hpp"
#include "advice/heard.hpp"
#include "advice/standing.hpp"
#include "advice/trial.hpp"
#include "judging/score_comparison.hpp"
#include "recipe/recipe.hpp"
#include "style/handbook.hpp"
#include "style/remark.hpp"
#include "style/style.hpp"

namespace entrywise {

/// Whether the recipe explains a remark: from even odds on it does, from one in five on it may (working
/// values).
enum class Explains { yes, perhaps, no };
Explains explains(double explained);

/// One thing that a note says, of too much or too little of what, traced to the recipe.
struct ExplainedRemark {
    std::string attribute;  ///< that which tells it, as in its standings
    Direction direction = Direction::above;
    std::size_t clause = 0;             ///< which part of the note says it first
    std::vector<Standing> standings;    ///< where the beer stands on it, section by section
    double explained = 0.0;             ///< the chance that any of them is on that side
    bool absent = false;                ///< of too little: nothing in the recipe gives any of it
    std::string measured;               ///< a measured number behind it that the recipe would not have made
    std::vector<std::string> settings;  ///< numbers and settings behind it
    std::vector<Pull> relief;           ///< what would take it back, with the share of each
    std::vector<Pull> givers;           ///< of too little: the ingredients that give what there is
    std::string elsewhere;  ///< likelier causes than the recipe, and what to look at, where it explains
                            ///< little or was not what was made
    std::vector<std::string> corrections;
    std::vector<Caution> cautions;  ///< of the corrections
};

/// A judge's note.
struct ExplainedNote {
    std::string text;
    std::vector<ExplainedRemark> remarks;
    /// The share of what the note says that is expected to hold of this beer: a remark that may stand for
    /// several attributes holds if any of them does, and what stands beside it counts for itself. None for a
    /// note that complains of nothing.
    std::optional<double> explained;
    std::vector<std::string> praises;  ///< parts of the note that find something right
    std::vector<HeardClause> unheard;  ///< parts that say nothing the book knows
};

/// A section's points beside those expected, with what may stand behind a difference.
struct ExplainedScore {
    ScoreComparison comparison;
    std::vector<std::string> behind;  ///< the findings of the section, as notes; none where the two agree
    std::string elsewhere;            ///< what besides the recipe; empty where the two agree
};

/// A judge's notes, and points where there are any, traced to a recipe.
struct Explanation {
    Recipe recipe;
    Beer beer;
    std::optional<Style> style;  ///< what it is held against, if anything
    std::vector<ExplainedNote> notes;
    std::vector<ExplainedScore> scores;
    std::string feedback;
    std::vector<Caution> cautions;
};

/// What a judge gives to have explained.
struct JudgedBeer {
    std::vector<std::string> notes;
    SectionScores scores;
};

/// Traces notes and scores to the recipe. Scores want a style; without one they are not compared.
Explanation explain(const Recipe& recipe, const std::optional<Style>& style, const JudgedBeer& judged,
                    const Handbook& handbook, const RemarkBook& remarks);

}  // namespace entrywise
