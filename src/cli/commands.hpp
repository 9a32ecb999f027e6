#pragma once

#include "cli/call.hpp"
#include "cli/exit_status.hpp"

namespace entrywise {

/// `estimate`: what each recipe makes.
ExitStatus estimate_command(const Call& call);

/// `check`: each recipe against one style. With `--fail-at`, status 1 where the median of the points at risk,
/// as printed, reaches that many.
ExitStatus check_command(const Call& call);

/// `convert`: a recipe of another format as a recipe file, or a recipe file as one of another format.
ExitStatus convert_command(const Call& call);

/// `styles list`, `styles show` and `styles validate`.
ExitStatus styles_list_command(const Call& call);
ExitStatus styles_show_command(const Call& call);
ExitStatus styles_validate_command(const Call& call);

}  // namespace entrywise
