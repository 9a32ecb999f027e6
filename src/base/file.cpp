#include "base/file.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/file.h>
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

constexpr mode_t readable_by_all = S_IRUSR | S_IWUSR | S_IRGRP | S_IROTH;

std::optional<Fault> no_place_for_a_file(const std::string& path) {
    struct stat status {};
    if (::stat(path.c_str(), &status) == 0 && !S_ISREG(status.st_mode)) {
        return unwritable(path, S_ISDIR(status.st_mode) ? "a folder" : "no regular file");
    }
    return std::nullopt;
}

/// What a link points to is replaced, not the link.
std::string behind_links(const std::string& path) {
    std::error_code no_such_file;
    const std::filesystem::path linked = std::filesystem::canonical(path, no_such_file);
    return no_such_file ? path : linked.string();
}

/// A new name outlives a power cut only once its folder is written out. Where a folder cannot be, nothing is
/// lost but that.
void secure_folder_of(const std::string& path) {
    const std::filesystem::path folder = std::filesystem::path(path).parent_path();
    const Descriptor opened(
        ::open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (opened.is_open()) {
        static_cast<void>(::fsync(opened.number()));
    }
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
    Outcome<WholeFile> file = WholeFile::begun(path);
    if (!file) {
        return file.faults.front();
    }
    if (auto fault = file.value->write(text)) {
        return fault;
    }
    return file.value->finish();
}

std::string name_beside(const std::string& path, std::string_view ending) {
    const std::filesystem::path target = behind_links(path);
    return (target.parent_path() / fmt::format(".{}.{}", target.filename().string(), ending)).string();
}

std::string unfinished_name(const std::string& path) {
    return name_beside(path, "part");
}

WholeFile::WholeFile(int descriptor, std::string path, std::string target, std::string temporary, bool stays)
    : descriptor_(descriptor),
      path_(std::move(path)),
      target_(std::move(target)),
      temporary_(std::move(temporary)),
      stays_(stays) {}

WholeFile::WholeFile(WholeFile&& other) noexcept
    : descriptor_(std::exchange(other.descriptor_, -1)),
      path_(std::move(other.path_)),
      target_(std::move(other.target_)),
      temporary_(std::exchange(other.temporary_, {})),
      stays_(other.stays_),
      waiting_(std::move(other.waiting_)),
      bytes_(other.bytes_) {}

WholeFile::~WholeFile() {
    if (descriptor_ < 0) {
        return;
    }
    if (stays_ && !temporary_.empty()) {
        flush();
    }
    ::close(descriptor_);
    if (!stays_ && !temporary_.empty()) {
        ::unlink(temporary_.c_str());
    }
}

Outcome<WholeFile> WholeFile::begun(const std::string& path) {
    if (auto fault = no_place_for_a_file(path)) {
        return *fault;
    }
    const std::string target = behind_links(path);
    std::string temporary = target + ".XXXXXX";
    const int descriptor = ::mkostemp(temporary.data(), O_CLOEXEC);
    if (descriptor < 0) {
        return unwritable(path, reason(errno));
    }
    return WholeFile(descriptor, path, target, temporary, false);
}

Outcome<WholeFile> WholeFile::continued(const std::string& path, std::uint64_t kept) {
    if (auto fault = no_place_for_a_file(path)) {
        return *fault;
    }
    const std::string temporary = unfinished_name(path);
    const int descriptor =
        ::open(temporary.c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK, readable_by_all);
    if (descriptor < 0) {
        return unwritable(path, reason(errno));
    }
    WholeFile file(descriptor, path, behind_links(path), temporary, true);
    struct stat opened {};
    struct stat named {};
    // A run that ends just now has put what was opened in the target's place.
    const bool is_its_own = ::flock(descriptor, LOCK_EX | LOCK_NB) == 0 &&
                            ::fstat(descriptor, &opened) == 0 && ::stat(temporary.c_str(), &named) == 0 &&
                            opened.st_ino == named.st_ino && S_ISREG(opened.st_mode);
    if (!is_its_own) {
        return unwritable(path, fmt::format("another run that writes {}", temporary));
    }
    if (static_cast<std::uint64_t>(opened.st_size) < kept) {
        return unwritable(path, fmt::format("fewer bytes in {} than an earlier run wrote", temporary));
    }
    const auto size = static_cast<off_t>(kept);
    if (::ftruncate(descriptor, size) != 0 || ::lseek(descriptor, size, SEEK_SET) != size) {
        return unwritable(path, reason(errno));
    }
    file.bytes_ = kept;
    return file;
}

Fault WholeFile::failed() const {
    const int error = errno;
    Fault fault = unwritable(path_, reason(error));
    if (stays_) {
        fault.remedy =
            "What stood there before is untouched; what is done stands beside it and can be continued.";
    }
    return fault;
}

bool WholeFile::flush() {
    const bool written = write_all(descriptor_, waiting_);
    waiting_.clear();
    return written;
}

std::optional<Fault> WholeFile::write(std::string_view text) {
    constexpr std::size_t piece = 65536;
    waiting_ += text;
    bytes_ += text.size();
    if (waiting_.size() >= piece && !flush()) {
        return failed();
    }
    return std::nullopt;
}

std::optional<Fault> WholeFile::secure() {
    return flush() && ::fdatasync(descriptor_) == 0 ? std::nullopt : std::optional(failed());
}

std::optional<Fault> WholeFile::finish() {
    const bool in_place = flush() && ::fchmod(descriptor_, readable_by_all) == 0 &&
                          ::fsync(descriptor_) == 0 && std::rename(temporary_.c_str(), target_.c_str()) == 0;
    if (!in_place) {
        return failed();
    }
    temporary_.clear();
    secure_folder_of(target_);
    return std::nullopt;
}

}  // namespace entrywise
