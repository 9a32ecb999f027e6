#pragma once

#include <string>
#include <string_view>

#include "report/json_text.hpp"

namespace entrywise {

/// A template of `src/report/page` filled with values. `{{name}}` takes a text, with all that could be markup
/// escaped; `{{{name}}}` takes markup made by the program itself; `{{#name}}` repeats over a list and stands
/// only where a text is not empty; `{{>name}}` takes another template in.
///
/// Texts from outside are shown as `visible` shows them, so that nothing in them turns the writing direction
/// of what stands beside them.
std::string filled(std::string_view template_name, const Json& values);

/// The text with everything that could be markup escaped, and nothing that turns the writing direction.
std::string escaped(std::string_view text);

}  // namespace entrywise
