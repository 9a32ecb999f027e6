#include "report/version.hpp"

namespace entrywise {

std::string program_version() {
    return ENTRYWISE_VERSION;
}

}  // namespace entrywise
