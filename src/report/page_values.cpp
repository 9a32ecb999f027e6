#include "report/page_values.hpp"

#include <algorithm>

#include "base/number.hpp"
#include "base/text.hpp"
#include "brewing/color.hpp"
#include "report/beer_numbers.hpp"
#include "report/capitalized.hpp"
#include "report/number_table.hpp"
#include "report/picture_number.hpp"
#include "report/picture_points.hpp"
#include "report/sections.hpp"
#include "report/sheet_text.hpp"
#include "report/style_title.hpp"
#include "report/trait_words.hpp"

namespace entrywise {

namespace {

constexpr TextStyle page_text{.width = 80, .color = false, .ascii = false};

std::string in_ebc_words(const Interval80<double>& color) {
    const auto ebc = [](double value) { return fixed(in_ebc(value * srm), 0); };
    return ebc(color.median) + " EBC, " + span_words(ebc(color.low), ebc(color.high));
}

Json number_value(const BeerNumber& number, const std::vector<double>& draws,
                  const std::optional<PlainRange>& range, Number which, double within) {
    const auto text = [&](double value) { return fixed(value, number.decimals); };
    Json values;
    values["name"] = capitalized(std::string(number.name));
    values["unit"] = number.unit == "SG" ? std::string() : std::string(number.unit);
    values["middle"] = text(number.value.median);
    values["span"] = span_words(text(number.value.low), text(number.value.high));
    values["also"] = which == Number::color ? in_ebc_words(number.value) : std::string();
    values["range"] = range ? range_words(which, *range, page_text) : std::string("not given");
    values["inside"] = range ? percent_text(within) : std::string("–");
    values["side"] = range ? std::string(side_of(number, *range)) : std::string();
    values["is_above"] = values["side"] == "above";
    values["picture"] = number_picture(number, draws, range);
    return values;
}

/// A long name is set smaller, so that it leaves room on the sheet.
std::string size_of_name(const std::string& name) {
    constexpr std::size_t long_name = 40;
    constexpr std::size_t very_long_name = 120;
    const std::size_t length = character_count(name);
    return length > very_long_name ? "very-long" : length > long_name ? "long" : "";
}

}  // namespace

std::string span_words(const std::string& low, const std::string& high) {
    return low + "–" + high;
}

Json head_values(const Recipe& recipe, const std::optional<Style>& style, const std::string& kind,
                 const std::string& entered_as) {
    Json values;
    values["kind"] = kind;
    values["entered_as"] = entered_as;
    values["recipe"] = recipe.name;
    values["size"] = size_of_name(recipe.name);
    values["file"] = recipe.file;
    values["style"] = style ? style_title(*style) : std::string();
    values["guide"] = style ? style->guide : std::string();
    return values;
}

Json number_values(const Beer& beer, const Style& style, const Sheet& sheet) {
    Json numbers = Json::array();
    for (const Number each : guide_numbers()) {
        const auto checked = std::find_if(sheet.numbers.begin(), sheet.numbers.end(),
                                          [each](const NumberCheck& check) { return check.number == each; });
        const double within = checked == sheet.numbers.end() ? 1.0 : checked->within;
        numbers.push_back(number_value(number_of(beer, each), draws_of(beer, each),
                                       range_of(style.ranges, each), each, within));
    }
    return numbers;
}

Json section_values(const Sheet& sheet, const ScoreSheet& score_sheet) {
    Json sections = Json::array();
    for (const Section section : sheet_sections) {
        const PointsAtRisk& at_risk = sheet.at_risk[section];
        const std::string name = capitalized(std::string(title_of(section)));
        sections.push_back({{"name", name},
                            {"points", shortest(score_sheet.points[section])},
                            {"at_risk", points_text(at_risk.median)},
                            {"span", span_words(points_text(at_risk.low), points_text(at_risk.high))},
                            {"picture", points_picture(name, at_risk, score_sheet.points[section])}});
    }
    return sections;
}

Json caution_values(const std::vector<Caution>& cautions) {
    Json values = Json::array();
    for (const Caution& caution : cautions) {
        values.push_back({{"text", caution.text}});
    }
    return values;
}

Json text_values(const std::vector<std::string>& texts) {
    Json values = Json::array();
    for (const std::string& text : texts) {
        values.push_back({{"text", text}});
    }
    return values;
}

}  // namespace entrywise
