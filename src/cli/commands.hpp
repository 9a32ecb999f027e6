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

/// `rank`: the styles of a guide, or those named, in the order in which to enter each recipe.
ExitStatus rank_command(const Call& call);

/// `mend`: the smallest changes that bring each recipe into its style. With `--write`, a file with the mended
/// recipe.
ExitStatus mend_command(const Call& call);

/// `explain`: a judge's notes, and points where given, traced to each recipe.
ExitStatus explain_command(const Call& call);

/// `screen`: the entries of a folder, a table or a stream of JSON Lines, each judged by its category, with
/// where it would stand better. Status 2 where any entry cannot be read, 1 with `--fail-at` where any has so
/// many points at risk.
ExitStatus screen_command(const Call& call);

/// `styles list`, `styles show`, `styles compare` and `styles validate`.
ExitStatus styles_list_command(const Call& call);
ExitStatus styles_show_command(const Call& call);
ExitStatus styles_compare_command(const Call& call);
ExitStatus styles_validate_command(const Call& call);

}  // namespace entrywise
