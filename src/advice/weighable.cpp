#include "advice/weighable.hpp"

#include <cmath>

namespace entrywise {

Mass weighable(Mass mass) {
    const double grams = in(mass, gram);
    const double step = grams < 100.0 ? 1.0 : (grams < 2000.0 ? 10.0 : 50.0);
    return std::round(grams / step) * step * gram;
}

}  // namespace entrywise
