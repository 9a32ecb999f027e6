#include "quantity/quantities.hpp"

using namespace entrywise;

#ifdef ENTRYWISE_ALLOWED
Concentration concentration = 30.0 * gram / (20.0 * liter);
#else
Concentration concentration = 30.0 * gram / (20.0 * kilogram);
#endif
