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
    screen,
    convert,
    styles_list,
    styles_show,
    styles_compare,
    styles_validate
};
enum class Format { text, json, csv, jsonl, html };

/// What a screening is put in order by.
enum class ScreenOrder { entry, risk, gain, category, status, strength };

enum class ColorChoice { automatic, always, never };

/// What the user asks for, with every option checked.
struct Call {
    Command command = Command::check;
    std::vector<std::string> words;  ///< recipes, style codes, style files, or what is searched for
    std::string style;               ///< code, empty to take what each recipe declares
    std::string guide;        ///< guides that are asked for, apart by commas; empty for the command's own
    std::string competition;  ///< file that says which styles are accepted, empty for none
    bool card = false;        ///< a style as a judge holds it at the table
    std::string pick;         ///< of several recipes in one file, by name or number
    std::string to;           ///< `recipe` or `beerjson`; empty to take the other one of the two
    std::string styles_folder;
    std::string ingredients_folder;
    Format format = Format::text;
    std::string output = "-";
    std::optional<double> fail_at;
    std::vector<std::string> among;       ///< of `rank`: codes, one or several a text; empty for all
    std::vector<std::string> notes;       ///< of `explain`: as judges wrote them
    std::vector<std::string> measured;    ///< `key=value`, one or several a text
    std::vector<std::string> scores;      ///< `section=points`, one or several a text
    bool brewed = false;                  ///< mend what is brewed already
    std::optional<double> target;         ///< points at risk to mend down to
    std::string with_folder;              ///< recipes to blend with
    std::string write;                    ///< file for the mended recipe
    bool blind = false;                   ///< no brewer's name in the result
    bool resume = false;                  ///< go on where an interrupted run ended
    std::vector<std::string> statuses;    ///< of `screen`: only entries that stand so; empty for all
    std::vector<std::string> categories;  ///< of `screen`: only entries of these styles; empty for all
    ScreenOrder order = ScreenOrder::entry;
    std::optional<std::size_t> threads;  ///< nothing for as many as the machine has cores
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
