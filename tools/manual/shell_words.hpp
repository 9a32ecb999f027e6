#pragma once

#include <string>
#include <string_view>

#include "cli/described_command.hpp"

namespace entrywise {

/// The options of a command with both their names, apart by blanks.
std::string option_words(const DescribedCommand& command);

/// The words of a command as a shell's function is named after them: `_styles_list`.
std::string function_suffix(const DescribedCommand& command);

/// The commands directly below one.
std::vector<DescribedCommand> commands_below(const DescribedCommand& command,
                                             const std::vector<DescribedCommand>& commands);

/// A line of shell that prints every style: its code, those of the default guide alone and the others with
/// their guide, a separator, and its name. `$program` is what is called.
std::string styles_pipeline(std::string_view program, std::string_view separator);

/// A line of shell that prints every guide.
std::string guides_pipeline(std::string_view program);

/// The text in single quotes as shells read it, where a quotation mark in it is written as `quote`.
std::string in_quotes(std::string_view text, std::string_view quote);

}  // namespace entrywise
