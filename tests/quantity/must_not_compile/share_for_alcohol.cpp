#include "quantity/quantities.hpp"

using namespace entrywise;

AlcoholByVolume same(AlcoholByVolume alcohol);

#ifdef ENTRYWISE_ALLOWED
AlcoholByVolume alcohol = same(5.0 * percent_by_volume);
#else
AlcoholByVolume alcohol = same(5.0 * percent);
#endif
