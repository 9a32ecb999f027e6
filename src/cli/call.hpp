#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "base/fault.hpp"

namespace entrywise {

enum class Command { estimate, check, convert, styles_list, styles_show, styles_validate };
enum class Format { text, json };
enum class ColorChoice { automatic, always, never };

/// What the user asks for, with every option checked.
struct Call {
    Command command = Command::check;
    std::vector<std::string> words;  ///< recipes, style codes or style files
    std::string style;               ///< code, empty to take what each recipe declares
    std::string pick;                ///< of several recipes in one file, by name or number
    std::string to;                  ///< `recipe` or `beerjson`; empty to take the other one of the two
    std::string styles_folder;
    std::string ingredients_folder;
    Format format = Format::text;
    std::string output = "-";
    std::optional<double> fail_at;
    ColorChoice color = ColorChoice::automatic;
    bool ascii = false;
    std::optional<std::size_t> width;
};

/// The user asks to be told something that needs no work.
struct HelpWanted {
    std::string text;
    bool asked_for = true;  ///< false where the call is empty and help is the answer to that
};
struct VersionWanted {};

/// What is wrong with a call, and in which format the user wants to be told.
struct WrongCall {
    std::vector<Fault> faults;
    Format format = Format::text;
};

/// Understands the words behind the program's name.
std::variant<Call, HelpWanted, VersionWanted, WrongCall> understand(
    const std::vector<std::string>& arguments);

}  // namespace entrywise
