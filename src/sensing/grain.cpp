#include "sensing/grain.hpp"

#include "sensing/saturation.hpp"

namespace entrywise {

double malt_level(Concentration malt) {
    return saturating_level(in(malt, gram_per_liter), {.half_at = 230.0, .steepness = 1.0});
}

double toast_level(Concentration toast) {
    return saturating_level(in(toast, gram_per_liter), {.half_at = 24.0, .steepness = 1.5});
}

double caramel_level(Concentration caramel) {
    return saturating_level(in(caramel, gram_per_liter), {.half_at = 23.0, .steepness = 1.6});
}

double roast_level(Concentration roast) {
    return saturating_level(in(roast, gram_per_liter), {.half_at = 12.0, .steepness = 1.6});
}

double smoke_level(Concentration smoke) {
    return saturating_level(in(smoke, gram_per_liter), {.half_at = 80.0, .steepness = 1.0});
}

}  // namespace entrywise
