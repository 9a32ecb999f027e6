#include "screening/screen.hpp"

#include <algorithm>
#include <utility>

#include "advice/declaration_note.hpp"
#include "base/text.hpp"
#include "judging/declared.hpp"
#include "judging/impression.hpp"
#include "judging/tasting.hpp"
#include "screening/fingerprint.hpp"

namespace entrywise {

namespace {

/// From how many points at risk on an entry is worth a word: as much as a place in a flight often hangs on
/// (working value).
constexpr double points_worth_a_look = 3.0;

BeerFigures figures_of(const Beer& beer) {
    return {
        beer.original_gravity.total.interval(), beer.final_gravity.interval(), beer.alcohol.interval(),
        beer.bitterness.total.interval(),       beer.color.total.interval(),   beer.carbonation.interval()};
}

std::vector<TalkingPoint> talking_points_of(const Check& check) {
    constexpr std::size_t most = 3;
    constexpr double least_points = 0.25;  // half of the least that judges write (working value)
    std::vector<TalkingPoint> points;
    for (const AdvisedFinding& advised : check.findings) {
        if (points.size() < most && advised.finding.attribute != "declaration" &&
            advised.finding.points >= least_points) {
            points.push_back({id_of(advised.finding), advised.finding.points, advised.note});
        }
    }
    return points;
}

/// Points at risk of the beer itself, without what the form leaves out.
double points_of_the_beer(const Sheet& sheet) {
    double points = sheet.total.median;
    for (const Finding& finding : sheet.findings) {
        points -= finding.attribute == "declaration" ? finding.points : 0.0;
    }
    return std::max(points, 0.0);
}

/// What only the competition wants to know costs no points, as it is nothing to judge by.
void add_missing_besides(Screened& screened, const EntryRead& read, const Seat& seat,
                         const Handbook& handbook) {
    Style asking = *read.style;
    asking.must_declare = seat.asks_besides;
    std::vector<std::string> said;
    for (const Declaration& declaration :
         missing_declarations(read.recipe, asking, handbook.phrases.declarations)) {
        screened.missing.push_back(declaration.name);
        said.push_back(declaration.said);
    }
    if (!said.empty()) {
        const std::string note = seat.competition + " asks for " + listed(said, "and") + " on the form.";
        screened.missing_note += screened.missing_note.empty() ? note : ' ' + note;
    }
}

void add_missing(Screened& screened, const EntryRead& read, const Handbook& handbook) {
    if (!read.style) {
        screened.missing = {"category"};
        screened.missing_note = "The entry form must say the category.";
        return;
    }
    const std::vector<Declaration> missing =
        missing_declarations(read.recipe, *read.style, handbook.phrases.declarations);
    for (const Declaration& declaration : missing) {
        screened.missing.push_back(declaration.name);
    }
    if (!missing.empty()) {
        screened.missing_note = note_on_missing(missing, *read.style);
    }
    if (read.seat) {
        add_missing_besides(screened, read, *read.seat, handbook);
    }
}

bool concerns_safety(const Caution& caution) {
    return caution.kind == "pressure" || caution.kind == "botanical";
}

bool is_refused(const Screened& screened) {
    return screened.seat && !screened.seat->is_accepted;
}

Status status_of(const Screened& screened) {
    if (is_refused(screened)) {
        return screened.best ? Status::move : Status::look;
    }
    if (!screened.missing.empty()) {
        return Status::incomplete;
    }
    if (screened.best && screened.best->gain >= points_worth_a_move) {
        return Status::move;
    }
    const bool worth_a_look =
        (screened.at_risk && screened.at_risk->median >= points_worth_a_look) ||
        std::any_of(screened.cautions.begin(), screened.cautions.end(), concerns_safety);
    return worth_a_look ? Status::look : Status::ready;
}

}  // namespace

Screening screen(ClubEntry entry, const EntryRead& read, const LineUp& line_up, Deviates& dice) {
    const Handbook& handbook = line_up.handbook();
    Screening result;
    Screened& screened = result.screened;
    screened.entry = std::move(entry);
    screened.beer = read.recipe.name;
    screened.fingerprint = fingerprint_of(read.recipe);
    screened.allergens = allergens_of(read.recipe);
    Tasting tasting = taste(read.recipe, handbook.perception, dice);
    screened.figures = figures_of(tasting.beer);
    screened.cautions = cautions_of(read.recipe, tasting.beer);
    screened.seat = read.seat;
    if (!is_refused(screened)) {
        add_missing(screened, read, handbook);
    }
    const Impression impression(tasting.beer, tasting.profile);
    std::optional<Judged> by_style;
    std::optional<JudgedAlready> judged_already;
    std::optional<double> points;
    if (read.style) {
        screened.style = StyleName{read.style->guide, read.style->code};
        screened.style_title = read.style->name;
        by_style = judged(tasting, impression, *read.style, read.base_style, handbook, line_up.tariff());
        const Sheet& sheet = by_style->verdict.sheet;
        screened.at_risk = sheet.total;
        points = points_of_the_beer(sheet);
        if (!by_style->base_style && by_style->verdict.missing.empty()) {
            judged_already = JudgedAlready{*screened.style, sheet.points};
        }
    }
    if (const auto leading = leading_place(tasting, impression, line_up, judged_already)) {
        screened.best = best_place(*leading, screened.style, points);
    }
    if (by_style) {
        result.check = check_at_a_glance(std::move(tasting), std::move(*by_style), handbook);
        screened.talk = talking_points_of(*result.check);
    }
    screened.status = status_of(screened);
    return result;
}

Screened unreadable(ClubEntry entry, std::vector<Fault> faults) {
    Screened screened;
    screened.entry = std::move(entry);
    screened.status = Status::unreadable;
    screened.faults = std::move(faults);
    return screened;
}

}  // namespace entrywise
