#include "report/finding_title.hpp"

#include <fmt/format.h>

#include <array>
#include <string_view>

#include "base/text.hpp"
#include "report/sections.hpp"

namespace entrywise {

namespace {

/// What is found, where it is neither above nor below the style.
std::string_view found_beside_levels(std::string_view attribute) {
    struct Title {
        std::string_view attribute;
        std::string_view title;
    };
    static constexpr std::array<Title, 5> titles{{{"declaration", "missing declaration"},
                                                  {"hop_kind", "another kind of hops"},
                                                  {"malt_kind", "another kind of malt"},
                                                  {"ester_kind", "another kind of fruit"},
                                                  {"phenol_kind", "another kind of spice"}}};
    for (const Title& each : titles) {
        if (each.attribute == attribute) {
            return each.title;
        }
    }
    return {};
}

std::string_view side_of(const Finding& finding) {
    return finding.direction == Direction::above ? "above" : "below";
}

std::string name_in(const Finding& finding, const std::vector<Section>& sections) {
    std::vector<std::string> titles;
    for (const Section section : sections) {
        titles.emplace_back(title_of(section));
    }
    const std::string_view found = found_beside_levels(finding.attribute);
    return fmt::format("{} ({})", found.empty() ? spoken(finding.attribute) : std::string(found),
                       listed(titles, "and"));
}

}  // namespace

std::string title_of(const Finding& finding) {
    const std::string_view found = found_beside_levels(finding.attribute);
    return found.empty() ? fmt::format("{}: {} {} the style", title_of(finding.section),
                                       spoken(finding.attribute), side_of(finding))
                         : fmt::format("{}: {}", title_of(finding.section), found);
}

std::string name_of(const Finding& finding) {
    return name_in(finding, {finding.section});
}

std::string in_a_sentence(const Finding& finding) {
    return in_a_sentence(finding, {finding.section});
}

std::string in_a_sentence(const Finding& finding, const std::vector<Section>& sections) {
    const std::string name = name_in(finding, sections);
    return found_beside_levels(finding.attribute).empty()
               ? fmt::format("{}, {} the style", name, side_of(finding))
               : name;
}

}  // namespace entrywise
