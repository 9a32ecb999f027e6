#include "report/screen_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "base/number.hpp"
#include "base/text.hpp"
#include "quantity/printed_precision.hpp"
#include "report/screen_words.hpp"
#include "report/sheet_text.hpp"
#include "style/variant.hpp"

namespace entrywise {

namespace {

constexpr std::size_t entry_points_columns = 6;
constexpr std::size_t alcohol_columns = 6;
constexpr std::size_t bitterness_columns = 5;
constexpr std::size_t status_columns = 14;
constexpr std::size_t entry_indent = 4;

struct Columns {
    std::size_t entry;
    std::size_t beer;
    std::size_t category;
};

Columns columns_for(const std::vector<Screened>& entries, const std::vector<std::size_t>& places,
                    const TextStyle& style) {
    constexpr std::size_t least = 5;
    constexpr std::size_t most = 14;
    std::size_t longest = least;
    for (const std::size_t place : places) {
        longest = std::max(longest, character_count(entries[place].entry.number));
    }
    const std::size_t entry = std::min(longest, most) + 2;
    const std::size_t left = style.width - entry - entry_points_columns - alcohol_columns -
                             bitterness_columns - 2 - status_columns;
    const std::size_t beer = 2 * left / 5;
    return {entry, beer, left - beer};
}

std::string cell(std::string_view text, std::size_t columns, const TextStyle& style) {
    return at_left(cut_end(shown(text, style), columns - 1, style), columns);
}

std::string status_text(const Screened& screened) {
    const std::string word(word_of(screened.status));
    return screened.status == Status::move ? word + " to " + entered_code(screened.best->name.code) : word;
}

std::string row(const Screened& screened, const Columns& columns, const TextStyle& style) {
    const std::string points = screened.at_risk ? points_text(screened.at_risk->median) : "";
    const std::string alcohol =
        screened.figures ? fixed(in(screened.figures->alcohol.median, percent_by_volume), alcohol_decimals)
                         : "";
    const std::string bitterness =
        screened.figures ? fixed(in(screened.figures->bitterness.median, ibu), bitterness_decimals) : "";
    return without_blanks_at_end(cell(screened.entry.number, columns.entry, style) +
                                 cell(screened.beer, columns.beer, style) +
                                 cell(category_of(screened), columns.category, style) +
                                 at_right(points, entry_points_columns) + at_right(alcohol, alcohol_columns) +
                                 at_right(bitterness, bitterness_columns) + "  " + status_text(screened)) +
           '\n';
}

std::string table_text(const std::vector<Screened>& entries, const std::vector<std::size_t>& places,
                       const TextStyle& style) {
    const Columns columns = columns_for(entries, places, style);
    std::string text =
        bold(at_left("Entry", columns.entry) + at_left("Beer", columns.beer) +
                 at_left("Category", columns.category) + at_right("Risk", entry_points_columns) +
                 at_right("ABV", alcohol_columns) + at_right("IBU", bitterness_columns) + "  Status",
             style) +
        '\n';
    for (const std::size_t place : places) {
        text += row(entries[place], columns, style);
    }
    return text + paragraph("Risk: points that the recipe puts at risk in the declared category, of 50.", 0,
                            0, style);
}

std::string heading_of(const Screened& screened, const TextStyle& style) {
    std::string text = screened.entry.number;
    for (const std::string& part : {screened.beer, category_of(screened), screened.entry.brewer}) {
        text += part.empty() ? "" : ", " + part;
    }
    text += fmt::format(": {}", word_of(screened.status));
    if (screened.at_risk) {
        text += fmt::format(", {} points at risk ({})", points_text(screened.at_risk->median),
                            points_interval_text(*screened.at_risk, style));
    }
    return bold(paragraph(shown(text, style), 0, entry_indent, style), style);
}

std::string talk_text(const std::vector<Screened>& entries, const std::vector<std::size_t>& places,
                      const TextStyle& style) {
    std::string text;
    for (const std::size_t place : places) {
        const Screened& screened = entries[place];
        if (screened.status == Status::ready && screened.duplicate_of.empty()) {
            continue;
        }
        text += heading_of(screened, style);
        for (const std::string& point : points_to_talk_about(screened)) {
            text += paragraph(shown(point, style), entry_indent - 2, entry_indent, style);
        }
    }
    return text.empty() ? text : '\n' + bold("To talk about", style) + '\n' + text;
}

std::string span_of(const std::string& low, const std::string& high, const TextStyle& style) {
    return low == high ? low : low + std::string(dash(style)) + high;
}

constexpr std::size_t count_columns = 8;
constexpr std::size_t flight_span_columns = 10;

std::size_t flight_columns(const TextStyle& style) {
    constexpr std::size_t enough = 36;
    return std::min(enough, style.width - count_columns - 2 * flight_span_columns);
}

/// The row of a flight, with its entries behind it where they fit into the line, and else below.
std::string flight_text(const Flight& flight, const std::vector<Screened>& entries, const TextStyle& style) {
    const auto alcohol = [](AlcoholByVolume value) {
        return fixed(in(value, percent_by_volume), alcohol_decimals);
    };
    const auto bitterness = [](Bitterness value) { return fixed(in(value, ibu), bitterness_decimals); };
    const std::string line =
        cell(name_of(flight), flight_columns(style), style) +
        at_right(std::to_string(flight.order.size()), count_columns) +
        at_right(span_of(alcohol(flight.alcohol.low), alcohol(flight.alcohol.high), style),
                 flight_span_columns) +
        at_right(span_of(bitterness(flight.bitterness.low), bitterness(flight.bitterness.high), style),
                 flight_span_columns);
    const std::string order = shown(numbers_of(entries, flight.order), style);
    const bool fits = character_count(line) + 2 + character_count(order) <= style.width;
    return fits ? line + "  " + order + '\n'
                : line + '\n' + paragraph(order, entry_indent - 2, entry_indent, style);
}

std::string flights_text(const std::vector<Flight>& flights, const std::vector<Screened>& entries,
                         const TextStyle& style) {
    if (flights.empty()) {
        return {};
    }
    const std::string header = at_left("Flights, from light to strong", flight_columns(style)) +
                               at_right("Entries", count_columns) + at_right("ABV", flight_span_columns) +
                               at_right("IBU", flight_span_columns);
    std::string text = '\n' + bold(header, style) + '\n';
    for (const Flight& flight : flights) {
        text += flight_text(flight, entries, style);
    }
    return text;
}

std::string allergens_text(const std::vector<Screened>& entries, const std::vector<std::size_t>& places,
                           const TextStyle& style) {
    const std::vector<std::string> texts = allergen_words(entries, places);
    return texts.empty()
               ? std::string()
               : '\n' + paragraph(shown("Allergens: " + joined(texts, "; ") + ".", style), 0, 2, style);
}

std::string counts_text(const std::vector<Screened>& entries, const std::vector<std::size_t>& places,
                        const TextStyle& style) {
    std::map<Status, std::size_t> counts;
    for (const std::size_t place : places) {
        ++counts[entries[place].status];
    }
    std::vector<std::string> texts;
    for (const auto& [status, count] : counts) {
        const char* const what = status == Status::look   ? "to look at"
                                 : status == Status::move ? "to move"
                                                          : "";
        texts.push_back(fmt::format("{} {}", count, *what == '\0' ? word_of(status) : what));
    }
    const std::string all = fmt::format("{} {}", places.size(), places.size() == 1 ? "entry" : "entries");
    return '\n' + paragraph(all + (texts.empty() ? "" : ": " + joined(texts, ", ")) + '.', 0, 0, style);
}

}  // namespace

std::string screen_text(const std::vector<Screened>& entries, const std::vector<std::size_t>& places,
                        const std::vector<Flight>& flights, const TextStyle& style) {
    // Of ten thousand entries it takes megabytes, which are not copied.
    std::string text = places.empty() ? std::string() : table_text(entries, places, style);
    text += talk_text(entries, places, style);
    text += flights_text(flights, entries, style);
    text += allergens_text(entries, places, style);
    text += counts_text(entries, places, style);
    text.erase(0, text.find_first_not_of('\n'));
    return text;
}

}  // namespace entrywise
