#include "quantity/quantities.hpp"

using namespace entrywise;

MaltColor same(MaltColor color);

#ifdef ENTRYWISE_ALLOWED
MaltColor color = same(60.0 * lovibond);
#else
MaltColor color = same(12.0 * srm);
#endif
