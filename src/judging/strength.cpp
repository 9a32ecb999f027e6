#include "judging/strength.hpp"

#include <algorithm>
#include <cmath>
#include <string_view>
#include <utility>

namespace entrywise {

namespace {

constexpr std::size_t most_strengths = 3;
constexpr double likely = 0.8;

/// A level of medium-low or more is meant to be met with; on the other scales a style is known by a word or
/// two next to one another (working values).
constexpr double marked_level = 3.0;
constexpr double narrow_span = 1.0;

/// How much an attribute makes a style what it is; zero where it does not. On a scale of intensity it is the
/// level that must at least be there. On the other scales it grows with the distance from the middle of the
/// scale, where most beers are.
double mark_of_style(SensoryScale scale, const Deviation& deviation) {
    if (scale == SensoryScale::intensity) {
        return deviation.accepted_low >= marked_level ? deviation.accepted_low : 0.0;
    }
    if (deviation.accepted_high - deviation.accepted_low > narrow_span) {
        return 0.0;
    }
    const double middle_of_scale = 0.5 * static_cast<double>(words_of(scale).size() - 1);
    const double middle = 0.5 * (deviation.accepted_low + deviation.accepted_high);
    return marked_level + std::abs(middle - middle_of_scale);
}

double share_inside(const Deviation& deviation) {
    if (deviation.is_inside) {
        return 1.0;
    }
    const auto inside = std::count(deviation.steps.begin(), deviation.steps.end(), 0.0);
    return static_cast<double>(inside) / static_cast<double>(deviation.steps.size());
}

bool has_finding(const std::vector<Finding>& findings, std::string_view attribute) {
    return std::any_of(findings.begin(), findings.end(),
                       [&](const Finding& finding) { return finding.attribute == attribute; });
}

/// Whether what shows the same cause of the score sheet has a finding: a beer too bitter is not praised for
/// its balance.
bool is_beside_a_finding(const Deviation& deviation, const std::vector<Deviation>& deviations,
                         const std::vector<Finding>& findings, const Tariff& tariff) {
    const auto cause = tariff.cause_of(place_of(deviation));
    return cause && std::any_of(deviations.begin(), deviations.end(), [&](const Deviation& other) {
               return tariff.cause_of(place_of(other)) == cause && has_finding(findings, word_of(other));
           });
}

struct Marked {
    const Deviation* deviation = nullptr;
    double mark = 0.0;
};

}  // namespace

std::vector<Strength> strengths_of(const std::vector<Deviation>& deviations,
                                   const std::vector<Finding>& findings, const Beer& beer,
                                   const Profile& profile, const Tariff& tariff) {
    std::vector<Marked> marked;
    for (const Deviation& deviation : deviations) {
        const auto attribute = deviation.attribute;
        const double mark = attribute ? mark_of_style(scale_of(*attribute), deviation) : 0.0;
        if (!deviation.assumed && mark > 0.0 && share_inside(deviation) >= likely &&
            !has_finding(findings, word_of(*attribute)) &&
            !is_beside_a_finding(deviation, deviations, findings, tariff)) {
            marked.push_back({&deviation, mark});
        }
    }
    std::stable_sort(marked.begin(), marked.end(),
                     [](const Marked& first, const Marked& second) { return first.mark > second.mark; });
    std::vector<Strength> strengths;
    for (const auto& [deviation, mark] : marked) {
        const Attribute attribute = *deviation->attribute;
        const bool named = std::any_of(strengths.begin(), strengths.end(), [&](const Strength& strength) {
            return word_of(strength.attribute) == word_of(attribute);
        });
        if (!named && strengths.size() < most_strengths) {
            strengths.push_back({attribute, level_of(*deviation, beer, profile), deviation->accepted_low,
                                 deviation->accepted_high});
        }
    }
    return strengths;
}

}  // namespace entrywise
