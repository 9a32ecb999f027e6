#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "base/fault.hpp"
#include "base/file.hpp"
#include "cli/call.hpp"
#include "report/terminal.hpp"

namespace entrywise {

/// Fills the places of standard streams that were closed with ones that can neither be read nor written, so
/// that no file opened later takes their place; and lets a reader that goes away end nothing.
void prepare_streams();

/// How the call's result is set: what options, environment and the output itself say of color, characters and
/// width, which is kept within what pages can be. Color, first that applies: the option; NO_COLOR;
/// FORCE_COLOR or CLICOLOR_FORCE; TERM=dumb; else only where the result goes to a terminal.
TextStyle text_style_for(const Call& call);

/// Writes the result to where the call wants it. A file is written whole or not at all. Fails as a fault,
/// also where a device is full; a reader who has seen enough is none.
std::optional<Fault> deliver(const Call& call, std::string_view result);

/// A fault where the call's output would replace one of its inputs.
std::optional<Fault> output_over_an_input(const Call& call);

/// Whether the output is to be a file that can be replaced whole, and not a device, a pipe or standard
/// output.
bool output_is_a_file(const Call& call);

/// A result that is delivered piece by piece, under the rules of `deliver`.
class ResultSink {
  public:
    /// Opens it before any work is done, so that a place that cannot be written is told at once. With `kept`,
    /// the unfinished file of an earlier run is continued behind so many bytes, and this one can be
    /// continued.
    static Outcome<ResultSink> open(const Call& call, std::optional<std::uint64_t> kept = {});

    std::optional<Fault> write(std::string_view text);

    /// Whether whoever reads it has seen enough.
    bool reader_is_gone() const { return reader_is_gone_; }

    /// Sees to it that what is written so far outlives a power cut, and tells how much that is.
    Outcome<std::uint64_t> secure();

    std::optional<Fault> finish();

  private:
    explicit ResultSink(int descriptor, std::string place)
        : descriptor_(descriptor), place_(std::move(place)) {}
    explicit ResultSink(WholeFile file) : file_(std::move(file)) {}

    int descriptor_ = -1;  ///< of standard output, a device or a pipe
    std::string place_;
    std::optional<WholeFile> file_;
    bool reader_is_gone_ = false;
};

/// Tells a person something beside the result, on standard error.
void tell(std::string_view text);

/// Whether someone would have to type standard input.
bool input_is_typed();

/// Whether someone sees what is told.
bool someone_watches();

}  // namespace entrywise
