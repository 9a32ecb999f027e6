#pragma once

#include <string>
#include <vector>

#include "base/fault.hpp"
#include "screening/entry.hpp"

namespace entrywise {

/// The recipe files of a folder, one entry each in the order of their names, numbered by them without the
/// ending:
/// `.yaml`, `.json`, `.xml`, and `.csv` and `.tsv` where they begin as a recipe's table. Hidden files, other
/// files and folders in it are passed over. A folder that cannot be listed and one without any recipe are
/// faults.
Outcome<std::vector<ClubEntry>> entries_in_folder(const std::string& folder);

}  // namespace entrywise
