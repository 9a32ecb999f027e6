#include "report/screen_json.hpp"

#include <algorithm>
#include <map>
#include <utility>

#include "quantity/printed_precision.hpp"
#include "report/check_json.hpp"
#include "report/fault_json.hpp"
#include "report/node_json.hpp"
#include "report/version.hpp"
#include "screening/fingerprint.hpp"

namespace entrywise {

namespace {

Json style_name_json(const StyleName& style) {
    return {{"guide", style.guide}, {"code", style.code}};
}

Json best_json(const BestPlace& best) {
    Json result;
    result["style"] = style_name_json(best.name);
    result["style"]["name"] = best.title;
    if (best.base) {
        result["style"]["base"] = style_name_json(*best.base);
    }
    result["at_risk"] =
        json_interval({best.at_risk.median, best.at_risk.low, best.at_risk.high}, json_points_decimals);
    result["gain"] = json_number(best.gain, 1);
    result["declared"] = best.is_declared;
    return result;
}

void add_entry(Json& line, const ClubEntry& entry, Status status) {
    line["entry"] = entry.number;
    line["status"] = std::string(word_of(status));
    if (!entry.brewer.empty()) {
        line["brewer"] = entry.brewer;
    }
    if (!entry.columns.empty()) {
        Json& columns = line["columns"] = Json::object();
        for (const EntryColumn& column : entry.columns) {
            columns[column.name] = node_json(column.value);
        }
    }
}

template <class Quantity>
void add_figure(Json& beer, const char* key, const Interval80<Quantity>& figure, Quantity unit, int decimals,
                const char* unit_text) {
    Json value =
        json_interval({in(figure.median, unit), in(figure.low, unit), in(figure.high, unit)}, decimals + 1);
    value["unit"] = unit_text;
    beer[key] = std::move(value);
}

/// The numbers of a beer that is held against no style.
Json figures_json(const BeerFigures& figures) {
    Json beer = Json::object();
    add_figure(beer, "original_gravity", figures.original_gravity, specific_gravity,
               specific_gravity_decimals, "SG");
    add_figure(beer, "final_gravity", figures.final_gravity, specific_gravity, specific_gravity_decimals,
               "SG");
    add_figure(beer, "alcohol", figures.alcohol, percent_by_volume, alcohol_decimals, "% vol");
    add_figure(beer, "bitterness", figures.bitterness, ibu, bitterness_decimals, "IBU");
    add_figure(beer, "color", figures.color, srm, color_decimals, "SRM");
    add_figure(beer, "carbonation", figures.carbonation, volume_of_co2, carbonation_decimals, "vol");
    return beer;
}

Json without_a_style(const Screened& screened) {
    Json document;
    document["recipe"] = {{"name", screened.beer}, {"file", screened.entry.recipe_file}};
    document["style"] = nullptr;
    document["beer"] = figures_json(*screened.figures);
    for (const char* const key : {"numbers", "profile", "sheet", "findings"}) {
        document[key] = nullptr;
    }
    document["cautions"] = Json::array();
    for (const Caution& caution : screened.cautions) {
        document["cautions"].push_back({{"kind", caution.kind}, {"text", caution.text}});
    }
    return document;
}

Json of_a_style(const Check& check, const ScoreSheet& score_sheet) {
    Json document = check_json(check, score_sheet);
    for (Json& finding : document["findings"]) {
        finding.erase("causes");
        finding.erase("corrections");
    }
    return document;
}

Json table_json(const CompetitionTable& table) {
    return {{"code", table.code}, {"name", table.name}};
}

Json ends_json(double low, double high, int decimals) {
    return Json::array({json_number(low, decimals), json_number(high, decimals)});
}

Json flights_json(const std::vector<Flight>& flights, const std::vector<Screened>& screened) {
    Json result = Json::array();
    for (const Flight& flight : flights) {
        Json one;
        if (flight.table) {
            one["table"] = table_json(*flight.table);
        } else {
            one["style"] = style_name_json(flight.category);
            one["style"]["name"] = flight.title;
        }
        one["alcohol"] = ends_json(in(flight.alcohol.low, percent_by_volume),
                                   in(flight.alcohol.high, percent_by_volume), alcohol_decimals);
        one["bitterness"] =
            ends_json(in(flight.bitterness.low, ibu), in(flight.bitterness.high, ibu), bitterness_decimals);
        one["order"] = Json::array();
        for (const std::size_t place : flight.order) {
            one["order"].push_back(screened[place].entry.number);
        }
        result.push_back(std::move(one));
    }
    return result;
}

Json duplicates_json(const std::vector<Screened>& entries) {
    Json result = Json::array();
    for (const Screened& screened : entries) {
        if (!screened.duplicate_of.empty()) {
            result.push_back({{"entry", screened.entry.number}, {"duplicate_of", screened.duplicate_of}});
        }
    }
    return result;
}

Json counts_json(const std::vector<Screened>& entries) {
    Json result;
    result["entries"] = entries.size();
    for (const Status status : all_statuses) {
        result[std::string(word_of(status))] =
            std::count_if(entries.begin(), entries.end(),
                          [&](const Screened& screened) { return screened.status == status; });
    }
    return result;
}

}  // namespace

Json screening_json(const Screening& screening, const ScoreSheet& score_sheet) {
    const Screened& screened = screening.screened;
    Json line;
    if (screened.status == Status::unreadable) {
        line["format"] = "entrywise/fault/1";
        line["program"] = program_version();
        add_entry(line, screened.entry, screened.status);
        line["faults"] = fault_list_json(screened.faults);
        return line;
    }
    line["format"] = "entrywise/check/1";
    line["program"] = program_version();
    add_entry(line, screened.entry, screened.status);
    Json checked = screening.check ? of_a_style(*screening.check, score_sheet) : without_a_style(screened);
    for (auto& [key, value] : checked.items()) {
        if (!line.contains(key)) {
            line[key] = std::move(value);
        }
    }
    line["best"] = screened.best ? best_json(*screened.best) : Json(nullptr);
    if (screened.seat) {
        line["accepted"] = screened.seat->is_accepted;
        line["table"] = screened.seat->table ? table_json(*screened.seat->table) : Json(nullptr);
    }
    line["missing"] = screened.missing;
    line["allergens"] = screened.allergens;
    line["fingerprint"] = fingerprint_text(screened.fingerprint);
    return line;
}

std::string json_line(const Json& document) {
    constexpr int in_one_line = -1;
    constexpr bool ascii_only = true;
    return document.dump(in_one_line, ' ', ascii_only, Json::error_handler_t::replace) + '\n';
}

std::string screen_json_text(const std::vector<std::string>& objects, const std::vector<Screened>& screened,
                             const std::vector<std::size_t>& places, const std::vector<Flight>& flights) {
    std::string text = R"({"format": "entrywise/screen/1", "program": )" + Json(program_version()).dump() +
                       ",\n\"entries\": [\n";
    for (std::size_t index = 0; index < places.size(); ++index) {
        const std::string& object = objects[places[index]];
        text.append(object, 0, object.find_last_not_of('\n') + 1);
        text += index + 1 < places.size() ? ",\n" : "\n";
    }
    text += "],\n\"flights\": " + json_text(flights_json(flights, screened));
    text += ",\"duplicates\": " + json_text(duplicates_json(screened));
    return text + ",\"counts\": " + json_text(counts_json(screened)) + "}\n";
}

}  // namespace entrywise
