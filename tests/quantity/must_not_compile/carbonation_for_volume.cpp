#include "quantity/quantities.hpp"

using namespace entrywise;

#ifdef ENTRYWISE_ALLOWED
Volume volume = 2.5 * liter;
#else
Volume volume = 2.5 * volume_of_co2;
#endif
