#include "report/mend_page.hpp"

#include <fmt/format.h>

#include <optional>
#include <string>
#include <vector>

#include "base/number.hpp"
#include "base/text.hpp"
#include "report/beer_numbers.hpp"
#include "report/capitalized.hpp"
#include "report/filled_template.hpp"
#include "report/mend_words.hpp"
#include "report/page_values.hpp"
#include "report/picture_number.hpp"
#include "report/picture_points.hpp"
#include "report/sections.hpp"
#include "report/sheet_text.hpp"
#include "report/style_title.hpp"
#include "report/trait_words.hpp"

namespace entrywise {

namespace {

Json change_values(const std::vector<Change>& changes, const Measures& measures) {
    Json values = Json::array();
    for (const Change& change : changes) {
        values.push_back({{"what", change.what},
                          {"from", setting_words(change, change.from, "none", measures)},
                          {"to", setting_words(change, change.to, "left out", measures)}});
    }
    return values;
}

Json number_change(const BeerNumber& before, const BeerNumber& after, const std::optional<PlainRange>& range,
                   const std::string& asked) {
    return {{"name", capitalized(std::string(before.name))},
            {"unit", before.unit == "SG" ? std::string() : std::string(before.unit)},
            {"before", fixed(before.value.median, before.decimals)},
            {"after", fixed(after.value.median, after.decimals)},
            {"asked", asked},
            {"picture", change_picture(before, after, range)}};
}

Json numbers_compared(const Beer& before, const Beer& after, const Style& style) {
    constexpr TextStyle page_text{.width = 80, .color = false, .ascii = false};
    Json values = Json::array();
    for (const Number each : guide_numbers()) {
        const auto range = range_of(style.ranges, each);
        values.push_back(
            number_change(number_of(before, each), number_of(after, each), range,
                          range ? range_words(each, *range, page_text) : std::string("not given")));
    }
    const std::vector<BeerNumber> was = numbers_of(before);
    const std::vector<BeerNumber> is = numbers_of(after);
    for (std::size_t index = guide_numbers().size(); index < was.size(); ++index) {
        if (was[index].key == "carbonation") {
            values.push_back(number_change(was[index], is[index], std::nullopt, "–"));
        }
    }
    return values;
}

Json sections_compared(const Sheet& before, const Sheet& after, const ScoreSheet& score_sheet) {
    Json values = Json::array();
    for (const Section section : sheet_sections) {
        const std::string name = capitalized(std::string(title_of(section)));
        const double points = score_sheet.points[section];
        values.push_back({{"name", name},
                          {"before", points_text(before.at_risk[section].median)},
                          {"after", points_text(after.at_risk[section].median)},
                          {"of", shortest(points)},
                          {"picture", points_picture(name + " afterwards", after.at_risk[section], points)}});
    }
    return values;
}

Json proposal_values(const Proposal& proposal, std::size_t number, const Mending& mending,
                     const ScoreSheet& score_sheet) {
    return {{"number", std::to_string(number)},
            {"title", proposal_words(proposal, mending)},
            {"changes", change_values(proposal.changes, mending.recipe.measures)},
            {"before", points_text(mending.sheet.total.median)},
            {"after", points_text(proposal.sheet.total.median)},
            {"numbers", numbers_compared(mending.beer, proposal.beer, mending.style)},
            {"sections", sections_compared(mending.sheet, proposal.sheet, score_sheet)},
            {"all_points", shortest(all_points_of(score_sheet))},
            {"left", capitalized(left_over_words(proposal.sheet))},
            {"no_longer_measured", listed(proposal.no_longer_measured, "and")},
            {"cautions", caution_values(proposal.cautions)}};
}

}  // namespace

Article mend_article(const Mending& mending, const ScoreSheet& score_sheet) {
    Json values = head_values(mending.recipe, mending.style, "Brought into style", "to be entered as");
    values["before"] = points_text(mending.sheet.total.median);
    values["all_points"] = shortest(all_points_of(score_sheet));
    const bool mended = !mending.is_in_already() && !mending.proposals.empty();
    values["mended"] = mended;
    values["least"] = mended ? points_text(mending.proposals.front().sheet.total.median) : std::string();
    values["opening"] = mending.is_in_already() ? std::string() : mend_opening_words(mending, score_sheet);
    values["undeclared"] = mending.undeclared > 0.0 ? undeclared_words(mending) : std::string();
    values["summary"] = mend_summary_words(mending, score_sheet);
    values["elsewhere"] = mend_elsewhere_words(mending);
    values["proposals"] = Json::array();
    for (std::size_t index = 0; index < mending.proposals.size(); ++index) {
        values["proposals"].push_back(
            proposal_values(mending.proposals[index], index + 1, mending, score_sheet));
    }
    return {fmt::format("{} brought into {}", mending.recipe.name, style_title(mending.style)),
            filled("mend.mustache", values)};
}

}  // namespace entrywise
