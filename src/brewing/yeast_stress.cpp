#include "brewing/yeast_stress.hpp"

#include <algorithm>

namespace entrywise {

Attenuation yeast_stress(SpecificGravity original_gravity) {
    constexpr double bearable = 1.080;
    return -std::max(0.0, original_gravity.value() - bearable) * fully_attenuated;
}

}  // namespace entrywise
