#include "report/screen_csv.hpp"

#include <algorithm>

#include "base/number.hpp"
#include "base/text.hpp"
#include "quantity/printed_precision.hpp"
#include "report/csv_text.hpp"
#include "report/node_json.hpp"
#include "report/sheet_text.hpp"
#include "screening/fingerprint.hpp"

namespace entrywise {

namespace {

constexpr std::size_t interval_fields = 3;

std::vector<std::string> names_of_fields() {
    std::vector<std::string> names{"entry",  "brewer",  "beer",        "category",    "style_name",
                                   "status", "at_risk", "at_risk_low", "at_risk_high"};
    for (const std::string number : {"original_gravity", "final_gravity", "alcohol_percent", "bitterness_ibu",
                                     "color_srm", "carbonation_volumes"}) {
        for (const std::string end : {"", "_low", "_high"}) {
            names.push_back(number + end);
        }
    }
    for (const char* const name : {"best", "best_name", "best_at_risk", "gain", "missing", "allergens",
                                   "cautions", "findings", "duplicate_of", "fingerprint", "faults"}) {
        names.emplace_back(name);
    }
    return names;
}

void add_nothing(std::vector<std::string>& row, std::size_t fields) {
    row.insert(row.end(), fields, std::string());
}

template <class Quantity>
void add_interval(std::vector<std::string>& row, const Interval80<Quantity>& interval, Quantity unit,
                  int decimals) {
    for (const Quantity& value : {interval.median, interval.low, interval.high}) {
        row.push_back(fixed(in(value, unit), decimals));
    }
}

void add_figures(std::vector<std::string>& row, const std::optional<BeerFigures>& figures) {
    if (!figures) {
        constexpr std::size_t numbers = 6;
        add_nothing(row, numbers * interval_fields);
        return;
    }
    add_interval(row, figures->original_gravity, specific_gravity, specific_gravity_decimals);
    add_interval(row, figures->final_gravity, specific_gravity, specific_gravity_decimals);
    add_interval(row, figures->alcohol, percent_by_volume, alcohol_decimals);
    add_interval(row, figures->bitterness, ibu, bitterness_decimals);
    add_interval(row, figures->color, srm, color_decimals);
    add_interval(row, figures->carbonation, volume_of_co2, carbonation_decimals);
}

std::string full_name(const StyleName& style) {
    return style.guide + '/' + style.code;
}

void add_at_risk(std::vector<std::string>& row, const std::optional<PointsAtRisk>& at_risk) {
    if (!at_risk) {
        add_nothing(row, interval_fields);
        return;
    }
    for (const double points : {at_risk->median, at_risk->low, at_risk->high}) {
        row.push_back(points_text(points));
    }
}

void add_best(std::vector<std::string>& row, const std::optional<BestPlace>& best) {
    if (!best) {
        constexpr std::size_t fields = 4;
        add_nothing(row, fields);
        return;
    }
    row.push_back(full_name(best->name) + (best->base ? " on " + full_name(*best->base) : ""));
    row.push_back(csv_field(best->title));
    row.push_back(points_text(best->at_risk.median));
    row.push_back(fixed(best->gain, 1));
}

std::string cautions_text(const std::vector<Caution>& cautions) {
    std::vector<std::string> texts;
    for (const Caution& caution : cautions) {
        if (caution.kind != "allergen") {
            texts.push_back(caution.text);
        }
    }
    return joined(texts, " ");
}

std::string findings_text(const std::vector<TalkingPoint>& talk) {
    std::vector<std::string> texts;
    for (const TalkingPoint& point : talk) {
        texts.push_back(point.id);
    }
    return joined(texts, "; ");
}

std::string faults_text(const std::vector<Fault>& faults) {
    std::vector<std::string> lines;
    for (const Fault& fault : faults) {
        lines.push_back(to_line(fault));
    }
    return joined(lines, " | ");
}

std::string column_text(const Node& value) {
    return value.kind == NodeKind::scalar ? value.text : node_json(value).dump();
}

std::string column_of(const ClubEntry& entry, const std::string& name) {
    const auto column = std::find_if(entry.columns.begin(), entry.columns.end(),
                                     [&](const EntryColumn& other) { return other.name == name; });
    return column == entry.columns.end() ? std::string() : csv_field(column_text(column->value));
}

std::vector<std::string> row_of(const Screened& screened) {
    const ClubEntry& entry = screened.entry;
    std::vector<std::string> row{csv_field(entry.number),
                                 csv_field(entry.brewer),
                                 csv_field(screened.beer),
                                 screened.style ? full_name(*screened.style) : csv_field(entry.category),
                                 csv_field(screened.style_title),
                                 std::string(word_of(screened.status))};
    add_at_risk(row, screened.at_risk);
    add_figures(row, screened.figures);
    add_best(row, screened.best);
    const bool was_read = screened.status != Status::unreadable;
    for (const std::string& text :
         {joined(screened.missing, "; "), joined(screened.allergens, "; "), cautions_text(screened.cautions),
          findings_text(screened.talk), screened.duplicate_of,
          was_read ? fingerprint_text(screened.fingerprint) : std::string(), faults_text(screened.faults)}) {
        row.push_back(csv_field(text));
    }
    return row;
}

void add_seat(std::vector<std::string>& row, const std::optional<Seat>& seat) {
    row.emplace_back(!seat ? "" : seat->is_accepted ? "yes" : "no");
    row.push_back(seat && seat->table ? csv_field(seat->table->code) : std::string());
}

/// The columns that entries brought along, each once, as they first come.
std::vector<std::string> columns_brought(const std::vector<Screened>& entries,
                                         const std::vector<std::size_t>& places) {
    std::vector<std::string> names;
    for (const std::size_t place : places) {
        for (const EntryColumn& column : entries[place].entry.columns) {
            if (std::find(names.begin(), names.end(), column.name) == names.end()) {
                names.push_back(column.name);
            }
        }
    }
    return names;
}

}  // namespace

std::string screen_csv(const std::vector<Screened>& entries, const std::vector<std::size_t>& places) {
    const std::vector<std::string> brought = columns_brought(entries, places);
    const bool is_competition = std::any_of(
        places.begin(), places.end(), [&](std::size_t place) { return entries[place].seat.has_value(); });
    std::vector<std::string> header = names_of_fields();
    if (is_competition) {
        header.insert(header.end(), {"accepted", "judged_at"});
    }
    for (const std::string& name : brought) {
        header.push_back(csv_field(name));
    }
    std::string text = csv_row(header);
    for (const std::size_t place : places) {
        const Screened& screened = entries[place];
        std::vector<std::string> row = row_of(screened);
        if (is_competition) {
            add_seat(row, screened.seat);
        }
        for (const std::string& name : brought) {
            row.push_back(column_of(screened.entry, name));
        }
        text += csv_row(row);
    }
    return text;
}

}  // namespace entrywise
