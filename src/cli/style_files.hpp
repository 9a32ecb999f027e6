#pragma once

#include <string>
#include <vector>

#include "base/fault.hpp"

namespace entrywise {

/// The files of a folder of styles and of the folders in it, hidden ones aside, in the order of their names.
/// What a folder cannot be listed for, an ending that is not read (`.yml`), and a folder without any style
/// are faults.
struct StyleFiles {
    std::vector<std::string> files;
    std::vector<Fault> faults;
};
StyleFiles style_files_in(const std::string& folder);

/// Whether a path is that of a folder.
bool is_folder(const std::string& path);

/// The codes that the files beside this one stand for, its own among them.
std::vector<std::string> codes_beside(const std::string& file);

}  // namespace entrywise
