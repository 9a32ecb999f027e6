#pragma once

#include <string>
#include <string_view>

namespace entrywise {

/// The UTF-8 text in ASCII alone: Latin letters without their marks, dashes, quotes and signs as their
/// nearest plain form, every other character as `\u{XX}`.
std::string plain_ascii(std::string_view text);

}  // namespace entrywise
