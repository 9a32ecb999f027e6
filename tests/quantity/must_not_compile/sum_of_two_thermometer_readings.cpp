#include "quantity/quantities.hpp"

using namespace entrywise;

#ifdef ENTRYWISE_ALLOWED
Temperature sum = celsius(20.0) + 5.0 * kelvin;
#else
Temperature sum = celsius(20.0) + celsius(5.0);
#endif
