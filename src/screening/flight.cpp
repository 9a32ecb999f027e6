#include "screening/flight.hpp"

#include <algorithm>
#include <map>
#include <tuple>

#include "base/number.hpp"
#include "base/text.hpp"
#include "judging/palate_step.hpp"
#include "style/variant.hpp"

namespace entrywise {

namespace {

double assertiveness(const BeerFigures& figures) {
    return palate_steps(figures.alcohol.median) + palate_steps(figures.bitterness.median);
}

/// The number that a code begins with, and the rest.
std::tuple<std::string, double, std::string> in_parts(const StyleName& name) {
    const std::size_t digits = std::min(name.code.find_first_not_of("0123456789"), name.code.size());
    const auto number = number_from(name.code.substr(0, digits));
    constexpr double behind_all = 1e9;
    return {name.guide, number.value_or(behind_all), name.code.substr(digits)};
}

/// What stands behind the tables, and the code of the table or category.
struct InOrder {
    bool operator()(const std::pair<bool, StyleName>& first, const std::pair<bool, StyleName>& second) const {
        return first.first != second.first ? second.first : stands_before(first.second, second.second);
    }
};

void put_in_order(Flight& flight, const std::vector<Screened>& entries) {
    std::stable_sort(flight.order.begin(), flight.order.end(), [&](std::size_t left, std::size_t right) {
        return assertiveness(*entries[left].figures) < assertiveness(*entries[right].figures);
    });
    const auto& first = *entries[flight.order.front()].figures;
    flight.alcohol = {first.alcohol.median, first.alcohol.median};
    flight.bitterness = {first.bitterness.median, first.bitterness.median};
    for (const std::size_t place : flight.order) {
        const BeerFigures& figures = *entries[place].figures;
        flight.alcohol.low = std::min(flight.alcohol.low, figures.alcohol.median);
        flight.alcohol.high = std::max(flight.alcohol.high, figures.alcohol.median);
        flight.bitterness.low = std::min(flight.bitterness.low, figures.bitterness.median);
        flight.bitterness.high = std::max(flight.bitterness.high, figures.bitterness.median);
    }
}

/// A variant's title is that of the style and what it is a variant by: `Saison (standard, pale)`.
std::string title_of(const Screened& screened, const StyleName& category) {
    const std::string& title = screened.style_title;
    return screened.style->code == category.code
               ? title
               : std::string(trimmed(std::string_view(title).substr(0, title.find_first_of(":("))));
}

}  // namespace

bool stands_before(const StyleName& first, const StyleName& second) {
    return in_parts(first) < in_parts(second);
}

std::vector<Flight> flights_of(const std::vector<Screened>& entries) {
    std::map<std::pair<bool, StyleName>, Flight, InOrder> flights;
    for (std::size_t place = 0; place < entries.size(); ++place) {
        const Screened& screened = entries[place];
        const bool is_refused = screened.seat && !screened.seat->is_accepted;
        if (!screened.style || !screened.figures || is_refused) {
            continue;
        }
        const StyleName category{screened.style->guide, entered_code(screened.style->code)};
        const auto table = screened.seat ? screened.seat->table : std::nullopt;
        Flight& flight = flights[{!table, table ? StyleName{{}, table->code} : category}];
        if (flight.order.empty()) {
            flight.category = category;
            flight.title = table ? table->name : title_of(screened, category);
            flight.table = table;
        }
        flight.order.push_back(place);
    }
    std::vector<Flight> result;
    for (auto& [place, flight] : flights) {
        put_in_order(flight, entries);
        result.push_back(std::move(flight));
    }
    return result;
}

}  // namespace entrywise
