#include "advice/surprise.hpp"

#include <algorithm>
#include <optional>
#include <utility>

#include "base/number.hpp"
#include "judging/tasting.hpp"
#include "quantity/printed_precision.hpp"

namespace entrywise {

namespace {

/// What is compared, and how it is told.
template <class Quantity>
struct Compared {
    std::string name;
    Quantity unit;
    int decimals = 0;
    std::string unit_text;
    std::vector<std::string> shown_by;
};

template <class Quantity>
void add(const Compared<Quantity>& compared, const std::optional<Uncertain<Quantity>>& measured,
         const Estimate<Quantity>& estimate, std::vector<Surprise>& surprises) {
    if (!measured) {
        return;
    }
    const auto interval = estimate.interval();
    const bool above = measured->middle > interval.high;
    if (!above && measured->middle >= interval.low) {
        return;
    }
    const auto text = [&](Quantity value) { return fixed(in(value, compared.unit), compared.decimals); };
    surprises.push_back({compared.shown_by, above ? Direction::above : Direction::below,
                         compared.name + " was measured as " + text(measured->middle) + compared.unit_text +
                             ", where this recipe makes " + text(interval.low) + " to " +
                             text(interval.high)});
}

}  // namespace

std::vector<Surprise> surprises_in(const Recipe& recipe, const Perception& perception) {
    const Measured& measured = recipe.measured;
    if (!measured.final_gravity && !measured.bitterness && !measured.alcohol && !measured.color) {
        return {};
    }
    Recipe as_written = recipe;
    as_written.measured = {};
    const Beer beer = taste(as_written, perception).beer;
    std::vector<Surprise> surprises;
    add<SpecificGravity>(
        {"final gravity", specific_gravity, specific_gravity_decimals, "", {"body", "finish", "sweetness"}},
        measured.final_gravity, beer.final_gravity, surprises);
    add<Bitterness>({"bitterness", ibu, bitterness_decimals, " IBU", {"bitterness", "balance"}},
                    measured.bitterness, beer.bitterness.total, surprises);
    add<AlcoholByVolume>({"alcohol", percent_by_volume, alcohol_decimals, " %", {"alcohol", "warmth"}},
                         measured.alcohol, beer.alcohol, surprises);
    add<Color>({"color", srm, 1, " SRM", {"color"}}, measured.color, beer.color.total, surprises);
    return surprises;
}

std::string surprise_behind(const std::string& attribute, Direction direction,
                            const std::vector<Surprise>& surprises) {
    const auto found = std::find_if(surprises.begin(), surprises.end(), [&](const Surprise& surprise) {
        return surprise.direction == direction &&
               std::find(surprise.shown_by.begin(), surprise.shown_by.end(), attribute) !=
                   surprise.shown_by.end();
    });
    return found == surprises.end() ? std::string() : found->told;
}

}  // namespace entrywise
