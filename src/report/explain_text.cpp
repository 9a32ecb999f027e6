#include "report/explain_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>
#include <vector>

#include "advice/note.hpp"
#include "base/number.hpp"
#include "base/text.hpp"
#include "report/assumed_text.hpp"
#include "report/heading.hpp"
#include "report/number_table.hpp"
#include "report/sections.hpp"

namespace entrywise {

namespace {

constexpr std::size_t indent = 2;
constexpr std::size_t hanging_indent = 4;
constexpr std::size_t most_pulls = 4;
/// Shares of less are not worth a place on the page.
constexpr double least_share = 0.05;

std::string style_title(const Style& style) {
    return fmt::format("{} {}", style.variant_of.empty() ? style.code : style.variant_of, style.name);
}

std::string capitalized(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z') {
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    }
    return text;
}

std::string line(std::string_view label, const std::string& body, const TextStyle& style) {
    return body.empty()
               ? body
               : paragraph(shown(fmt::format("{}{}", label, body), style), indent, hanging_indent, style);
}

std::string pulls_text(const std::vector<Pull>& pulls, bool by_source) {
    std::vector<std::string> texts;
    for (const Pull& pull : pulls) {
        if (texts.size() < most_pulls && pull.share >= least_share) {
            texts.push_back(
                fmt::format("{} {}", by_source ? pull.source : pull.step, percent_text(pull.share)));
        }
    }
    return joined(texts, "; ");
}

std::string verdict(double explained) {
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

std::string title_of(const ExplainedRemark& remark, const Explanation& explanation) {
    return fmt::format("{} {} {} ({}): ", capitalized(spoken(remark.attribute)),
                       remark.direction == Direction::above ? "above" : "below",
                       explanation.style ? "the style" : "the middle", percent_text(remark.explained));
}

/// Where the beer stands on it in one section, and what that is held against.
std::string standing_text(const Standing& standing, const Explanation& explanation,
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

std::string remark_text(const ExplainedRemark& remark, const Explanation& explanation,
                        const Handbook& handbook, const TextStyle& style) {
    if (remark.attribute == "fault") {
        return line("Execution, not recipe: ", remark.elsewhere + '.', style);
    }
    std::string text;
    std::vector<std::string> standings;
    for (const Standing& standing : remark.standings) {
        const std::string said = standing_text(standing, explanation, handbook.phrases);
        if (std::find(standings.begin(), standings.end(), said) == standings.end()) {
            standings.push_back(said);
        }
    }
    text += line(title_of(remark, explanation), joined(standings, " "), style);
    text += line("Behind it: ", joined(remark.settings, "; "), style);
    text += line("Measured: ", remark.measured, style);
    text += line("Comes from: ", pulls_text(remark.givers, true), style);
    text += line(
        remark.direction == Direction::above ? "Would lower it, by share: " : "Would raise it, by share: ",
        pulls_text(remark.relief, false), style);
    if (remark.absent) {
        text += line("", "Nothing in the recipe gives it.", style);
    }
    text += line("To bring it in: ", joined(remark.corrections, "; or "), style);
    text += line(
        explains(remark.explained) == Explains::no ? "Likelier than the recipe: " : "Besides the recipe: ",
        remark.elsewhere, style);
    return text;
}

std::string unheard_text(const HeardClause& clause, const TextStyle& style) {
    std::vector<std::string> words;
    for (const UnknownWord& unknown : clause.unknown) {
        words.push_back(unknown.nearest.empty() ? fmt::format("“{}” is not known", unknown.word)
                                                : fmt::format("“{}” is not known; did you mean “{}”?",
                                                              unknown.word, unknown.nearest));
    }
    const std::string why = words.empty()
                                ? std::string("it does not say of what there is too much or too little")
                                : joined(words, "; ");
    return line(fmt::format("Not understood, “{}”: ", clause.text), why, style);
}

std::string note_text(const ExplainedNote& note, const Explanation& explanation, const Handbook& handbook,
                      const TextStyle& style) {
    const std::string said = note.explained          ? verdict(*note.explained)
                             : !note.praises.empty() ? "praise, nothing to trace"
                                                     : "not understood";
    const std::string quoted =
        cut_end(shown(fmt::format("“{}”", note.text), style), style.width - character_count(said) - 2, style);
    std::string text =
        bold(at_left(quoted, style.width - character_count(said)), style) + accented(said, style) + '\n';
    for (const ExplainedRemark& remark : note.remarks) {
        text += remark_text(remark, explanation, handbook, style);
    }
    for (const HeardClause& clause : note.unheard) {
        text += unheard_text(clause, style);
    }
    return text + '\n';
}

std::string points(double number) {
    return fixed(number, 1);
}

std::string score_text(const ExplainedScore& score, const TextStyle& style) {
    const ScoreComparison& comparison = score.comparison;
    const std::string_view parts = !comparison.parts                       ? "as expected"
                                   : *comparison.parts == Direction::above ? "higher than expected"
                                                                           : "lower than expected";
    std::string text = table_line(title_of(comparison.section), shortest(comparison.given),
                                  span_text(points(comparison.low), points(comparison.high), style), parts);
    text = without_blanks_at_end(text) + '\n';
    text +=
        line(comparison.parts == Direction::above ? "The recipe would have put at risk: " : "In the recipe: ",
             joined(score.behind, " "), style);
    return text + line("Besides the recipe: ", score.elsewhere, style);
}

std::string scores_text(const Explanation& explanation, const TextStyle& style) {
    if (explanation.scores.empty()) {
        return {};
    }
    std::string text =
        bold(without_blanks_at_end(table_line("Points", "given", at_right("8 in 10", 11), "")), style) + '\n';
    for (const ExplainedScore& score : explanation.scores) {
        text += score_text(score, style);
    }
    return text +
           paragraph(
               "Eight in ten judges would give between the two ends to this beer if it is otherwise well "
               "made: "
               "what is uncertain of the recipe, and how judges differ.",
               0, 0, style) +
           '\n';
}

std::string feedback_text(const Explanation& explanation, const TextStyle& style) {
    return explanation.feedback.empty()
               ? std::string()
               : bold("Feedback, a draft", style) + '\n' +
                     paragraph(shown(explanation.feedback, style), indent, indent, style) + '\n';
}

std::string cautions_text(const Explanation& explanation, const TextStyle& style) {
    if (explanation.cautions.empty()) {
        return {};
    }
    std::string text = bold("Cautions", style) + '\n';
    for (const Caution& caution : explanation.cautions) {
        text += line("", caution.text, style);
    }
    return text + '\n';
}

/// What was done, to stand last, beside the prompt.
std::string summary_text(const Explanation& explanation, const TextStyle& style) {
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
    return paragraph(
        shown(fmt::format("{}{}: {}.", explanation.recipe.name, held, joined(parts, "; ")), style), 0, 0,
        style);
}

}  // namespace

std::string explain_text(const Explanation& explanation, const Handbook& handbook, const TextStyle& style) {
    std::string text =
        heading(explanation.recipe.name, explanation.style ? style_title(*explanation.style) : "no style",
                explanation.recipe.file, style);
    for (const ExplainedNote& note : explanation.notes) {
        text += note_text(note, explanation, handbook, style);
    }
    text += scores_text(explanation, style) + feedback_text(explanation, style);
    const std::string assumed = assumed_text(explanation.beer, style);
    text += assumed.empty() ? assumed : assumed + '\n';
    return text + cautions_text(explanation, style) + summary_text(explanation, style);
}

}  // namespace entrywise
