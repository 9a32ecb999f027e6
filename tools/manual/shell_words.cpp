#include "manual/shell_words.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/text.hpp"
#include "reading/style_name.hpp"

namespace entrywise {

std::string option_words(const DescribedCommand& command) {
    std::vector<std::string> words;
    for (const DescribedOption& option : command.options) {
        if (!option.letter.empty()) {
            words.push_back(option.letter);
        }
        words.push_back(option.name);
    }
    return joined(words, " ");
}

std::string function_suffix(const DescribedCommand& command) {
    return command.words.empty() ? std::string() : "_" + joined(command.words, "_");
}

std::vector<DescribedCommand> commands_below(const DescribedCommand& command,
                                             const std::vector<DescribedCommand>& commands) {
    std::vector<DescribedCommand> below;
    for (const DescribedCommand& each : commands) {
        const bool is_longer = each.words.size() == command.words.size() + 1;
        if (is_longer && std::equal(command.words.begin(), command.words.end(), each.words.begin())) {
            below.push_back(each);
        }
    }
    return below;
}

std::string styles_pipeline(std::string_view program, std::string_view separator) {
    return fmt::format(
        R"({} styles list --format json 2>/dev/null | awk -F'"' '$2 == "guide" {{ guide = $4 == "{}" ? "" : $4 "/" }} )"
        R"($2 == "code" {{ code = $4 }} $2 == "name" {{ print guide code "{}" $4 }}')",
        program, default_guide, separator);
}

std::string guides_pipeline(std::string_view program) {
    return fmt::format(
        R"({} styles list --format json 2>/dev/null | awk -F'"' '$2 == "guide" && !told[$4]++ {{ print $4 }}')",
        program);
}

std::string in_quotes(std::string_view text, std::string_view quote) {
    std::string result = "'";
    for (const char letter : text) {
        result += letter == '\'' ? std::string(quote) : std::string(1, letter);
    }
    return result + "'";
}

}  // namespace entrywise
