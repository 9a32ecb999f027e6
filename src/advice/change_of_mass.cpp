#include "advice/change_of_mass.hpp"

namespace entrywise {

std::string from_mass_to_mass(const std::string& ingredient, Mass from, Mass to, const Measures& measures) {
    return ingredient + " from " + told(from, measures) + " to " + told(weighable(to, measures), measures);
}

std::string change_of_mass(const std::string& ingredient, Mass from, Mass to, const Measures& measures) {
    // A rest of less than this share of an ingredient is not worth weighing (working value).
    constexpr double least_rest = 0.05;
    if (weighable(to, measures) <= least_rest * from) {
        return "leave out " + ingredient + " (" + told(from, measures) + ")";
    }
    return (to < from ? "cut " : "raise ") + from_mass_to_mass(ingredient, from, to, measures);
}

}  // namespace entrywise
