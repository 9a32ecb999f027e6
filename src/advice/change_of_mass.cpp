#include "advice/change_of_mass.hpp"

#include "advice/weighable.hpp"
#include "quantity/text.hpp"

namespace entrywise {

std::string from_mass_to_mass(const std::string& ingredient, Mass from, Mass to) {
    return ingredient + " from " + to_text(weighable(from)) + " to " + to_text(weighable(to));
}

std::string change_of_mass(const std::string& ingredient, Mass from, Mass to) {
    // A rest of less than this share of an ingredient is not worth weighing (working value).
    constexpr double least_rest = 0.05;
    if (weighable(to) <= least_rest * from) {
        return "leave out " + ingredient + " (" + to_text(weighable(from)) + ")";
    }
    return (to < from ? "cut " : "raise ") + from_mass_to_mass(ingredient, from, to);
}

}  // namespace entrywise
