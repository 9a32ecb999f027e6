#include "report/rank_page.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>

#include "base/number.hpp"
#include "report/capitalized.hpp"
#include "report/filled_template.hpp"
#include "report/finding_title.hpp"
#include "report/number_table.hpp"
#include "report/page_values.hpp"
#include "report/picture_plane.hpp"
#include "report/picture_points.hpp"
#include "report/rank_words.hpp"
#include "report/sections.hpp"
#include "report/sheet_text.hpp"

namespace entrywise {

namespace {

std::size_t shown_of(const Ranking& ranking) {
    return std::min(most_ranked_shown, ranking.styles.size());
}

bool is_declared(const Ranking& ranking, std::size_t index) {
    return ranking.declared && *ranking.declared == index;
}

Json row_of(const Ranking& ranking, std::size_t index, double most) {
    const RankedStyle& ranked = ranking.styles[index];
    return {{"place", std::to_string(index + 1)},
            {"name", name_of(ranked)},
            {"declared", is_declared(ranking, index)},
            {"at_risk", points_text(ranked.at_risk.median)},
            {"span", span_words(points_text(ranked.at_risk.low), points_text(ranked.at_risk.high))},
            {"inside", percent_text(ranked.within)},
            {"best", percent_text(ranked.best)},
            {"picture", risk_picture(name_of(ranked), ranked.at_risk, most)}};
}

/// The styles of the table, and the declared one where it stands further down.
Json rows_of(const Ranking& ranking) {
    double most = 1.0;
    for (std::size_t index = 0; index < shown_of(ranking); ++index) {
        most = std::max(most, ranking.styles[index].at_risk.high);
    }
    Json rows = Json::array();
    for (std::size_t index = 0; index < shown_of(ranking); ++index) {
        rows.push_back(row_of(ranking, index, most));
    }
    if (ranking.declared && *ranking.declared >= shown_of(ranking)) {
        rows.push_back(row_of(ranking, *ranking.declared, most));
    }
    return rows;
}

Json against_values(const RankedStyle& ranked) {
    constexpr std::size_t most_findings = 3;
    Json reasons = Json::array();
    for (std::size_t index = 0; index < std::min(most_findings, ranked.sheet->findings.size()); ++index) {
        const Finding& finding = ranked.sheet->findings[index];
        reasons.push_back(
            {{"text", capitalized(in_a_sentence(finding))}, {"points", points_text(finding.points)}});
    }
    for (const std::string& departure : ranked.departures) {
        reasons.push_back({{"text", capitalized(departure)}, {"points", ""}});
    }
    return {{"name", name_of(ranked)}, {"clear", reasons.empty()}, {"reasons", reasons}};
}

/// The styles with a sheet: what separates them has a column for each.
Json separating_values(const Ranking& ranking) {
    Json rows = Json::array();
    for (const Separation& separation : ranking.separations) {
        Json cells = Json::array();
        for (const double points : separation.points) {
            cells.push_back({{"points", points_text(points)}, {"none", rounded(points, 1) == 0.0}});
        }
        rows.push_back({{"name", capitalized(words_of(separation))}, {"cells", std::move(cells)}});
    }
    return rows;
}

Json separating_codes(const Ranking& ranking) {
    Json codes = Json::array();
    const std::size_t count = ranking.separations.empty() ? 0 : ranking.separations.front().points.size();
    for (std::size_t index = 0; index < count; ++index) {
        codes.push_back({{"code", ranking.styles[index].name.code}});
    }
    return codes;
}

/// Both sheets side by side, where another style than the declared one leads.
Json compared_values(const Ranking& ranking, const ScoreSheet& score_sheet) {
    Json rows = Json::array();
    if (elsewhere_words(ranking).empty()) {
        return rows;
    }
    const Sheet& declared = *ranking.styles[*ranking.declared].sheet;
    const Sheet& first = *ranking.styles.front().sheet;
    for (const Section section : sheet_sections) {
        const std::string name = capitalized(std::string(title_of(section)));
        const double points = score_sheet.points[section];
        rows.push_back({{"name", name},
                        {"declared", points_text(declared.at_risk[section].median)},
                        {"first", points_text(first.at_risk[section].median)},
                        {"of", shortest(points)}});
    }
    rows.push_back({{"name", "All"},
                    {"declared", points_text(declared.total.median)},
                    {"first", points_text(first.total.median)},
                    {"of", shortest(all_points_of(score_sheet))}});
    return rows;
}

const Style* style_of(const RankedStyle& ranked, const std::vector<Style>& styles) {
    const auto found = std::find_if(styles.begin(), styles.end(), [&](const Style& style) {
        return style.guide == ranked.name.guide && style.code == ranked.name.code;
    });
    return found == styles.end() ? nullptr : &*found;
}

std::vector<PlacedStyle> places_of(const Ranking& ranking, const std::vector<Style>& styles) {
    constexpr std::size_t drawn = 5;
    std::vector<Style> others;
    const Style* const first = style_of(ranking.styles.front(), styles);
    for (std::size_t index = 0; index < ranking.styles.size(); ++index) {
        const Style* const style = style_of(ranking.styles[index], styles);
        if (style != nullptr && style != first && (index < drawn || is_declared(ranking, index))) {
            others.push_back(*style);
        }
    }
    return placed(others, first);
}

void add_ranked(Json& values, const Ranking& ranking, const Beer& beer, const std::vector<Style>& styles,
                const ScoreSheet& score_sheet) {
    const RankedStyle& first = ranking.styles.front();
    values["first"] = name_of(first);
    values["first_best"] = percent_text(first.best);
    values["first_at_risk"] = points_text(first.at_risk.median);
    values["first_span"] = span_words(points_text(first.at_risk.low), points_text(first.at_risk.high));
    values["all_points"] = shortest(all_points_of(score_sheet));
    values["declared_words"] = elsewhere_words(ranking);
    values["form"] = declaration_words(first);
    values["fewest"] = fewest_points_words(ranking);
    values["rows"] = rows_of(ranking);
    values["table_words"] = rank_table_words();
    values["against"] = Json::array();
    for (std::size_t index = 0; index < std::min(most_ranked_explained, ranking.styles.size()); ++index) {
        values["against"].push_back(against_values(ranking.styles[index]));
    }
    values["codes"] = separating_codes(ranking);
    values["separating"] = separating_values(ranking);
    values["separates"] = !ranking.separations.empty();
    values["near"] = Json::array();
    for (const std::string& near : ranking.near_misses) {
        values["near"].push_back({{"text", capitalized(near)}});
    }
    values["compared"] = compared_values(ranking, score_sheet);
    values["compares"] = !values["compared"].empty();
    values["declared_code"] = ranking.declared ? ranking.styles[*ranking.declared].name.code : std::string();
    values["first_code"] = first.name.code;
    const std::vector<PlacedStyle> places = places_of(ranking, styles);
    values["plane"] = places.empty() ? std::string() : plane_picture(places, beer);
}

}  // namespace

Article rank_article(const Ranking& ranking, const Recipe& recipe, const Beer& beer,
                     const std::vector<Style>& styles, const ScoreSheet& score_sheet) {
    Json values = head_values(recipe, std::nullopt, "Where to enter", "");
    values["ranked"] = !ranking.styles.empty();
    if (!ranking.styles.empty()) {
        add_ranked(values, ranking, beer, styles, score_sheet);
    }
    return {fmt::format("Where to enter {}", recipe.name), filled("rank.mustache", values)};
}

}  // namespace entrywise
