// Writes the manual page and the completions of shells into a folder. Use: entrywise_manual FOLDER VERSION
// DATE

#include <fmt/format.h>

#include <string>

#include "base/file.hpp"
#include "manual/completions.hpp"
#include "manual/man_page.hpp"

namespace {

using namespace entrywise;

bool written(const std::string& path, const std::string& text) {
    const auto fault = write_file_whole(path, text);
    if (fault) {
        fmt::print(stderr, "{}\n", to_line(*fault));
    }
    return !fault;
}

}  // namespace

int main(int count, char** words) {
    if (count != 4) {
        fmt::print(stderr, "Use: entrywise_manual FOLDER VERSION DATE\n");
        return 2;
    }
    const std::string folder = words[1];
    const auto commands = described_commands();
    const bool all_written = written(folder + "/entrywise.1", man_page(commands, words[2], words[3])) &&
                             written(folder + "/entrywise.bash", bash_completion(commands)) &&
                             written(folder + "/_entrywise", zsh_completion(commands)) &&
                             written(folder + "/entrywise.fish", fish_completion(commands));
    return all_written ? 0 : 2;
}
