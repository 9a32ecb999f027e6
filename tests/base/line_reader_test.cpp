#include "base/line_reader.hpp"

#include <doctest/doctest.h>
#include <unistd.h>

#include <array>
#include <string>
#include <thread>
#include <utility>
#include <vector>

using namespace entrywise;

namespace {

constexpr std::size_t most_bytes = 100;

/// The lines of a text that comes through a pipe.
std::vector<InputLine> lines_of(const std::string& text) {
    std::array<int, 2> ends{};
    REQUIRE(::pipe(ends.data()) == 0);
    std::thread writer([&] {
        std::size_t at = 0;
        while (at < text.size()) {
            const ssize_t count = ::write(ends[1], text.data() + at, text.size() - at);
            at += count > 0 ? static_cast<std::size_t>(count) : 0;
        }
        ::close(ends[1]);
    });
    LineReader reader(ends[0], most_bytes);
    std::vector<InputLine> lines;
    while (auto line = reader.next()) {
        lines.push_back(*std::move(line));
    }
    writer.join();
    ::close(ends[0]);
    CHECK(reader.error() == 0);
    CHECK(reader.bytes_read() == text.size());
    CHECK_FALSE(reader.next().has_value());
    return lines;
}

}  // namespace

TEST_CASE("lines come one at a time, with or without a last line end") {
    const auto lines = lines_of("one\r\n\ntwo");
    REQUIRE(lines.size() == 3);
    CHECK(lines[0].text == "one");
    CHECK(lines[1].text.empty());
    CHECK(lines[2].text == "two");
    CHECK(lines[2].number == 3);
    CHECK(lines_of("one\n").size() == 1);
    CHECK(lines_of("").empty());
}

TEST_CASE("a line that is too long is read over and told") {
    const auto lines = lines_of("a\n" + std::string(300000, 'x') + "\nb\n");
    REQUIRE(lines.size() == 3);
    CHECK(lines[1].too_long);
    CHECK(lines[1].text.empty());
    CHECK_FALSE(lines[2].too_long);
    CHECK(lines[2].text == "b");
    CHECK_FALSE(lines_of(std::string(most_bytes, 'x'))[0].too_long);
    CHECK(lines_of(std::string(most_bytes + 1, 'x'))[0].too_long);
}

TEST_CASE("many lines across the pieces that are read at once") {
    std::string text;
    for (int number = 0; number < 20000; ++number) {
        text += std::to_string(number) + '\n';
    }
    const auto lines = lines_of(text);
    REQUIRE(lines.size() == 20000);
    CHECK(lines[19999].text == "19999");
    CHECK(lines[12345].text == "12345");
}

TEST_CASE("what cannot be read is told") {
    LineReader reader(-1, most_bytes);
    CHECK_FALSE(reader.next().has_value());
    CHECK(reader.error() != 0);
}
