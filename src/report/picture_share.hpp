#pragma once

#include <string>
#include <string_view>

namespace entrywise {

/// A share of a whole as a bar.
std::string share_picture(std::string_view of_what, double share);

/// A chance from none to certain, with marks where the words for it change: at one in five and at even odds.
std::string chance_picture(std::string_view of_what, double chance);

}  // namespace entrywise
