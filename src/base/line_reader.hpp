#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace entrywise {

/// One line of an input, without its line end.
struct InputLine {
    std::string text;        ///< empty where the line is too long
    std::size_t number = 0;  ///< counted from one
    bool too_long = false;
};

/// The lines of an open file, pipe or device, one at a time, so that an input of any length takes the memory
/// of a line. A line of more than `most_bytes` is read over and comes marked. The descriptor stays its
/// owner's.
class LineReader {
  public:
    LineReader(int descriptor, std::size_t most_bytes) : descriptor_(descriptor), most_bytes_(most_bytes) {}

    /// The next line; nothing at the end of the input or where it cannot be read.
    std::optional<InputLine> next();

    std::uint64_t bytes_read() const { return bytes_read_; }

    /// The number of the error that ended reading; zero where the input's end did.
    int error() const { return error_; }

  private:
    bool fill();

    int descriptor_;
    std::size_t most_bytes_;
    std::string buffer_;
    std::size_t at_ = 0;
    std::size_t line_number_ = 0;
    std::uint64_t bytes_read_ = 0;
    bool ended_ = false;
    int error_ = 0;
};

}  // namespace entrywise
