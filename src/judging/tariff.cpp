#include "judging/tariff.hpp"

#include <algorithm>
#include <string>
#include <vector>

namespace entrywise {

namespace {

bool holds(const std::vector<std::string>& names, const std::string& name) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

std::optional<std::size_t> miss_named(const std::string& name, const ScoreSheet& score_sheet) {
    for (std::size_t miss = 0; miss < score_sheet.one_miss.size(); ++miss) {
        if (holds(score_sheet.one_miss[miss], name)) {
            return miss;
        }
    }
    return std::nullopt;
}

std::optional<std::size_t> cause_shown_by(const std::string& name, const ScoreSheet& score_sheet) {
    for (std::size_t cause = 0; cause < score_sheet.causes.size(); ++cause) {
        if (holds(score_sheet.causes[cause].shown_by, name)) {
            return cause;
        }
    }
    return std::nullopt;
}

}  // namespace

std::size_t place_of(const Deviation& deviation) {
    return deviation.attribute ? static_cast<std::size_t>(*deviation.attribute) : place_of_color;
}

std::string_view name_of_sensed(std::size_t sensed) {
    return sensed == place_of_color ? std::string_view("appearance.color")
                                    : name_of(all_attributes()[sensed]);
}

Tariff::Tariff(const ScoreSheet& score_sheet)
    : score_sheet_(&score_sheet), cost_of_miss_(score_sheet), shown_by_(score_sheet.causes.size()) {
    for (std::size_t sensed = 0; sensed < sensed_count; ++sensed) {
        const std::string name(name_of_sensed(sensed));
        cause_[sensed] = cause_shown_by(name, score_sheet);
        if (cause_[sensed]) {
            shown_by_[*cause_[sensed]].push_back(sensed);
        }
        miss_above_[sensed] = miss_named(name + ".above", score_sheet);
        miss_below_[sensed] = miss_named(name + ".below", score_sheet);
    }
}

}  // namespace entrywise
