#include "quantity/plato.hpp"

using namespace entrywise;

#ifdef ENTRYWISE_ALLOWED
SpecificGravity gravity = specific_gravity_of(12.0 * plato);
#else
SpecificGravity gravity = specific_gravity_of(1.048 * specific_gravity);
#endif
