#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cli/described_command.hpp"

namespace entrywise {

/// The manual page in the language of mdoc(7). `date` is that of the version, as 2026-11-28.
std::string man_page(const std::vector<DescribedCommand>& commands, std::string_view version,
                     std::string_view date);

}  // namespace entrywise
