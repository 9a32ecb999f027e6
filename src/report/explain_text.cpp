#include "report/explain_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>
#include <vector>

#include "advice/note.hpp"
#include "base/number.hpp"
#include "base/text.hpp"
#include "report/assumed_text.hpp"
#include "report/explain_words.hpp"
#include "report/heading.hpp"
#include "report/number_table.hpp"
#include "report/sections.hpp"
#include "report/style_title.hpp"

namespace entrywise {

namespace {

constexpr std::size_t hanging_indent = 4;
constexpr std::size_t most_pulls = 4;
/// Shares of less are not worth a place on the page.
constexpr double least_share = 0.05;

std::string line(std::string_view label, const std::string& body, const TextStyle& style) {
    return body.empty() ? body
                        : paragraph(shown(fmt::format("{}{}", label, body), style), text_indent,
                                    hanging_indent, style);
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

std::string remark_text(const ExplainedRemark& remark, const Explanation& explanation,
                        const Handbook& handbook, const TextStyle& style) {
    if (remark.attribute == "fault") {
        return line("Execution, not recipe: ", remark.elsewhere + '.', style);
    }
    std::string text;
    text += line(remark_title(remark, explanation) + ": ",
                 standing_words(remark, explanation, handbook.phrases), style);
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
    return line(fmt::format("Not understood, “{}”: ", clause.text), unheard_words(clause), style);
}

std::string note_text(const ExplainedNote& note, const Explanation& explanation, const Handbook& handbook,
                      const TextStyle& style) {
    const std::string said = verdict_words(note);
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
    std::string text = table_line(title_of(comparison.section), shortest(comparison.given),
                                  span_text(points(comparison.low), points(comparison.high), style),
                                  parting_words(comparison));
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
                     paragraph(shown(explanation.feedback, style), text_indent, text_indent, style) + '\n';
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

std::string summary_text(const Explanation& explanation, const TextStyle& style) {
    return paragraph(shown(explain_summary_words(explanation), style), 0, 0, style);
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
