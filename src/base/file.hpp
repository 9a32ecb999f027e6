#pragma once

#include <cstddef>
#include <cstdint>
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

/// A file that is written piece by piece and takes its place whole or not at all, as `write_file_whole` does
/// at once. Until `finish` all goes into a new file beside the target, and whatever stands there stays.
class WholeFile {
  public:
    /// One that is gone without a trace if it is not finished.
    static Outcome<WholeFile> begun(const std::string& path);

    /// One that stays beside the target under `unfinished_name` if it is not finished, also if the program or
    /// the machine ends. Its first `kept` bytes, written by an earlier run, are kept. Fails where another run
    /// writes it, and where it is shorter.
    static Outcome<WholeFile> continued(const std::string& path, std::uint64_t kept);

    WholeFile(WholeFile&& other) noexcept;
    WholeFile& operator=(WholeFile&&) = delete;
    ~WholeFile();

    std::optional<Fault> write(std::string_view text);

    /// How much was written and kept.
    std::uint64_t bytes() const { return bytes_; }

    /// Sees to it that what is written so far outlives a power cut.
    std::optional<Fault> secure();

    /// Takes the target's place.
    std::optional<Fault> finish();

  private:
    WholeFile(int descriptor, std::string path, std::string target, std::string temporary, bool stays);
    Fault failed() const;
    bool flush();

    int descriptor_;
    std::string path_;       ///< as the user named it
    std::string target_;     ///< with links followed
    std::string temporary_;  ///< empty once it is the target
    bool stays_;
    std::string waiting_;
    std::uint64_t bytes_ = 0;
};

/// Where an unfinished file stands: `results/.evening.jsonl.part` for `results/evening.jsonl`.
std::string unfinished_name(const std::string& path);

/// A file of another purpose beside a target: `.NAME.ENDING`.
std::string name_beside(const std::string& path, std::string_view ending);

}  // namespace entrywise
