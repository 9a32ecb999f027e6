#pragma once

#include <optional>
#include <string>

#include "base/fault.hpp"
#include "reading/library.hpp"

namespace entrywise {

/// Folders that add to what is built in or replace it.
struct LibraryFolders {
    std::optional<std::string>
        styles;  ///< `<guide>/<code>.yaml`, and files such as `sheet.yaml` beside the guides
    std::optional<std::string> ingredients;  ///< ingredient files of any name
};

/// The library with these folders before what is built in. A folder that cannot be listed is a fault, and so
/// is whatever is wrong with an ingredient file; styles are read when they are asked for.
Outcome<Library> open_library(std::span<const EmbeddedDocument> embedded, const LibraryFolders& folders);

}  // namespace entrywise
