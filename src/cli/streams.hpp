#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/fault.hpp"
#include "cli/call.hpp"
#include "report/terminal.hpp"

namespace entrywise {

/// Fills the places of standard streams that were closed with ones that can neither be read nor written, so
/// that no file opened later takes their place; and lets a reader that goes away end nothing.
void prepare_streams();

/// How the call's result is set: what options, environment and the output itself say of color, characters and
/// width. Color, first that applies: the option; NO_COLOR; FORCE_COLOR or CLICOLOR_FORCE; TERM=dumb; else
/// only where the result goes to a terminal.
TextStyle text_style_for(const Call& call);

/// Writes the result to where the call wants it. A file is written whole or not at all. Fails as a fault,
/// also where a device is full; a reader who has seen enough is none.
std::optional<Fault> deliver(const Call& call, std::string_view result);

/// Tells a person something beside the result, on standard error.
void tell(std::string_view text);

/// Whether someone would have to type standard input.
bool input_is_typed();

}  // namespace entrywise
