#pragma once

#include <string>
#include <vector>

#include "style/declaration.hpp"
#include "style/style.hpp"

namespace entrywise {

/// What the entry form of a style must or may say, in words, with the choices where a style lays them down:
/// `the strength (session, standard or double); the color`.
std::string declared_words_of(const std::vector<std::string>& names, const Style& style,
                              const std::vector<Declaration>& known);

}  // namespace entrywise
