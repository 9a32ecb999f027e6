#include "base/file.hpp"

#include <doctest/doctest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <string>

using namespace entrywise;
namespace fs = std::filesystem;

namespace {

/// A folder of its own for a test, gone with it.
class Folder {
  public:
    Folder() {
        std::string name = (fs::temp_directory_path() / "entrywise.XXXXXX").string();
        REQUIRE(::mkdtemp(name.data()) != nullptr);
        path_ = name;
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() { fs::remove_all(path_); }

    std::string operator/(const std::string& name) const { return (path_ / name).string(); }
    std::string path() const { return path_.string(); }
    long files() const { return std::distance(fs::directory_iterator(path_), fs::directory_iterator()); }

  private:
    fs::path path_;
};

constexpr std::size_t one_kilobyte = 1024;

std::string found_by_reading(const std::string& path) {
    const auto read = read_file(path, one_kilobyte);
    return read.faults.empty() ? std::string() : read.faults.front().found;
}

}  // namespace

TEST_CASE("what is written is read back, bytes and all") {
    const Folder folder;
    const std::string text("name: Slack Tide\n\0\xFF", 19);
    REQUIRE_FALSE(write_file_whole(folder / "a.yaml", text).has_value());
    const auto read = read_file(folder / "a.yaml", one_kilobyte);
    REQUIRE(read);
    CHECK(*read == text);
    CHECK(folder.files() == 1);
}

TEST_CASE("a file is replaced whole") {
    const Folder folder;
    REQUIRE_FALSE(write_file_whole(folder / "a", "a longer text than the second").has_value());
    REQUIRE_FALSE(write_file_whole(folder / "a", "short").has_value());
    CHECK(*read_file(folder / "a", one_kilobyte) == "short");
    CHECK(folder.files() == 1);
}

TEST_CASE("a failure to write leaves nothing behind and everything as it was") {
    const Folder folder;
    const auto no_folder = write_file_whole(folder / "none/a", "text");
    REQUIRE(no_folder.has_value());
    CHECK(no_folder->expected == "a place that can be written");
    CHECK(no_folder->place.file == folder / "none/a");

    const auto over_folder = write_file_whole(folder.path(), "text");
    REQUIRE(over_folder.has_value());
    CHECK(over_folder->found == "a folder");

    REQUIRE(::mkfifo((folder / "pipe").c_str(), S_IRUSR | S_IWUSR) == 0);
    const auto over_pipe = write_file_whole(folder / "pipe", "text");
    REQUIRE(over_pipe.has_value());
    CHECK(over_pipe->found == "no regular file");
    CHECK(fs::is_fifo(folder / "pipe"));
    CHECK(folder.files() == 1);
}

TEST_CASE("a link is followed, not replaced") {
    const Folder folder;
    REQUIRE_FALSE(write_file_whole(folder / "target", "before").has_value());
    fs::create_symlink("target", folder / "link");
    REQUIRE_FALSE(write_file_whole(folder / "link", "after").has_value());
    CHECK(fs::is_symlink(folder / "link"));
    CHECK(*read_file(folder / "target", one_kilobyte) == "after");
}

TEST_CASE("what is no readable file is a fault and never waited for") {
    const Folder folder;
    CHECK(found_by_reading(folder.path()) == "a folder");
    CHECK(found_by_reading(folder / "none") == "No such file or directory");
    CHECK(found_by_reading("") == "No such file or directory");
    CHECK(found_by_reading("/dev/zero") == "no regular file");
    REQUIRE(::mkfifo((folder / "pipe").c_str(), S_IRUSR | S_IWUSR) == 0);
    CHECK(found_by_reading(folder / "pipe") == "no regular file");
}

TEST_CASE("a file may have the most bytes and not one more") {
    const Folder folder;
    REQUIRE_FALSE(write_file_whole(folder / "most", std::string(one_kilobyte, 'a')).has_value());
    REQUIRE_FALSE(write_file_whole(folder / "more", std::string(one_kilobyte + 1, 'a')).has_value());
    CHECK(read_file(folder / "most", one_kilobyte)->size() == one_kilobyte);
    CHECK(found_by_reading(folder / "more") == "more than 1024 bytes");
}

TEST_CASE("an empty file is an empty text") {
    const Folder folder;
    REQUIRE_FALSE(write_file_whole(folder / "empty", "").has_value());
    const auto read = read_file(folder / "empty", one_kilobyte);
    REQUIRE(read);
    CHECK(read->empty());
}

TEST_CASE("a file that is written piece by piece takes its place at the end alone") {
    const Folder folder;
    REQUIRE_FALSE(write_file_whole(folder / "a", "old").has_value());
    auto file = WholeFile::begun(folder / "a");
    REQUIRE(file);
    REQUIRE_FALSE(file.value->write("new, ").has_value());
    REQUIRE_FALSE(file.value->write(std::string(200000, 'x')).has_value());
    CHECK(*read_file(folder / "a", one_kilobyte) == "old");
    REQUIRE_FALSE(file.value->finish().has_value());
    CHECK(fs::file_size(folder / "a") == 200005);
    CHECK(folder.files() == 1);
}

TEST_CASE("a file that is not finished leaves no trace") {
    const Folder folder;
    {
        auto file = WholeFile::begun(folder / "a");
        REQUIRE(file);
        REQUIRE_FALSE(file.value->write("new").has_value());
    }
    CHECK(folder.files() == 0);
}

TEST_CASE("an unfinished file is continued behind what is kept of it") {
    const Folder folder;
    {
        auto file = WholeFile::continued(folder / "a", 0);
        REQUIRE(file);
        REQUIRE_FALSE(file.value->write("first line\nhalf a li").has_value());
    }
    CHECK_FALSE(fs::exists(folder / "a"));
    auto file = WholeFile::continued(folder / "a", 11);
    REQUIRE(file);
    CHECK(file.value->bytes() == 11);
    REQUIRE_FALSE(file.value->write("second line\n").has_value());
    REQUIRE_FALSE(file.value->finish().has_value());
    CHECK(*read_file(folder / "a", one_kilobyte) == "first line\nsecond line\n");
    CHECK(folder.files() == 1);
}

TEST_CASE("two runs do not write the same unfinished file, and none is taken for longer than it is") {
    const Folder folder;
    auto file = WholeFile::continued(folder / "a", 0);
    REQUIRE(file);
    CHECK_FALSE(WholeFile::continued(folder / "a", 0));
    REQUIRE_FALSE(file.value->finish().has_value());
    CHECK_FALSE(WholeFile::continued(folder / "a", 1));
    CHECK_FALSE(WholeFile::begun(folder.path()));
    CHECK_FALSE(WholeFile::continued(folder / "none/a", 0));
}
