#include "report/check_text.hpp"

#include <fmt/format.h>

#include <vector>

#include "base/number.hpp"
#include "base/text.hpp"
#include "report/assumed_text.hpp"
#include "report/check_words.hpp"
#include "report/corrections_text.hpp"
#include "report/finding_title.hpp"
#include "report/heading.hpp"
#include "report/number_table.hpp"
#include "report/numbers_text.hpp"
#include "report/sections.hpp"
#include "report/sheet_text.hpp"
#include "report/style_title.hpp"

namespace entrywise {

namespace {

std::string headed(std::string_view head, const std::string& body, const TextStyle& style) {
    return bold(head, style) + '\n' + body;
}

std::string not_judged_text(const Check& check, const TextStyle& style) {
    return headed("Not judged",
                  paragraph(shown(joined(not_judged_sentences(check), " "), style), 2, 2, style), style);
}

std::string frame_text(const Check& check, const ScoreSheet& score_sheet, const TextStyle& style) {
    return paragraph(shown(fmt::format("If otherwise well made: {}. {}",
                                       frame_words(check.sheet, score_sheet), risk_words()),
                           style),
                     0, 0, style);
}

std::string cautions_text(const Check& check, const TextStyle& style) {
    if (check.cautions.empty()) {
        return {};
    }
    std::string body;
    for (const Caution& caution : check.cautions) {
        body += paragraph(shown(caution.text, style), 2, 4, style);
    }
    return headed("Cautions", body, style);
}

/// What matters most, to stand last, beside the prompt.
std::string summary_text(const Check& check, const ScoreSheet& score_sheet, const TextStyle& style) {
    const PointsAtRisk& total = check.sheet.total;
    const std::string first = check.findings.empty()
                                  ? std::string("nothing that a judge would likely note")
                                  : "first to mend: " + in_a_sentence(check.findings.front().finding);
    const std::string summary = fmt::format(
        "{} as {}: {} of {} points at risk ({}{}{}); {}; {}.", check.recipe.name, style_title(check.style),
        points_text(total.median), shortest(all_points_of(score_sheet)), points_text(total.low), dash(style),
        points_text(total.high), numbers_words(check.sheet), first);
    return paragraph(shown(summary, style), 0, 0, style);
}

}  // namespace

std::string check_text(const Check& check, const ScoreSheet& score_sheet, const TextStyle& style) {
    const std::vector<std::string> parts{
        sheet_text(check, score_sheet, style) + frame_text(check, score_sheet, style),
        corrections_text(check, style),
        numbers_text(check, style),
        assumed_text(check.beer, style),
        not_judged_text(check, style),
        cautions_text(check, style),
    };
    std::string text = heading(check.recipe.name, style_title(check.style), check.recipe.file, style);
    for (const std::string& part : parts) {
        text += part.empty() ? part : part + '\n';
    }
    return text + summary_text(check, score_sheet, style);
}

}  // namespace entrywise
