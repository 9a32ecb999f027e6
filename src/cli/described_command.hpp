#pragma once

#include <string>
#include <vector>

#include "cli/command_line.hpp"

namespace entrywise {

/// An option as manuals and shells tell of it.
struct DescribedOption {
    std::string letter;  ///< `-o`, empty where it has none
    std::string name;    ///< `--output`
    std::string value;   ///< what stands behind it: `FILE`; empty where nothing does
    std::string description;
    Acceptance accepted;
};

/// A command, with the words that lead to it: `styles list`.
struct DescribedCommand {
    std::vector<std::string> words;  ///< none for the program itself
    std::string description;
    std::string usage;                  ///< `entrywise check RECIPE... [OPTIONS]`
    std::vector<std::string> examples;  ///< a call each
    std::vector<DescribedOption> options;
    Acceptance accepted;  ///< behind the command
    bool has_commands = false;
};

/// The program itself and then every command, one that holds others before them.
std::vector<DescribedCommand> described_commands();

}  // namespace entrywise
