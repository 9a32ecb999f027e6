#include "quantity/quantities.hpp"

using namespace entrywise;

Bitterness same(Bitterness bitterness);

#ifdef ENTRYWISE_ALLOWED
Bitterness bitterness = same(38.0 * ibu);
#else
Bitterness bitterness = same(38.0);
#endif
