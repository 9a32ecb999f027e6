#include "quantity/quantities.hpp"

using namespace entrywise;

#ifdef ENTRYWISE_ALLOWED
auto sum = 5.0 * kilogram + 20.0 * gram;
#else
auto sum = 5.0 * kilogram + 20.0 * liter;
#endif
