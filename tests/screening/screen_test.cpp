#include "screening/screen.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "screening/flight.hpp"
#include "screening/ordered_work.hpp"
#include "tests/support/demo.hpp"
#include "tests/support/guide.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

/// A few styles, so that the tests stay short.
const std::vector<Style>& some_styles() {
    static const std::vector<Style> styles{guide_style("5D"),  guide_style("8B"),  guide_style("11B"),
                                           guide_style("18A"), guide_style("18B"), guide_style("21A")};
    return styles;
}

Screening screened(const std::string& name, const std::string& code) {
    EntryRead read{demo(name), {}, {}, {}};
    if (!code.empty()) {
        read.style = guide_style(code);
        read.recipe.style = StyleName{"bjcp-2021", code};
    }
    ClubEntry entry;
    entry.number = name;
    static const LineUp line_up(some_styles(), usual_handbook());
    Deviates dice(usual_draws);
    return screen(entry, read, line_up, dice);
}

}  // namespace

// Black lager with roast malt is no German Pils, and a Schwarzbier by the ranges of Beer Judge Certification
// Program, Beer Style Guidelines, 2021.
TEST_CASE("an entry that is declared wrongly is told where to move") {
    const Screened wrong = screened("night-watch", "5D").screened;
    CHECK(wrong.status == Status::move);
    REQUIRE(wrong.best.has_value());
    CHECK(wrong.best->name.code == "8B");
    CHECK(wrong.best->gain >= points_worth_a_move);
    CHECK_FALSE(wrong.talk.empty());
    const Screened right = screened("night-watch", "8B").screened;
    CHECK(right.status == Status::ready);
    CHECK(right.best->is_declared);
    CHECK(right.best->gain == 0.0);
}

TEST_CASE("a form that says too little is told what it must say") {
    const Screened screened_ipa = screened("slack-tide", "21B").screened;
    CHECK(screened_ipa.status == Status::incomplete);
    CHECK(std::count(screened_ipa.missing.begin(), screened_ipa.missing.end(), "strength") == 1);
    const Screening nothing = screened("slack-tide", "");
    CHECK(nothing.screened.status == Status::incomplete);
    CHECK(nothing.screened.missing == std::vector<std::string>{"category"});
    CHECK_FALSE(nothing.check.has_value());
    REQUIRE(nothing.screened.best.has_value());
    CHECK(nothing.screened.best->name.code == "21A");
}

// Lactose is milk by the law of food labels, barley and wheat are gluten (Regulation (EU) No 1169/2011, annex
// II).
TEST_CASE("allergens and cautions come with an entry") {
    CHECK(screened("milk-run", "16A").screened.allergens == std::vector<std::string>{"gluten", "milk"});
    const Screened saison = screened("salt-hay", "25B-standard-pale").screened;
    CHECK(saison.status == Status::look);
    CHECK(saison.cautions.front().kind == "pressure");
}

TEST_CASE("a glance finds what a check finds") {
    const Screening glance = screened("sea-smoke", "5D");
    const Check full = check(demo("sea-smoke"), guide_style("5D"), usual_handbook());
    REQUIRE(glance.check.has_value());
    CHECK(glance.check->sheet.total.median == full.sheet.total.median);
    REQUIRE(glance.check->findings.size() == full.findings.size());
    for (std::size_t index = 0; index < full.findings.size(); ++index) {
        CHECK(glance.check->findings[index].note == full.findings[index].note);
        CHECK(glance.check->findings[index].causes.empty());
    }
}

TEST_CASE("several threads come to what one comes to") {
    const std::vector<std::string> names{"slack-tide", "sea-smoke", "night-watch", "day-sail", "first-ferry",
                                         "bell-buoy",  "sea-smoke", "night-watch", "day-sail", "slack-tide"};
    const auto points = [&](std::size_t threads) {
        std::vector<double> all;
        std::size_t next = 0;
        OrderedWork<std::string, Screened> work(
            [&] { return next < names.size() ? std::optional(names[next++]) : std::nullopt; },
            [](const std::string& name, std::size_t /*thread*/) { return screened(name, "18B").screened; },
            [&](const Screened& result) {
                all.push_back(result.at_risk->median);
                all.push_back(result.best->gain);
                return true;
            });
        work.run(threads);
        return all;
    };
    const std::vector<double> by_one = points(1);
    CHECK(by_one.size() == 2 * names.size());
    CHECK(points(4) == by_one);
}

TEST_CASE("statuses have words that are read back") {
    for (const Status status : all_statuses) {
        CHECK(status_named(word_of(status)) == status);
    }
    CHECK_FALSE(status_named("late").has_value());
}

TEST_CASE(
    "what a competition does not accept must move; what only it asks for is missing and costs nothing") {
    EntryRead read{demo("slack-tide"), guide_style("21A"), {}, {}};
    Deviates dice(usual_draws);
    const LineUp line_up(some_styles(), usual_handbook());
    const Screened alone = screen({}, read, line_up, dice).screened;
    read.seat = Seat{.competition = "Cup", .is_accepted = true, .table = {}, .asks_besides = {"allergens"}};
    const Screened asked = screen({}, read, line_up, dice).screened;
    CHECK(asked.status == Status::incomplete);
    CHECK(asked.missing == std::vector<std::string>{"allergens"});
    CHECK(asked.at_risk->median == alone.at_risk->median);
    read.recipe.declares["allergens"] = "gluten";
    CHECK(screen({}, read, line_up, dice).screened.missing.empty());
    read.seat->is_accepted = false;
    const Screened refused = screen({}, read, line_up, dice).screened;
    CHECK(refused.status == Status::move);
    CHECK(flights_of({refused}).empty());
}
