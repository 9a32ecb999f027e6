#include "report/rank_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "base/text.hpp"
#include "report/sections.hpp"
#include "report/sheet_text.hpp"

namespace entrywise {

namespace {

/// What it comes to that another style than the declared one leads.
std::string verdict_on(const RankedStyle& declared, const RankedStyle& first) {
    constexpr double worth_telling = 1.0;
    const double gain = declared.at_risk.median - first.at_risk.median;
    if (gain >= worth_telling) {
        return fmt::format("It would do better there, by about {} points.", points_text(gain));
    }
    if (gain <= -worth_telling) {
        return fmt::format(
            "It loses about {} points more there, yet it is nearer to the heart of that style.",
            points_text(-gain));
    }
    return "The points are about even; it is nearer to the heart of that style.";
}

}  // namespace

bool is_of_several_guides(const Ranking& ranking) {
    return std::any_of(ranking.styles.begin(), ranking.styles.end(), [&](const RankedStyle& ranked) {
        return ranked.name.guide != ranking.styles.front().name.guide;
    });
}

std::string code_of(const StyleName& name, bool with_guide) {
    return with_guide ? name.guide + "/" + name.code : name.code;
}

std::string name_of(const RankedStyle& ranked, bool with_guide) {
    const std::string name = code_of(ranked.name, with_guide) + " " + ranked.title;
    return ranked.base ? name + ", on " + ranked.base->code : name;
}

std::string rank_table_words() {
    return "At risk: points that the recipe puts at risk, of 50. Inside: the chance that all "
           "numbers are in the style's ranges. Best: the chance that it is the best choice; "
           "this and the order also count how near the beer is to the heart of the style and "
           "what is customary for it.";
}

std::string fewest_points_words(const Ranking& ranking) {
    constexpr double worth_telling = 1.0;
    const auto rows = ranking.styles.begin() +
                      static_cast<std::ptrdiff_t>(std::min(most_ranked_shown, ranking.styles.size()));
    const auto fewest = std::min_element(
        ranking.styles.begin(), rows,
        [](const auto& left, const auto& right) { return left.at_risk.median < right.at_risk.median; });
    if (ranking.styles.front().at_risk.median - fewest->at_risk.median < worth_telling) {
        return {};
    }
    return fmt::format(
        "Fewest points at risk of these: {}, {}. By points alone it is the safer entry; more in it "
        "speaks for another style.",
        name_of(*fewest, is_of_several_guides(ranking)), points_text(fewest->at_risk.median));
}

std::string elsewhere_words(const Ranking& ranking) {
    if (!ranking.declared || *ranking.declared == 0) {
        return {};
    }
    const RankedStyle& first = ranking.styles.front();
    const RankedStyle& declared = ranking.styles[*ranking.declared];
    const bool with_guide = is_of_several_guides(ranking);
    return fmt::format("Declared {} comes in place {}; {} leads. {}", code_of(declared.name, with_guide),
                       *ranking.declared + 1, name_of(first, with_guide), verdict_on(declared, first));
}

std::string declaration_words(const RankedStyle& first, bool with_guide) {
    std::vector<std::string> said;
    for (const Declaration& declaration : first.declarations) {
        said.push_back(declaration.said);
    }
    if (first.base) {
        said.push_back("that it stands on " + first.base->code + " " + first.base_title);
    }
    if (said.empty()) {
        return {};
    }
    return "To enter it as " + code_of(first.name, with_guide) + ", the form must say " +
           listed(said, "and") + ".";
}

std::string words_of(const Separation& separation) {
    std::string words = spoken(separation.id);
    std::replace(words.begin(), words.end(), '.', ' ');
    return words;
}

}  // namespace entrywise
