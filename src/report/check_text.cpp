#include "report/check_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "base/number.hpp"
#include "base/text.hpp"
#include "report/assumed_text.hpp"
#include "report/finding_title.hpp"
#include "report/findings_text.hpp"
#include "report/heading.hpp"
#include "report/number_table.hpp"
#include "report/numbers_text.hpp"
#include "report/sections.hpp"
#include "report/sheet_text.hpp"

namespace entrywise {

namespace {

std::string style_title(const Style& style) {
    // The name of a variant says what its code does.
    return fmt::format("{} {}", style.variant_of.empty() ? style.code : style.variant_of, style.name);
}

std::string headed(std::string_view head, const std::string& body, const TextStyle& style) {
    return bold(head, style) + '\n' + body;
}

double all_points_of(const ScoreSheet& score_sheet) {
    double points = 0.0;
    for (const Section section : sheet_sections) {
        points += score_sheet.points[section];
    }
    return points;
}

/// The attributes that a condition holds for, by section.
template <class Condition>
std::string by_section(Condition condition) {
    std::vector<std::string> sections;
    for (const Section section : sheet_sections) {
        std::vector<std::string> words;
        for (const Attribute attribute : all_attributes()) {
            if (section_of(attribute) == section && condition(attribute)) {
                words.push_back(spoken(word_of(attribute)));
            }
        }
        if (!words.empty()) {
            sections.push_back(fmt::format("{} ({})", title_of(section), joined(words, ", ")));
        }
    }
    return listed(sections, "and");
}

/// The attributes that the style says nothing of.
std::string not_described(const Style& style) {
    return by_section([&](Attribute attribute) { return !style.expected[attribute]; });
}

/// The attributes that the style describes and the recipe leaves open.
std::string untold(const Check& check) {
    const std::vector<Attribute>& open = check.profile.untold;
    return by_section([&](Attribute attribute) {
        return check.style.expected[attribute] &&
               std::find(open.begin(), open.end(), attribute) != open.end();
    });
}

std::string not_judged_text(const Check& check, const TextStyle& style) {
    std::vector<std::string> sentences;
    if (check.sheet.attributes_not_described > 0) {
        sentences.push_back(fmt::format("{} describes {} of {} things sensed; it is silent on {}.",
                                        check.style.code,
                                        check.sheet.attributes_checked + check.sheet.attributes_untold,
                                        static_cast<int>(attribute_count), not_described(check.style)));
    }
    if (check.sheet.attributes_untold > 0) {
        sentences.push_back(fmt::format("The recipe leaves open, or the beer hides: {}.", untold(check)));
    }
    if (!check.basis.empty()) {
        sentences.push_back(check.basis);
    }
    sentences.emplace_back(
        "No recipe tells of infection, a stalled fermentation, air taken up in packaging, light-struck "
        "bottles, "
        "staling with age or a poor pour: that is left to the palate.");
    return headed("Not judged", paragraph(shown(joined(sentences, " "), style), 2, 2, style), style);
}

/// What the recipe says of the whole score, and what it cannot say.
std::string frame_text(const Check& check, const ScoreSheet& score_sheet, const TextStyle& style) {
    const ScoreRange& frame = check.sheet.if_otherwise_well_made;
    std::string span = shortest(frame.low);
    if (frame.high > frame.low) {
        span += std::string(dash(style)) + shortest(frame.high);
    }
    std::string bands;
    if (!frame.bands.empty()) {
        bands = ", " + frame.bands.front();
        bands += frame.bands.size() > 1 ? " to " + frame.bands.back() : "";
    }
    return paragraph(
        shown(fmt::format("If otherwise well made: {} of {}{}. The points above are those that the "
                          "recipe puts at risk; brewing, keeping and serving may take more.",
                          span, shortest(all_points_of(score_sheet)), bands),
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

std::string numbers_summary(const Sheet& sheet) {
    const auto inside = std::count_if(sheet.numbers.begin(), sheet.numbers.end(),
                                      [](const NumberCheck& number) { return number.within >= 0.5; });
    return sheet.numbers.empty()
               ? std::string("the guide prints no numbers")
               : fmt::format("{} of {} numbers most likely inside", inside, sheet.numbers.size());
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
        points_text(total.high), numbers_summary(check.sheet), first);
    return paragraph(shown(summary, style), 0, 0, style);
}

}  // namespace

std::string check_text(const Check& check, const ScoreSheet& score_sheet, const TextStyle& style) {
    const std::vector<std::string> parts{
        numbers_text(check, style),
        sheet_text(check.sheet, score_sheet, style) + frame_text(check, score_sheet, style),
        strengths_text(check, style),
        findings_text(check, style),
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
