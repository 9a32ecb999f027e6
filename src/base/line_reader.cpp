#include "base/line_reader.hpp"

#include <unistd.h>

#include <cerrno>

namespace entrywise {

bool LineReader::fill() {
    constexpr std::size_t piece = 65536;
    buffer_.resize(piece);
    at_ = 0;
    ssize_t count = -1;
    do {
        count = ::read(descriptor_, buffer_.data(), piece);
    } while (count < 0 && errno == EINTR);
    if (count < 0) {
        error_ = errno;
    }
    buffer_.resize(count > 0 ? static_cast<std::size_t>(count) : 0);
    bytes_read_ += buffer_.size();
    ended_ = buffer_.empty();
    return !ended_;
}

std::optional<InputLine> LineReader::next() {
    InputLine line;
    bool holds_anything = false;
    while (!ended_ && (at_ < buffer_.size() || fill())) {
        holds_anything = true;
        const std::size_t end = buffer_.find('\n', at_);
        const std::size_t stop = end == std::string::npos ? buffer_.size() : end;
        if (line.text.size() + (stop - at_) > most_bytes_) {
            line.too_long = true;
        } else if (!line.too_long) {
            line.text.append(buffer_, at_, stop - at_);
        }
        at_ = end == std::string::npos ? stop : end + 1;
        if (end != std::string::npos) {
            break;
        }
    }
    if (!holds_anything || error_ != 0) {
        return std::nullopt;
    }
    if (line.too_long) {
        line.text.clear();
    } else if (line.text.ends_with('\r')) {
        line.text.pop_back();
    }
    line.number = ++line_number_;
    return line;
}

}  // namespace entrywise
