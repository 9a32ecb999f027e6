#include "quantity/quantities.hpp"

using namespace entrywise;

#ifdef ENTRYWISE_ALLOWED
auto sum = 38.0 * ibu + 12.0 * ibu;
#else
auto sum = 38.0 * ibu + 12.0 * srm;
#endif
