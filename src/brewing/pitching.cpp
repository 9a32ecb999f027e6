#include "brewing/pitching.hpp"

#include <algorithm>
#include <cmath>

namespace entrywise {

PitchRate usual_pitch(Fermentation fermentation) {
    return (fermentation == Fermentation::bottom ? 1.5 : 0.75) * million_per_milliliter_plato;
}

double pitch_doublings(const YeastAddition& addition) {
    if (!addition.pitch) {
        return 0.0;
    }
    const double relative = in(*addition.pitch, usual_pitch(addition.yeast.fermentation));
    return std::clamp(std::log2(std::max(relative, 0.01)), -2.0, 2.0);
}

}  // namespace entrywise
