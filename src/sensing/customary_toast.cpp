#include "sensing/customary_toast.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <utility>
#include <vector>

#include "quantity/plato.hpp"

namespace entrywise {

namespace {

constexpr std::array<std::pair<std::string_view, double>, 14> malts{{{"pale ale malt", 0.035},
                                                                     {"beech-smoked malt", 0.05},
                                                                     {"mild malt", 0.1},
                                                                     {"vienna malt", 0.12},
                                                                     {"dark wheat malt", 0.15},
                                                                     {"chocolate malt", 0.15},
                                                                     {"munich malt light", 0.18},
                                                                     {"munich malt dark", 0.3},
                                                                     {"aromatic malt", 0.7},
                                                                     {"melanoidin malt", 0.7},
                                                                     {"biscuit malt", 1.0},
                                                                     {"toasted", 1.0},
                                                                     {"amber malt", 1.1},
                                                                     {"brown malt", 1.1}}};

constexpr std::array<std::string_view, 4> pale_malts{"pilsner malt", "six-row malt", "pale malt",
                                                     "pale ale malt"};

bool is_pale_malt(const std::string& name) {
    return std::find(pale_malts.begin(), pale_malts.end(), name) != pale_malts.end();
}

/// What a gram of base malt brings, of the usual ones in equal parts. Of pale malts, a beer has one or the
/// other and not a blend: the toastiest one stands for each, as a beer of it alone is in style.
double of_base(const std::vector<std::string>& bases) {
    double of_pale_malt = 0.0;
    for (const std::string& base : bases) {
        of_pale_malt =
            is_pale_malt(base) ? std::max(of_pale_malt, toast_of_malt(base).value_or(0.0)) : of_pale_malt;
    }
    double sum = 0.0;
    for (const std::string& base : bases) {
        sum += is_pale_malt(base) ? of_pale_malt : toast_of_malt(base).value_or(0.0);
    }
    return bases.empty() ? 0.0 : sum / static_cast<double>(bases.size());
}

/// What the other malts of a gram of grist bring: a tenth of each, half of that of toasted ones.
double of_others(const std::vector<std::string>& others) {
    constexpr double toasted_from = 0.5;
    double sum = 0.0;
    for (const std::string& other : others) {
        const double toast = toast_of_malt(other).value_or(0.0);
        sum += (toast < toasted_from ? 0.1 : 0.05) * toast;
    }
    return sum;
}

/// Grams of grist in a liter: malts hold some 80 % extract, and some 72 % of it is won (common practice).
Concentration grist_for(Extract original_extract) {
    constexpr double extract_won_of_a_gram = 0.80 * 0.72;
    constexpr double grams_of_a_liter_of_water = 1000.0;
    const double wort =
        grams_of_a_liter_of_water * in(specific_gravity_of(original_extract), specific_gravity);
    return 0.01 * in(original_extract, plato) * wort / extract_won_of_a_gram * gram_per_liter;
}

}  // namespace

std::optional<double> toast_of_malt(std::string_view name) {
    const auto* const found =
        std::find_if(malts.begin(), malts.end(), [name](const auto& malt) { return malt.first == name; });
    return found == malts.end() ? std::nullopt : std::optional(found->second);
}

Concentration customary_toast(const Custom& custom, Extract original_extract) {
    constexpr double share_of_base = 0.85;
    const double of_a_gram = share_of_base * of_base(custom.grist_base) + of_others(custom.grist_typical);
    return of_a_gram * grist_for(original_extract);
}

}  // namespace entrywise
