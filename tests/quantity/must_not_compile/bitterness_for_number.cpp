#include "quantity/quantities.hpp"

using namespace entrywise;

#ifdef ENTRYWISE_ALLOWED
double number = (38.0 * ibu).value();
#else
double number = 38.0 * ibu;
#endif
