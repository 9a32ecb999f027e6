#include "advice/standing.hpp"

#include <algorithm>
#include <optional>
#include <utility>

#include "advice/note.hpp"
#include "base/number.hpp"
#include "judging/deviation.hpp"

namespace entrywise {

namespace {

constexpr double middling_color = 15.0;

Finding finding_of(const Deviation& deviation, Direction direction, const Tasting& tasting) {
    return {.section = deviation.section,
            .attribute = word_of(deviation),
            .direction = direction,
            .level = level_of(deviation, tasting.beer, tasting.profile),
            .accepted_low = deviation.accepted_low,
            .accepted_high = deviation.accepted_high,
            .assumed = deviation.assumed,
            .told_by_number = deviation.told_by_number};
}

bool lies_on(double distance, Direction direction) {
    return direction == Direction::above ? distance > 0.0 : distance < 0.0;
}

double chance_of(const std::vector<bool>& draws) {
    return draws.empty() ? 0.0
                         : static_cast<double>(std::count(draws.begin(), draws.end(), true)) /
                               static_cast<double>(draws.size());
}

/// The attribute itself, and what tells the same where a style is silent on it.
std::vector<RemarkTarget> tellers_of(const RemarkTarget& target) {
    static const std::vector<std::pair<RemarkTarget, RemarkTarget>> same{
        {{Section::flavor, "sweetness"}, {Section::flavor, "finish"}},
        {{Section::flavor, "bitterness"}, {Section::flavor, "balance"}},
        {{Section::flavor, "alcohol"}, {Section::mouthfeel, "warmth"}},
    };
    std::vector<RemarkTarget> tellers{target};
    for (const auto& [first, second] : same) {
        if (target == first || target == second) {
            tellers.push_back(target == first ? second : first);
        }
    }
    if (target.section == Section::aroma || target.section == Section::flavor) {
        const bool smelled = target.section == Section::aroma;
        tellers.push_back({smelled ? Section::flavor : Section::aroma, target.attribute});
    }
    return tellers;
}

Standing by_deviation(const HeardRemark& remark, const Deviation& deviation, const Tasting& tasting) {
    Standing standing;
    standing.remark = remark;
    standing.finding = finding_of(deviation, remark.direction, tasting);
    standing.by_style = true;
    standing.on_that_side.assign(tasting.beer.alcohol.count(), false);
    for (std::size_t draw = 0; draw < deviation.steps.size(); ++draw) {
        standing.on_that_side[draw] = lies_on(deviation.steps[draw], remark.direction);
    }
    standing.explained = chance_of(standing.on_that_side);
    return standing;
}

/// Against the middle of the scale.
Standing by_scale(const HeardRemark& remark, const Tasting& tasting) {
    Standing standing;
    standing.remark = remark;
    const Section section = remark.target.section.value_or(Section::overall);
    const auto attribute = attribute_named(section, remark.target.attribute);
    double middle = middling_color;
    std::vector<double> levels;
    if (attribute) {
        middle = 0.5 * highest_level(*attribute);
        levels = tasting.profile.level[*attribute].draws();
    } else {
        for (const Color& color : tasting.beer.color.total.draws()) {
            levels.push_back(in(color, srm));
        }
    }
    for (const double level : levels) {
        standing.on_that_side.push_back(lies_on(level - middle, remark.direction));
    }
    standing.explained = chance_of(standing.on_that_side);
    standing.finding = {.section = section,
                        .attribute = remark.target.attribute,
                        .direction = remark.direction,
                        .level = Estimate<double>(std::move(levels)).median(),
                        .accepted_low = middle,
                        .accepted_high = middle};
    return standing;
}

}  // namespace

Standing standing_on(const HeardRemark& remark, const Tasting& tasting, const std::optional<Style>& style,
                     const ScoreSheet& score_sheet) {
    if (!remark.target.section) {
        Standing fault;
        fault.remark = remark;
        fault.finding.attribute = remark.target.attribute;
        return fault;
    }
    if (style) {
        const std::vector<Deviation> deviations =
            deviations_of(Impression(tasting.beer, tasting.profile),
                          Yardstick(*style, tasting.profile.perception), score_sheet);
        for (const RemarkTarget& target : tellers_of(remark.target)) {
            const auto found =
                std::find_if(deviations.begin(), deviations.end(), [&](const Deviation& deviation) {
                    return deviation.section == target.section && word_of(deviation) == target.attribute;
                });
            if (found != deviations.end()) {
                return by_deviation(remark, *found, tasting);
            }
        }
    }
    return by_scale(remark, tasting);
}

std::string level_in_words(const Standing& standing) {
    const Finding& finding = standing.finding;
    const auto attribute = attribute_named(finding.section, finding.attribute);
    if (!attribute) {
        return fixed(finding.level, finding.level < 10.0 ? 1 : 0) + " SRM";
    }
    const bool plainly_outside = standing.by_style && standing.explained >= 0.5 && !is_likely_inside(finding);
    return plainly_outside ? level_in_words(finding)
                           : std::string(word_for(scale_of(*attribute), finding.level));
}

}  // namespace entrywise
