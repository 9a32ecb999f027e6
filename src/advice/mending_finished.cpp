#include "advice/mending_levers.hpp"
#include "base/number.hpp"

namespace entrywise {

namespace {

MendingLever water() {
    constexpr double most = 25.0;
    MendingLever lever;
    lever.touches = {"water"};
    lever.highest = most;
    lever.trials = {5.0, 12.0, 20.0};
    lever.rounded = to_steps_of(1.0);
    lever.disruption = [](double percents) { return 0.8 + 0.03 * percents; };
    lever.apply = [](Attempt& attempt, double percents) { attempt.water = percents * percent; };
    lever.told = [](const Attempt& /*mended*/, double percents) {
        return std::vector<Change>{{"deaerated water in the beer", 0.0, rounded(percents, 0), "%"}};
    };
    return lever;
}

MendingLever blend_with(const std::string& name, std::size_t index) {
    constexpr double least = 5.0;
    constexpr double most = 60.0;
    MendingLever lever;
    lever.touches = {"blend"};
    lever.highest = most;
    lever.trials = {least, 15.0, 30.0, 45.0};
    lever.rounded = to_steps_of(1.0);
    lever.disruption = [](double percents) { return 1.2 + 0.015 * percents; };
    lever.apply = [index](Attempt& attempt, double percents) {
        attempt.blend = Blend{index, percents * percent};
    };
    lever.told = [name](const Attempt& /*mended*/, double percents) {
        return std::vector<Change>{{"blended in: " + name, 0.0, rounded(percents, 0), "%"}};
    };
    return lever;
}

}  // namespace

std::vector<MendingLever> finished_beer_levers(const std::vector<std::string>& other_beers) {
    std::vector<MendingLever> levers{water()};
    for (std::size_t index = 0; index < other_beers.size(); ++index) {
        levers.push_back(blend_with(other_beers[index], index));
    }
    return levers;
}

}  // namespace entrywise
