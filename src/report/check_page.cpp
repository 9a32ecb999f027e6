#include "report/check_page.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string>

#include "base/number.hpp"
#include "base/text.hpp"
#include "brewing/color.hpp"
#include "report/beer_numbers.hpp"
#include "report/capitalized.hpp"
#include "report/check_words.hpp"
#include "report/color_words.hpp"
#include "report/filled_template.hpp"
#include "report/finding_title.hpp"
#include "report/measured.hpp"
#include "report/number_table.hpp"
#include "report/page_profile.hpp"
#include "report/page_sources.hpp"
#include "report/page_values.hpp"
#include "report/picture_glass.hpp"
#include "report/picture_plane.hpp"
#include "report/sections.hpp"
#include "report/sensed.hpp"
#include "report/sheet_text.hpp"
#include "report/style_title.hpp"

namespace entrywise {

namespace {

Json finding_values(const AdvisedFinding& advised) {
    const Finding& finding = advised.finding;
    return {{"id", id_of(finding)},
            {"title", capitalized(title_of(finding))},
            {"points", points_text(finding.points)},
            {"noticed", percent_text(finding.noticed)},
            {"note", advised.note},
            {"causes", joined(advised.causes, "; ")},
            {"corrections", joined(advised.corrections, "; or ")},
            {"assumed", finding.assumed}};
}

Json findings_values(const Check& check) {
    Json findings = Json::array();
    for (const AdvisedFinding& finding : check.findings) {
        findings.push_back(finding_values(finding));
    }
    return findings;
}

Json strengths_values(const Check& check) {
    Json strengths = Json::array();
    for (const AdvisedStrength& strength : check.strengths) {
        strengths.push_back({{"text", strength.note}});
    }
    return strengths;
}

std::string other_numbers(const Beer& beer) {
    std::vector<std::string> others;
    for (const BeerNumber& number : numbers_of(beer)) {
        if (number.key == "carbonation" || number.key == "real_extract" ||
            number.key == "apparent_attenuation") {
            others.push_back(fmt::format("{} {} {} ({})", number.name,
                                         fixed(number.value.median, number.decimals), number.unit,
                                         span_words(fixed(number.value.low, number.decimals),
                                                    fixed(number.value.high, number.decimals))));
        }
    }
    return listed(others, "and");
}

Json glass_values(const Check& check) {
    const Interval80<Color> color = check.beer.color.total.interval();
    return {{"glass", glass_picture(color.median)},
            {"color_scale", color_scale_picture(color, check.style.ranges.color)},
            {"color", capitalized(std::string(color_word(color.median)))},
            {"color_numbers",
             fmt::format("{} SRM, {} EBC", fixed(in(color.median, srm), 1), fixed(in_ebc(color.median), 0))}};
}

Json place_values(const std::vector<PlacedStyle>& places, const std::vector<Style>& styles,
                  const Style& entered) {
    Json values = Json::array();
    for (const PlacedStyle& place : places) {
        const auto style = std::find_if(styles.begin(), styles.end(),
                                        [&](const Style& each) { return each.code == place.code; });
        values.push_back({{"code", place.code},
                          {"name", place.marked            ? entered.name
                                   : style == styles.end() ? std::string()
                                                           : style->name},
                          {"entered", place.marked}});
    }
    return values;
}

}  // namespace

Article check_article(const Check& check, const ScoreSheet& score_sheet, const std::vector<Style>& nearby) {
    const PointsAtRisk& total = check.sheet.total;
    Json values = head_values(check.recipe, check.style, "Predicted score sheet", "entered as");
    values.update(glass_values(check));
    values["at_risk"] = points_text(total.median);
    values["at_risk_span"] = span_words(points_text(total.low), points_text(total.high));
    values["all_points"] = shortest(all_points_of(score_sheet));
    values["frame"] = frame_words(check.sheet, score_sheet);
    values["first"] = check.findings.empty() ? std::string("Nothing that a judge would likely note")
                                             : capitalized(in_a_sentence(check.findings.front().finding));
    values["first_id"] = check.findings.empty() ? std::string() : id_of(check.findings.front().finding);
    values["numbers_inside"] = capitalized(numbers_words(check.sheet));
    values["numbers"] = number_values(check.beer, check.style, check.sheet);
    values["other_numbers"] = other_numbers(check.beer);
    values["measured"] = measured_words(check.recipe.measured);
    values["sections"] = section_values(check.sheet, score_sheet);
    values["risk_words"] = risk_words();
    values["strengths"] = strengths_values(check);
    values["has_strengths"] = !check.strengths.empty();
    values["findings"] = findings_values(check);
    values["has_findings"] = !check.findings.empty();
    values["profile"] = profile_values(check);
    values["absent"] = rightly_absent(check);
    values["sources"] = source_values(check.beer);
    values["other_bitterness"] = other_bitterness_words(check.beer);
    const std::vector<PlacedStyle> places = placed(nearby, &check.style);
    values["plane"] = places.empty() ? std::string() : plane_picture(places, check.beer);
    values["places"] = place_values(places, nearby, check.style);
    values["assumed"] = capitalized(joined(check.beer.assumptions, "; "));
    values["not_judged"] = text_values(not_judged_sentences(check));
    values["cautions"] = caution_values(check.cautions);
    values["has_cautions"] = !check.cautions.empty();
    return {fmt::format("{} as {}", check.recipe.name, style_title(check.style)),
            filled("check.mustache", values)};
}

}  // namespace entrywise
