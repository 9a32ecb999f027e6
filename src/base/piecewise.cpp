#include "base/piecewise.hpp"

#include <algorithm>

namespace entrywise {

double on_line_through(std::span<const Corner> corners, double at) {
    const auto after =
        std::find_if(corners.begin(), corners.end(), [at](const Corner& corner) { return corner.at >= at; });
    if (after == corners.begin()) {
        return corners.front().value;
    }
    if (after == corners.end()) {
        return corners.back().value;
    }
    const Corner& before = *(after - 1);
    const double part = (at - before.at) / (after->at - before.at);
    return before.value + part * (after->value - before.value);
}

}  // namespace entrywise
