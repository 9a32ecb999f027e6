#include "report/page_profile.hpp"

#include "report/capitalized.hpp"
#include "report/picture_level.hpp"
#include "report/sections.hpp"
#include "report/sensed.hpp"

namespace entrywise {

namespace {

Json row_of(const Check& check, const SensedTrait& trait) {
    const auto& accepted = check.style.expected[trait.attribute];
    return {{"name", spoken(word_of(trait.attribute))},
            {"level", std::string(word_for(scale_of(trait.attribute), trait.level.median))},
            {"side", std::string(trait.side)},
            {"is_above", trait.side == "above"},
            {"silent", !accepted},
            {"picture", level_picture(trait.attribute, accepted, trait.level, !trait.side.empty())}};
}

}  // namespace

Json profile_values(const Check& check) {
    Json sections = Json::array();
    for (const Section section : {Section::aroma, Section::flavor, Section::appearance, Section::mouthfeel}) {
        Json rows = Json::array();
        for (const SensedTrait& trait : sensed_in(check, section)) {
            rows.push_back(row_of(check, trait));
        }
        if (!rows.empty()) {
            sections.push_back({{"name", capitalized(std::string(title_of(section)))},
                                {"word", std::string(word_of(section))},
                                {"rows", std::move(rows)}});
        }
    }
    return sections;
}

}  // namespace entrywise
