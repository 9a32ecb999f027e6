#pragma once

#include <string>
#include <vector>

namespace entrywise {

/// Options as they stand in the call, before they are checked. CLI11 is given texts alone: its own
/// conversions take `nan`, hexadecimal numbers and the like.
struct RawOptions {
    std::string style;
    std::string guide;
    std::string competition;
    std::string pick;
    std::string to;
    std::string styles_folder;
    std::string ingredients_folder;
    std::string format = "text";
    std::string output = "-";
    std::string fail_at;
    std::string stage = "recipe";
    std::string target;
    std::string with_folder;
    std::string write;
    std::string color = "auto";
    std::string width;
    std::vector<std::string> among;
    std::vector<std::string> notes;
    std::vector<std::string> measured;
    std::vector<std::string> scores;
    std::vector<std::string> statuses;
    std::vector<std::string> categories;
    std::string sort = "entry";
    std::string threads;
    bool blind = false;
    bool resume = false;
    bool ascii = false;
    bool card = false;
};

}  // namespace entrywise
