#include "brewing/ingredient_line.hpp"

#include "base/number.hpp"

namespace entrywise {

std::string line_of(const HopAddition& addition) {
    switch (addition.use) {
        case HopUse::mash:
            return addition.hop.name + " in the mash";
        case HopUse::first_wort:
            return addition.hop.name + " in the first wort";
        case HopUse::whirlpool:
            return addition.hop.name + " in the whirlpool";
        case HopUse::dry_hop:
            return addition.hop.name + " as dry hop";
        case HopUse::boil:
            break;
    }
    const std::string time = addition.time ? " at " + fixed(in(*addition.time, minute), 0) + " min" : "";
    return addition.hop.name + time;
}

}  // namespace entrywise
