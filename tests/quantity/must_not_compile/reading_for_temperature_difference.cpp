#include "quantity/quantities.hpp"

using namespace entrywise;

#ifdef ENTRYWISE_ALLOWED
TemperatureDifference difference = celsius(20.0) - celsius(5.0);
#else
TemperatureDifference difference = celsius(20.0);
#endif
