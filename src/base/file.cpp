#include "base/file.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <system_error>
#include <utility>

namespace entrywise {

namespace {

std::string reason(int error) {
    return std::generic_category().message(error);
}

Fault unreadable(const std::string& path, std::string found, std::string remedy) {
    return {.place = {path, {}},
            .found = std::move(found),
            .expected = "a readable file",
            .nearest = {},
            .remedy = std::move(remedy)};
}

/// Closes the descriptor when its owner goes out of scope.
class Descriptor {
  public:
    explicit Descriptor(int number) : number_(number) {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor() {
        if (number_ > STDERR_FILENO) {
            ::close(number_);
        }
    }
    int number() const { return number_; }
    bool is_open() const { return number_ >= 0; }

  private:
    int number_;
};

Outcome<std::string> read_all(const Descriptor& input, const std::string& path, std::size_t most_bytes) {
    std::string bytes;
    std::array<char, 65536> buffer{};
    while (true) {
        const ssize_t count = ::read(input.number(), buffer.data(), buffer.size());
        if (count < 0 && errno == EINTR) {
            continue;
        }
        if (count < 0) {
            return unreadable(path, reason(errno), "Check the file and try again.");
        }
        if (count == 0) {
            return bytes;
        }
        bytes.append(buffer.data(), static_cast<std::size_t>(count));
        if (bytes.size() > most_bytes) {
            return unreadable(path, fmt::format("more than {} bytes", most_bytes),
                              "Give a smaller file: one recipe takes a few kilobytes.");
        }
    }
}

bool write_all(int descriptor, std::string_view text) {
    while (!text.empty()) {
        const ssize_t count = ::write(descriptor, text.data(), text.size());
        if (count < 0 && errno == EINTR) {
            continue;
        }
        if (count <= 0) {
            return false;
        }
        text.remove_prefix(static_cast<std::size_t>(count));
    }
    return true;
}

Fault unwritable(const std::string& path, std::string found) {
    return {.place = {path, {}},
            .found = std::move(found),
            .expected = "a place that can be written",
            .nearest = {},
            .remedy = "Nothing was written; what stood there before is untouched."};
}

}  // namespace

Outcome<std::string> read_file(const std::string& path, std::size_t most_bytes) {
    if (path == "-") {
        return read_all(Descriptor(STDIN_FILENO), "standard input", most_bytes);
    }
    struct stat status {};
    if (::stat(path.c_str(), &status) != 0) {
        return unreadable(path, reason(errno), "Check the path.");
    }
    if (!S_ISREG(status.st_mode)) {
        return unreadable(path, S_ISDIR(status.st_mode) ? "a folder" : "no regular file",
                          "Give a file, or - for standard input.");
    }
    const Descriptor input(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
    if (!input.is_open()) {
        return unreadable(path, reason(errno), "Check who may read it.");
    }
    return read_all(input, path, most_bytes);
}

std::optional<Fault> write_file_whole(const std::string& path, std::string_view text) {
    struct stat status {};
    if (::stat(path.c_str(), &status) == 0 && !S_ISREG(status.st_mode)) {
        return unwritable(path, S_ISDIR(status.st_mode) ? "a folder" : "no regular file");
    }
    // What a link points to is replaced, not the link.
    std::error_code no_such_file;
    const std::filesystem::path linked = std::filesystem::canonical(path, no_such_file);
    const std::string target = no_such_file ? path : linked.string();
    std::string temporary = target + ".XXXXXX";
    const Descriptor output(::mkostemp(temporary.data(), O_CLOEXEC));
    if (!output.is_open()) {
        return unwritable(path, reason(errno));
    }
    constexpr mode_t readable_by_all = S_IRUSR | S_IWUSR | S_IRGRP | S_IROTH;
    const bool written = write_all(output.number(), text) &&
                         ::fchmod(output.number(), readable_by_all) == 0 && ::fsync(output.number()) == 0 &&
                         std::rename(temporary.c_str(), target.c_str()) == 0;
    if (!written) {
        const int error = errno;
        ::unlink(temporary.c_str());
        return unwritable(path, reason(error));
    }
    return std::nullopt;
}

}  // namespace entrywise
