#pragma once

#include <string>

namespace entrywise {

/// The text as a sentence begins.
std::string capitalized(std::string text);

}  // namespace entrywise
