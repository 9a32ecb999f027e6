#pragma once

#include <string>

namespace entrywise {

/// The program's version, `major.minor.patch`: which program made a result.
std::string program_version();

}  // namespace entrywise
