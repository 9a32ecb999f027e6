#include "sensing/nose.hpp"

namespace entrywise {

double share_in_the_nose(Attribute attribute) {
    switch (attribute) {
        case Attribute::aroma_malt:
            return 0.89;
        case Attribute::aroma_toast:
            return 0.95;
        case Attribute::aroma_caramel:
            return 0.86;
        case Attribute::aroma_roast:
            return 0.83;
        case Attribute::aroma_sour:
            return 0.88;
        default:
            return 1.0;
    }
}

}  // namespace entrywise
