#include "advice/grist_limits.hpp"

namespace entrywise {

Mass all_of_grist(const Recipe& recipe) {
    Mass all;
    for (const GristAddition& addition : recipe.grist) {
        all += addition.mass;
    }
    return all;
}

double most_of_grist(const Fermentable& fermentable) {
    if (fermentable.gives.sweet > 0.0 || fermentable.gives.acid > 0.0) {
        return 0.1;
    }
    switch (fermentable.kind) {
        case FermentableKind::roasted:
            return 0.1;
        case FermentableKind::crystal:
        case FermentableKind::sugar:
            return 0.2;
        case FermentableKind::toasted:
            return 0.25;
        case FermentableKind::adjunct:
            return 0.4;
        case FermentableKind::fruit:
            return 0.5;
        case FermentableKind::base:
        case FermentableKind::malt_extract:
            break;
    }
    return 1.0;
}

}  // namespace entrywise
