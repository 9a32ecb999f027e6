#include "report/screen_page.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "base/number.hpp"
#include "base/text.hpp"
#include "quantity/printed_precision.hpp"
#include "report/filled_template.hpp"
#include "report/page_values.hpp"
#include "report/screen_words.hpp"
#include "report/sheet_text.hpp"
#include "report/version.hpp"
#include "style/variant.hpp"

namespace entrywise {

namespace {

std::string_view meaning_of(Status status) {
    switch (status) {
        case Status::unreadable:
            return "could not be read";
        case Status::incomplete:
            return "the form must say more";
        case Status::move:
            return "would stand better elsewhere";
        case Status::look:
            return "points or safety are worth a word";
        case Status::ready:
            return "little at risk, nothing missing";
    }
    return {};
}

/// How many statuses want attention before it.
std::size_t turn_of(Status status) {
    return static_cast<std::size_t>(Status::unreadable) - static_cast<std::size_t>(status);
}

/// The beer's name, or where its recipe stands where none could be read or be told.
std::string name_of(const Screened& screened) {
    const std::string& name = screened.beer.empty() ? screened.entry.recipe_file : screened.beer;
    return name.empty() ? "not read" : name;
}

template <class Quantity>
std::string figure_words(std::string_view name, const Interval80<Quantity>& figure, Quantity unit,
                         int decimals, std::string_view unit_words) {
    const auto text = [&](Quantity value) { return fixed(in(value, unit), decimals); };
    return fmt::format("{} {}{} ({})", name, text(figure.median), unit_words,
                       span_words(text(figure.low), text(figure.high)));
}

std::string figures_words(const BeerFigures& figures) {
    return joined({figure_words("Original gravity", figures.original_gravity, specific_gravity,
                                specific_gravity_decimals, ""),
                   figure_words("final gravity", figures.final_gravity, specific_gravity,
                                specific_gravity_decimals, ""),
                   figure_words("alcohol", figures.alcohol, percent_by_volume, alcohol_decimals, " % vol"),
                   figure_words("bitterness", figures.bitterness, ibu, bitterness_decimals, " IBU"),
                   figure_words("color", figures.color, srm, color_decimals, " SRM"),
                   figure_words("carbonation", figures.carbonation, volume_of_co2, carbonation_decimals,
                                " vol")},
                  ", ") +
           '.';
}

/// A declaration's name as a sentence takes it: `type or description`.
std::string spoken_name(std::string name) {
    std::replace(name.begin(), name.end(), '-', ' ');
    return name;
}

/// What to do about it, short enough for its row.
std::string step_of(const Screened& screened) {
    if (screened.status == Status::move) {
        return fmt::format("to {} {}, {} points fewer", entered_code(screened.best->name.code),
                           screened.best->title, points_text(screened.best->gain));
    }
    if (screened.status != Status::incomplete) {
        return {};
    }
    std::vector<std::string> names = screened.missing;
    std::transform(names.begin(), names.end(), names.begin(), spoken_name);
    return "the form must say " + joined(names, ", ");
}

std::string anchor_of(std::size_t place) {
    return fmt::format("entry-{}", place + 1);
}

Json row_values(const Screened& screened, std::size_t place) {
    Json values{{"anchor", anchor_of(place)},
                {"entry", screened.entry.number},
                {"name", name_of(screened)},
                {"brewer", screened.entry.brewer},
                {"category", category_of(screened)},
                {"status", std::string(word_of(screened.status))},
                {"turn", std::to_string(turn_of(screened.status))},
                {"step", step_of(screened)},
                {"at_risk", ""},
                {"span", ""},
                {"talk", text_values(points_to_talk_about(screened))},
                {"figures", screened.figures ? figures_words(*screened.figures) : std::string()},
                {"allergens", joined(screened.allergens, ", ")}};
    if (screened.at_risk) {
        values["at_risk"] = points_text(screened.at_risk->median);
        values["span"] = span_words(points_text(screened.at_risk->low), points_text(screened.at_risk->high));
    }
    return values;
}

Json status_values(const std::vector<Screened>& entries, const std::vector<std::size_t>& places) {
    Json values = Json::array();
    for (auto status = all_statuses.rbegin(); status != all_statuses.rend(); ++status) {
        const auto count = std::count_if(places.begin(), places.end(),
                                         [&](std::size_t place) { return entries[place].status == *status; });
        values.push_back({{"word", std::string(word_of(*status))},
                          {"meaning", std::string(meaning_of(*status))},
                          {"count", std::to_string(count)}});
    }
    return values;
}

/// The categories entered, in the order of their guide; those that are none come last.
std::vector<std::string> categories_of(const std::vector<Screened>& entries,
                                       std::vector<std::size_t> places) {
    std::stable_sort(places.begin(), places.end(), [&](std::size_t left, std::size_t right) {
        const auto& first = entries[left].style;
        const auto& second = entries[right].style;
        return first && (!second || stands_before(*first, *second));
    });
    std::vector<std::string> categories;
    std::set<std::string> known;
    for (const std::size_t place : places) {
        const std::string category = category_of(entries[place]);
        if (!category.empty() && known.insert(category).second) {
            categories.push_back(category);
        }
    }
    return categories;
}

std::string span_of(const std::string& low, const std::string& high) {
    return low == high ? low : span_words(low, high);
}

Json flight_values(const Flight& flight, const std::vector<Screened>& entries,
                   const std::set<std::size_t>& told) {
    const auto alcohol = [](AlcoholByVolume value) {
        return fixed(in(value, percent_by_volume), alcohol_decimals);
    };
    const auto bitterness = [](Bitterness value) { return fixed(in(value, ibu), bitterness_decimals); };
    Json order = Json::array();
    for (const std::size_t place : flight.order) {
        order.push_back({{"entry", entries[place].entry.number},
                         {"anchor", told.count(place) > 0 ? anchor_of(place) : std::string()}});
    }
    return {{"category", name_of(flight)},
            {"count", std::to_string(flight.order.size())},
            {"count_unit", flight.order.size() == 1 ? " entry" : " entries"},
            {"alcohol", span_of(alcohol(flight.alcohol.low), alcohol(flight.alcohol.high))},
            {"bitterness", span_of(bitterness(flight.bitterness.low), bitterness(flight.bitterness.high))},
            {"order", std::move(order)}};
}

}  // namespace

std::string screen_page(const std::vector<Screened>& entries, const std::vector<std::size_t>& places,
                        const std::vector<Flight>& flights, const std::string& source) {
    std::vector<std::size_t> by_status = places;
    std::stable_sort(by_status.begin(), by_status.end(), [&](std::size_t left, std::size_t right) {
        return turn_of(entries[left].status) < turn_of(entries[right].status);
    });
    Json values;
    values["title"] = fmt::format("{} {}", places.size(), places.size() == 1 ? "entry" : "entries");
    values["source"] = source;
    values["statuses"] = status_values(entries, places);
    values["categories"] = text_values(categories_of(entries, places));
    values["rows"] = Json::array();
    for (const std::size_t place : by_status) {
        values["rows"].push_back(row_values(entries[place], place));
    }
    values["has_rows"] = !places.empty();
    values["flights"] = Json::array();
    const std::set<std::size_t> told(places.begin(), places.end());
    for (const Flight& flight : flights) {
        values["flights"].push_back(flight_values(flight, entries, told));
    }
    values["has_flights"] = !flights.empty();
    values["allergens"] = text_values(allergen_words(entries, places));
    values["has_allergens"] = !values["allergens"].empty();
    Json page;
    page["program"] = program_version();
    page["title"] = values["title"].get<std::string>() + (source.empty() ? "" : " of " + source);
    page["script"] = !places.empty();
    page["bodies"] = Json::array({{{"body", filled("screen.mustache", values)}}});
    return filled("page.mustache", page);
}

}  // namespace entrywise
