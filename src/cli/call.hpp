#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "base/fault.hpp"

namespace entrywise {

enum class Command {
    estimate,
    check,
    rank,
    mend,
    explain,
    convert,
    styles_list,
    styles_show,
    styles_compare,
    styles_validate
};
enum class Format { text, json, html };
enum class ColorChoice { automatic, always, never };

/// What the user asks for, with every option checked.
struct Call {
    Command command = Command::check;
    std::vector<std::string> words;  ///< recipes, style codes, style files, or what is searched for
    std::string style;               ///< code, empty to take what each recipe declares
    std::string guide;               ///< the one guide that is asked for, empty for all
    bool card = false;               ///< a style as a judge holds it at the table
    std::string pick;                ///< of several recipes in one file, by name or number
    std::string to;                  ///< `recipe` or `beerjson`; empty to take the other one of the two
    std::string styles_folder;
    std::string ingredients_folder;
    Format format = Format::text;
    std::string output = "-";
    std::optional<double> fail_at;
    std::vector<std::string> among;     ///< of `rank`: codes, one or several a text; empty for all
    std::vector<std::string> notes;     ///< of `explain`: as judges wrote them
    std::vector<std::string> measured;  ///< `key=value`, one or several a text
    std::vector<std::string> scores;    ///< `section=points`, one or several a text
    bool brewed = false;                ///< mend what is brewed already
    std::optional<double> target;       ///< points at risk to mend down to
    std::string with_folder;            ///< recipes to blend with
    std::string write;                  ///< file for the mended recipe
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
