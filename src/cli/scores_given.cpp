#include "cli/scores_given.hpp"

#include <string>
#include <string_view>
#include <vector>

#include "base/nearest_word.hpp"
#include "base/number.hpp"
#include "base/text.hpp"
#include "report/sections.hpp"

namespace entrywise {

namespace {

Fault fault_of(std::string found, std::string expected, std::string nearest = {}) {
    return {.place = {"command line", {}},
            .found = "--scores " + std::move(found),
            .expected = std::move(expected),
            .nearest = std::move(nearest),
            .remedy = {}};
}

}  // namespace

Outcome<SectionScores> scores_given(const Call& call, const ScoreSheet& score_sheet) {
    std::vector<std::string> known;
    for (const Section section : sheet_sections) {
        known.emplace_back(word_of(section));
    }
    SectionScores scores;
    std::vector<Fault> faults;
    for (const std::string& text : call.scores) {
        for (const std::string_view pair : split(text, ",")) {
            const std::size_t equals = pair.find('=');
            const std::string name = lowered(trimmed(pair.substr(0, equals)));
            const auto section = section_named(name);
            if (!section || equals == std::string_view::npos) {
                faults.push_back(fault_of(std::string(pair), "a section and its points, such as aroma=9",
                                          section ? std::string() : nearest_word(name, known)));
                continue;
            }
            const auto points = number_from(trimmed(pair.substr(equals + 1)));
            const double most = score_sheet.points[*section];
            if (!points || *points < 0.0 || *points > most) {
                faults.push_back(
                    fault_of(std::string(pair), name + " with points from 0 to " + shortest(most)));
            } else if (scores[*section]) {
                faults.push_back(fault_of(name + " twice", "each section once"));
            } else {
                scores[*section] = points;
            }
        }
    }
    if (!faults.empty()) {
        return faults;
    }
    return scores;
}

}  // namespace entrywise
