#include "report/place_text.hpp"

#include <fmt/format.h>

#include <cmath>

#include "base/number.hpp"
#include "report/sheet_text.hpp"

namespace entrywise {

namespace {

std::string title_of(const BestPlace& best) {
    return best.name.code + ' ' + best.title + (best.base ? " on " + best.base->code : "");
}

/// By the points as they are printed.
std::string gain_words(double gain) {
    const double points = rounded(gain, 1);
    if (points > 0.0) {
        return fmt::format("{} fewer", points_text(points));
    }
    return points < 0.0 ? fmt::format("{} more, but all its numbers and customs suit the beer better",
                                      points_text(-points))
                        : std::string("as many, but its numbers and customs suit the beer better");
}

std::string sentence_on(const BestPlace& best, const TextStyle& style) {
    if (best.is_declared) {
        return fmt::format("Nowhere: of all styles of {} this one suits it best.", best.name.guide);
    }
    return fmt::format("As {}: {} points at risk ({}{}{}), {}.", title_of(best),
                       points_text(best.at_risk.median), points_text(best.at_risk.low), dash(style),
                       points_text(best.at_risk.high), gain_words(best.gain));
}

}  // namespace

std::string place_text(const BestPlace& best, const TextStyle& style) {
    return bold("Where else to enter", style) + '\n' +
           paragraph(shown(sentence_on(best, style), style), 4, 4, style) +
           paragraph("The command rank tells all places in order.", 4, 4, style);
}

}  // namespace entrywise
