#pragma once

#include <string>
#include <vector>

#include "cli/described_command.hpp"

namespace entrywise {

// What shells read to complete a call. The codes of styles and guides are asked of the program itself, so
// that they are those that it knows.

std::string bash_completion(const std::vector<DescribedCommand>& commands);
std::string zsh_completion(const std::vector<DescribedCommand>& commands);
std::string fish_completion(const std::vector<DescribedCommand>& commands);

}  // namespace entrywise
