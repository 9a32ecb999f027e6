#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "base/fault.hpp"

namespace entrywise {

/// The bytes of a regular file, or of standard input for `-`. A folder, a device, a pipe given by name, a
/// file that cannot be read and one larger than `most_bytes` is a fault.
Outcome<std::string> read_file(const std::string& path, std::size_t most_bytes);

/// Writes the text whole or not at all: into a new file beside the target that then takes its place. A
/// failure leaves whatever stood there before and is told as a fault. A link is followed; a folder, a device
/// or a pipe in the place of the target is a fault.
std::optional<Fault> write_file_whole(const std::string& path, std::string_view text);

}  // namespace entrywise
