#include "cli/streams.hpp"

#include <fcntl.h>
#include <sys/ioctl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <system_error>

#include "base/file.hpp"
#include "base/number.hpp"
#include "base/text.hpp"

namespace entrywise {

namespace {

std::string environment(const char* name) {
    const char* const value = std::getenv(name);
    return value == nullptr ? std::string() : std::string(value);
}

bool result_goes_to_a_terminal(const Call& call) {
    return call.output == "-" && ::isatty(STDOUT_FILENO) == 1;
}

bool wants_color(const Call& call) {
    if (call.color != ColorChoice::automatic) {
        return call.color == ColorChoice::always;
    }
    if (!environment("NO_COLOR").empty() || call.output != "-") {
        return false;
    }
    if (!environment("FORCE_COLOR").empty() || !environment("CLICOLOR_FORCE").empty()) {
        return true;
    }
    return environment("TERM") != "dumb" && result_goes_to_a_terminal(call);
}

/// By POSIX the first of these that is set and not empty decides the characters of a locale.
bool locale_is_utf8() {
    for (const char* const name : {"LC_ALL", "LC_CTYPE", "LANG"}) {
        const std::string value = lowered(environment(name));
        if (!value.empty()) {
            return value.find("utf-8") != std::string::npos || value.find("utf8") != std::string::npos;
        }
    }
    return false;
}

std::size_t columns_of_terminal(const Call& call) {
    constexpr std::size_t where_nobody_says = 80;
    if (const auto columns = number_from(environment("COLUMNS"));
        columns && *columns >= 1.0 && *columns <= 1e4) {
        return static_cast<std::size_t>(*columns);
    }
    winsize size{};
    const bool known = result_goes_to_a_terminal(call) && ::ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) == 0;
    return known && size.ws_col > 0 ? size.ws_col : where_nobody_says;
}

/// Writes all of it; zero, or the number of the error.
int write_all(int descriptor, std::string_view text) {
    while (!text.empty()) {
        const ssize_t count = ::write(descriptor, text.data(), text.size());
        if (count < 0 && errno != EINTR) {
            return errno;
        }
        text.remove_prefix(count > 0 ? static_cast<std::size_t>(count) : 0);
    }
    return 0;
}

Fault unwritten(const std::string& place, int error) {
    return {.place = {place, {}},
            .found = std::generic_category().message(error),
            .expected = "a place that takes the result",
            .nearest = {},
            .remedy = "The result is lost or cut off."};
}

/// A device or a pipe can't be replaced by a new file, it is written into.
std::optional<Fault> write_into(const std::string& path, std::string_view text) {
    const int descriptor = ::open(path.c_str(), O_WRONLY | O_CLOEXEC);
    if (descriptor < 0) {
        return unwritten(path, errno);
    }
    const int error = write_all(descriptor, text);
    ::close(descriptor);
    return error == 0 || error == EPIPE ? std::nullopt : std::optional(unwritten(path, error));
}

bool is_an_input(const Call& call) {
    std::error_code failed;
    return std::any_of(call.words.begin(), call.words.end(), [&](const std::string& word) {
        return word != "-" && std::filesystem::equivalent(word, call.output, failed);
    });
}

}  // namespace

void prepare_streams() {
    // A reader that is gone and a file that may not grow come back as errors of writing, so that nothing
    // half written stays behind.
    std::signal(SIGPIPE, SIG_IGN);
    std::signal(SIGXFSZ, SIG_IGN);
    for (const int stream : std::array{STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO}) {
        if (::fcntl(stream, F_GETFD) == -1) {
            const int access = stream == STDIN_FILENO ? O_WRONLY : O_RDONLY;
            static_cast<void>(::open("/dev/null", access));
        }
    }
}

TextStyle text_style_for(const Call& call) {
    return {.width = call.width.value_or(std::clamp(columns_of_terminal(call), narrowest_page, widest_page)),
            .color = wants_color(call),
            .ascii = call.ascii || !locale_is_utf8()};
}

std::optional<Fault> deliver(const Call& call, std::string_view result) {
    if (call.output == "-") {
        const int error = write_all(STDOUT_FILENO, result);
        return error == 0 || error == EPIPE ? std::nullopt
                                            : std::optional(unwritten("standard output", error));
    }
    struct stat status {};
    const bool exists = ::stat(call.output.c_str(), &status) == 0;
    if (exists && !S_ISREG(status.st_mode) && !S_ISDIR(status.st_mode)) {
        return write_into(call.output, result);
    }
    if (auto fault = output_over_an_input(call)) {
        return fault;
    }
    return write_file_whole(call.output, result);
}

std::optional<Fault> output_over_an_input(const Call& call) {
    if (call.output == "-" || !is_an_input(call)) {
        return std::nullopt;
    }
    return Fault{.place = {call.output, {}},
                 .found = "one of the inputs",
                 .expected = "another file to write to",
                 .nearest = {},
                 .remedy = "Nothing was written."};
}

bool output_is_a_file(const Call& call) {
    struct stat status {};
    return call.output != "-" &&
           (::stat(call.output.c_str(), &status) != 0 || S_ISREG(status.st_mode) || S_ISDIR(status.st_mode));
}

Outcome<ResultSink> ResultSink::open(const Call& call, std::optional<std::uint64_t> kept) {
    if (call.output == "-") {
        return ResultSink(STDOUT_FILENO, "standard output");
    }
    if (!output_is_a_file(call)) {
        const int descriptor = ::open(call.output.c_str(), O_WRONLY | O_CLOEXEC);
        return descriptor < 0 ? Outcome<ResultSink>(unwritten(call.output, errno))
                              : Outcome<ResultSink>(ResultSink(descriptor, call.output));
    }
    if (auto fault = output_over_an_input(call)) {
        return *fault;
    }
    Outcome<WholeFile> file = kept ? WholeFile::continued(call.output, *kept) : WholeFile::begun(call.output);
    return file ? Outcome<ResultSink>(ResultSink(*std::move(file.value))) : Outcome<ResultSink>(file.faults);
}

std::optional<Fault> ResultSink::write(std::string_view text) {
    if (file_) {
        return file_->write(text);
    }
    const int error = write_all(descriptor_, text);
    reader_is_gone_ = error == EPIPE;
    return error == 0 || reader_is_gone_ ? std::nullopt : std::optional(unwritten(place_, error));
}

Outcome<std::uint64_t> ResultSink::secure() {
    if (!file_) {
        return std::uint64_t{0};
    }
    if (auto fault = file_->secure()) {
        return *fault;
    }
    return file_->bytes();
}

std::optional<Fault> ResultSink::finish() {
    return file_ ? file_->finish() : std::nullopt;
}

void tell(std::string_view text) {
    static_cast<void>(write_all(STDERR_FILENO, text));
}

bool input_is_typed() {
    return ::isatty(STDIN_FILENO) == 1;
}

bool someone_watches() {
    return ::isatty(STDERR_FILENO) == 1;
}

}  // namespace entrywise
