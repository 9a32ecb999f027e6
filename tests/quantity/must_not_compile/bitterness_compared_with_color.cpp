#include "quantity/quantities.hpp"

using namespace entrywise;

#ifdef ENTRYWISE_ALLOWED
bool more = 38.0 * ibu > 12.0 * ibu;
#else
bool more = 38.0 * ibu > 12.0 * srm;
#endif
