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

std::string name_of(const RankedStyle& ranked) {
    const std::string name = ranked.name.code + " " + ranked.title;
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
        name_of(*fewest), points_text(fewest->at_risk.median));
}

std::string elsewhere_words(const Ranking& ranking) {
    if (!ranking.declared || *ranking.declared == 0) {
        return {};
    }
    const RankedStyle& first = ranking.styles.front();
    const RankedStyle& declared = ranking.styles[*ranking.declared];
    return fmt::format("Declared {} comes in place {}; {} leads. {}", declared.name.code,
                       *ranking.declared + 1, name_of(first), verdict_on(declared, first));
}

std::string declaration_words(const RankedStyle& first) {
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
    return "To enter it as " + first.name.code + ", the form must say " + listed(said, "and") + ".";
}

std::string words_of(const Separation& separation) {
    std::string words = spoken(separation.id);
    std::replace(words.begin(), words.end(), '.', ' ');
    return words;
}

}  // namespace entrywise
