#include "report/explain_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "advice/note.hpp"
#include "base/text.hpp"
#include "report/capitalized.hpp"
#include "report/number_table.hpp"
#include "report/sections.hpp"
#include "report/style_title.hpp"

namespace entrywise {

namespace {

std::string verdict_on(double explained) {
    switch (explains(explained)) {
        case Explains::yes:
            return "the recipe explains it, " + percent_text(explained);
        case Explains::perhaps:
            return "the recipe may explain it, " + percent_text(explained);
        case Explains::no:
            return "the recipe does not explain it, " + percent_text(explained);
    }
    return {};
}

/// Where the beer stands on it in one section, and what that is held against.
std::string one_standing(const Standing& standing, const Explanation& explanation,
                         const PhraseBook& phrases) {
    const Finding& finding = standing.finding;
    if (standing.by_style && explains(standing.explained) == Explains::yes) {
        return note_on(finding, explanation.beer, *explanation.style, phrases);
    }
    const std::string noun =
        phrases.phrase_for(std::string(word_of(finding.section)), finding.attribute).noun;
    const std::string against =
        standing.by_style
            ? fmt::format("{} {} {}", explanation.style->name,
                          finding.assumed ? "is taken to have" : "asks for", accepted_in_words(finding))
        : explanation.style
            ? explanation.style->name + " says nothing of it, so it is held against the middle of the scale"
            : std::string("held against the middle of the scale");
    return fmt::format("{} comes out {}; {}.", capitalized(noun), level_in_words(standing), against);
}

}  // namespace

std::string verdict_words(const ExplainedNote& note) {
    return note.explained          ? verdict_on(*note.explained)
           : !note.praises.empty() ? "praise, nothing to trace"
                                   : "not understood";
}

std::string remark_title(const ExplainedRemark& remark, const Explanation& explanation) {
    return fmt::format("{} {} {} ({})", capitalized(spoken(remark.attribute)),
                       remark.direction == Direction::above ? "above" : "below",
                       explanation.style ? "the style" : "the middle", percent_text(remark.explained));
}

std::string standing_words(const ExplainedRemark& remark, const Explanation& explanation,
                           const PhraseBook& phrases) {
    std::vector<std::string> standings;
    for (const Standing& standing : remark.standings) {
        const std::string said = one_standing(standing, explanation, phrases);
        if (std::find(standings.begin(), standings.end(), said) == standings.end()) {
            standings.push_back(said);
        }
    }
    return joined(standings, " ");
}

std::string unheard_words(const HeardClause& clause) {
    std::vector<std::string> words;
    for (const UnknownWord& unknown : clause.unknown) {
        words.push_back(unknown.nearest.empty() ? fmt::format("“{}” is not known", unknown.word)
                                                : fmt::format("“{}” is not known; did you mean “{}”?",
                                                              unknown.word, unknown.nearest));
    }
    return words.empty() ? std::string("it does not say of what there is too much or too little")
                         : joined(words, "; ");
}

std::string_view parting_words(const ScoreComparison& comparison) {
    return !comparison.parts                       ? "as expected"
           : *comparison.parts == Direction::above ? "higher than expected"
                                                   : "lower than expected";
}

std::string explain_summary_words(const Explanation& explanation) {
    const auto counted = [&](Explains kind) {
        return std::count_if(
            explanation.notes.begin(), explanation.notes.end(),
            [&](const ExplainedNote& note) { return note.explained && explains(*note.explained) == kind; });
    };
    const auto rest = std::count_if(explanation.notes.begin(), explanation.notes.end(),
                                    [](const ExplainedNote& note) { return !note.explained; });
    std::vector<std::string> parts;
    if (!explanation.notes.empty()) {
        parts.push_back(fmt::format("of {} {} the recipe explains {}, may explain {}, does not explain {}",
                                    explanation.notes.size(),
                                    explanation.notes.size() == 1 ? "note" : "notes", counted(Explains::yes),
                                    counted(Explains::perhaps), counted(Explains::no)));
        if (rest > 0) {
            parts.back() += fmt::format("; {} with nothing to trace", rest);
        }
    }
    if (!explanation.scores.empty()) {
        const auto parted =
            std::count_if(explanation.scores.begin(), explanation.scores.end(),
                          [](const ExplainedScore& score) { return score.comparison.parts.has_value(); });
        parts.push_back(fmt::format("{} of {} section scores part from what is expected", parted,
                                    explanation.scores.size()));
    }
    const std::string held = explanation.style ? " as " + style_title(*explanation.style) : std::string();
    return fmt::format("{}{}: {}.", explanation.recipe.name, held, joined(parts, "; "));
}

}  // namespace entrywise
