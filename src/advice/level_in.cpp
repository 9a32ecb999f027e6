#include "advice/level_in.hpp"

#include "style/attribute.hpp"

namespace entrywise {

double level_in(const Tasting& tasting, Section section, const std::string& attribute) {
    const auto sensed = attribute_named(section, attribute);
    return sensed ? tasting.profile.level[*sensed].median() : in(tasting.beer.color.total.median(), srm);
}

}  // namespace entrywise
