// What the script of the page sees of the core: memory for a question, and an answer to it.

#include <cstddef>
#include <cstdlib>
#include <string>
#include <string_view>

#include "page/door.hpp"

namespace {

/// Opened at the first question and kept, as the page is.
const entrywise::Outcome<entrywise::Door>& door() {
    static const auto opened = entrywise::Door::open();
    return opened;
}

std::string& last_answer() {
    static std::string answer;
    return answer;
}

}  // namespace

extern "C" {

char* question_memory(std::size_t size) {
    return static_cast<char*>(std::malloc(size));
}

/// Takes the question's memory back. The answer lasts until the next question.
const char* answer_question(char* question, std::size_t size) {
    last_answer() = door() ? door()->answer(std::string_view(question, size)) : std::string();
    std::free(question);
    return last_answer().data();
}

std::size_t answer_size() {
    return last_answer().size();
}
}
