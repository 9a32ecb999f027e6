#include "brewing/hot_side.hpp"

#include <doctest/doctest.h>

#include "tests/support/recipes.hpp"
#include "tests/within.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

HotSchedule schedule_of(std::vector<HopAddition> hops) {
    Process process = process_of(bare_recipe());
    process.hops = std::move(hops);
    return hot_schedule(process);
}

HopAddition without_time(HopAddition addition) {
    addition.time.reset();
    return addition;
}

HopAddition with_use(HopAddition addition, HopUse use) {
    addition.use = use;
    return addition;
}

double minutes_of(Duration duration) {
    return in(duration, minute);
}

}  // namespace

TEST_CASE("boiled hops meet the wort for their time before the end of the boil") {
    const HotSchedule schedule = schedule_of({boiled(magnum(), 20.0, 60.0), boiled(cascade(), 20.0, 5.0)});
    REQUIRE(schedule.moments.size() == 2);
    CHECK(within(minutes_of(schedule.moments[0].boil), 60.0, 1e-9));
    CHECK(within(minutes_of(schedule.moments[1].boil), 5.0, 1e-9));
    CHECK(schedule.stands.empty());
}

// Common practice: bittering hops boil an hour, flavor hops about a quarter of one.
TEST_CASE("hops without a time boil as their kind usually does, never longer than the boil") {
    const std::vector<HopAddition> hops{without_time(boiled(magnum(), 20.0, 0.0)),
                                        without_time(boiled(cascade(), 20.0, 0.0))};
    const HotSchedule schedule = schedule_of(hops);
    CHECK(within(minutes_of(schedule.moments[0].boil), 60.0, 1e-9));
    CHECK(within(minutes_of(schedule.moments[1].boil), 15.0, 1e-9));
    Process process = process_of(bare_recipe());
    process.hops = hops;
    process.boil_time = 10.0 * minute;
    for (const HopMoment& moment : hot_schedule(process).moments) {
        CHECK(within(minutes_of(moment.boil), 10.0, 1e-9));
    }
}

TEST_CASE("mash hops and first wort hops are in the kettle for the whole boil") {
    const HotSchedule schedule = schedule_of({with_use(boiled(magnum(), 20.0, 0.0), HopUse::first_wort),
                                              with_use(boiled(magnum(), 20.0, 0.0), HopUse::mash)});
    CHECK(within(minutes_of(schedule.moments[0].boil), 60.0, 1e-9));
    CHECK(within(minutes_of(schedule.moments[1].boil), 60.0, 1e-9));
}

// Common practice: a whirlpool stand of some 20 min near 85 °C.
TEST_CASE("a whirlpool without time and temperature stands as usual") {
    HopAddition addition = without_time(stood(cascade(), 50.0, 0.0, 80.0));
    addition.temperature.reset();
    const HotSchedule schedule = schedule_of({addition});
    REQUIRE(schedule.stands.size() == 1);
    CHECK(within(minutes_of(schedule.stands[0].time), 20.0, 1e-9));
    CHECK(within(in_celsius(schedule.stands[0].temperature), 85.0, 1e-9));
    CHECK(minutes_of(schedule.moments[0].boil) == 0.0);
}

TEST_CASE("stands follow each other from hot to cool, whatever the order of the recipe") {
    const HotSchedule schedule =
        schedule_of({stood(cascade(), 50.0, 15.0, 70.0), stood(magnum(), 20.0, 10.0, 90.0)});
    REQUIRE(schedule.stands.size() == 2);
    CHECK(schedule.stands[0].temperature > schedule.stands[1].temperature);
    CHECK(schedule.moments[0].joins_at_step == 1);
    CHECK(schedule.moments[1].joins_at_step == 0);
}

TEST_CASE("two additions to one stand share it: the later joins for the rest") {
    const HotSchedule schedule =
        schedule_of({stood(cascade(), 50.0, 30.0, 80.0), stood(magnum(), 20.0, 10.0, 80.0)});
    REQUIRE(schedule.stands.size() == 2);
    CHECK(within(minutes_of(schedule.stands[0].time), 20.0, 1e-9));
    CHECK(within(minutes_of(schedule.stands[1].time), 10.0, 1e-9));
    CHECK(schedule.moments[0].joins_at_step == 0);
    CHECK(schedule.moments[1].joins_at_step == 1);
}

TEST_CASE("additions with the same stand make one") {
    const HotSchedule schedule =
        schedule_of({stood(cascade(), 50.0, 20.0, 80.0), stood(magnum(), 20.0, 20.0, 80.0)});
    CHECK(schedule.stands.size() == 1);
    CHECK(schedule.moments[0].joins_at_step == schedule.moments[1].joins_at_step);
}

TEST_CASE("wort cools through the temperatures at which hops isomerize in the given time") {
    const HotSide side = hot_side(HotSchedule(), 15.0 * minute);
    Duration time;
    Temperature before = celsius(100.1);
    for (const TemperatureStep& step : side.after_boil) {
        CHECK(step.temperature < before);
        CHECK(step.temperature > celsius(64.0));
        before = step.temperature;
        time += step.time;
    }
    CHECK(within(minutes_of(time), 15.0, 0.5));
    CHECK(in_celsius(side.boiling) == doctest::Approx(100.0));
}

TEST_CASE("after a stand less is left to cool") {
    const HotSide plain = hot_side(HotSchedule(), 15.0 * minute);
    const HotSide stands = hot_side(schedule_of({stood(cascade(), 50.0, 20.0, 75.0)}), 15.0 * minute);
    const auto cooling_time = [](const HotSide& side, std::size_t from) {
        Duration time;
        for (std::size_t step = from; step < side.after_boil.size(); ++step) {
            time += side.after_boil[step].time;
        }
        return time;
    };
    CHECK(cooling_time(stands, 1) < cooling_time(plain, 0));
    CHECK(within(in_celsius(stands.after_boil.front().temperature), 75.0, 1e-9));
}

TEST_CASE("of two additions to one stand the longer is in it first, whichever the recipe names first") {
    const HotSchedule schedule =
        schedule_of({stood(magnum(), 20.0, 10.0, 80.0), stood(cascade(), 50.0, 30.0, 80.0)});
    REQUIRE(schedule.stands.size() == 2);
    CHECK(within(minutes_of(schedule.stands[0].time), 20.0, 1e-9));
    CHECK(within(minutes_of(schedule.stands[1].time), 10.0, 1e-9));
    CHECK(schedule.moments[0].joins_at_step == 1);
    CHECK(schedule.moments[1].joins_at_step == 0);
}

TEST_CASE("stands of different heat last as long as each is told to") {
    const HotSchedule schedule =
        schedule_of({stood(cascade(), 50.0, 30.0, 85.0), stood(magnum(), 20.0, 10.0, 75.0)});
    REQUIRE(schedule.stands.size() == 2);
    CHECK(within(minutes_of(schedule.stands[0].time), 30.0, 1e-9));
    CHECK(within(minutes_of(schedule.stands[1].time), 10.0, 1e-9));
}
