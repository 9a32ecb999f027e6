#include "page/scores_in.hpp"

#include <fmt/format.h>

#include "base/number.hpp"
#include "reading/fault_log.hpp"

namespace entrywise {

Outcome<SectionScores> scores_in(const Node* scores, const ScoreSheet& score_sheet) {
    SectionScores given;
    FaultLog faults("the scores");
    for (const Entry& entry : scores == nullptr ? std::vector<Entry>() : scores->entries) {
        const auto section = section_named(entry.key);
        if (!section) {
            faults.add(entry.key_position,
                       {.found = in_quotes(entry.key), .expected = "a section of the sheet"});
            continue;
        }
        const auto points = number_from(entry.value.text);
        const double most = score_sheet.points[*section];
        if (!points || *points < 0.0 || *points > most) {
            faults.add(entry.value.position,
                       {.found = fmt::format("{} for {}", in_quotes(entry.value.text), entry.key),
                        .expected = fmt::format("points from 0 to {}", shortest(most))});
            continue;
        }
        given[*section] = points;
    }
    if (!faults.empty()) {
        return faults.in_order();
    }
    return given;
}

}  // namespace entrywise
