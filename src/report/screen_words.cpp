#include "report/screen_words.hpp"

#include <fmt/format.h>

#include "base/text.hpp"
#include "report/fault_text.hpp"
#include "report/sheet_text.hpp"
#include "style/variant.hpp"

namespace entrywise {

namespace {

std::string place_text(const BestPlace& best) {
    return best.name.code + ' ' + best.title + (best.base ? " on " + best.base->code : "");
}

/// What a competition says of an entry in a style that it does not accept.
std::string refusal_of(const Screened& screened) {
    std::string text =
        fmt::format("{} does not accept {}.", screened.seat->competition, category_of(screened));
    if (screened.best) {
        text += fmt::format(" Of what it accepts, {} fits best: {} points at risk.",
                            place_text(*screened.best), points_text(screened.best->at_risk.median));
    }
    return text;
}

}  // namespace

std::string category_of(const Screened& screened) {
    return screened.style ? entered_code(screened.style->code) + ' ' + screened.style_title
                          : screened.entry.category;
}

std::string name_of(const Flight& flight) {
    return (flight.table ? "table " + flight.table->code : flight.category.code) + ' ' + flight.title;
}

std::vector<std::string> points_to_talk_about(const Screened& screened) {
    std::vector<std::string> texts;
    for (const Fault& fault : screened.faults) {
        texts.push_back(to_line(fault));
    }
    if (!screened.missing_note.empty()) {
        texts.push_back(screened.missing_note);
    }
    if (screened.seat && !screened.seat->is_accepted) {
        texts.push_back(refusal_of(screened));
    } else if (screened.best && !screened.style) {
        texts.push_back(fmt::format("It would stand best as {}: {} points at risk.",
                                    place_text(*screened.best), points_text(screened.best->at_risk.median)));
    } else if (screened.best && screened.best->gain >= points_worth_a_move) {
        texts.push_back(fmt::format("As {}: {} points at risk, {} fewer{}.", place_text(*screened.best),
                                    points_text(screened.best->at_risk.median),
                                    points_text(screened.best->gain),
                                    screened.missing.empty() ? "" : " even if all is declared"));
    }
    for (const TalkingPoint& point : screened.talk) {
        texts.push_back(fmt::format("{} ({} points)", point.note, points_text(point.points)));
    }
    for (const Caution& caution : screened.cautions) {
        if (caution.kind != "allergen") {
            texts.push_back(caution.text);
        }
    }
    if (!screened.duplicate_of.empty()) {
        texts.push_back(fmt::format("The same recipe as entry {}.", screened.duplicate_of));
    }
    return texts;
}

std::vector<std::string> allergen_words(const std::vector<Screened>& entries,
                                        const std::vector<std::size_t>& places) {
    std::map<std::string, std::vector<std::size_t>> holding;
    std::size_t known = 0;
    for (const std::size_t place : places) {
        known += entries[place].figures ? 1U : 0U;
        for (const std::string& allergen : entries[place].allergens) {
            holding[allergen].push_back(place);
        }
    }
    std::vector<std::string> texts;
    for (const auto& [allergen, where] : holding) {
        texts.push_back(allergen + " in " +
                        (where.size() == known ? "all that could be read" : numbers_of(entries, where)));
    }
    return texts;
}

std::string numbers_of(const std::vector<Screened>& entries, const std::vector<std::size_t>& places) {
    std::vector<std::string> numbers;
    for (const std::size_t place : places) {
        numbers.push_back(entries[place].entry.number);
    }
    return joined(numbers, ", ");
}

}  // namespace entrywise
