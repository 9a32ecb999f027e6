#pragma once

#include <map>
#include <string>
#include <vector>

namespace entrywise {

/// Something that a style may ask the entry form to say, and how a recipe says it.
struct Declaration {
    std::string name;               ///< as styles call it: `pale-or-dark`
    std::string said;               ///< in a sentence: `whether it is pale or dark`
    std::vector<std::string> keys;  ///< of a recipe's `declares` that say it, the usual one first
    bool by_base_style = false;     ///< a recipe's `base_style` says it
    bool only_if_any = false;       ///< asked of some entries alone, so that its lack tells nothing
    std::map<std::string, std::vector<std::string>> choices;  ///< code of a style -> what may be said there
};

/// What may be said of it in a style; variants with a code of their own, such as `25B-table-pale`, have the
/// choices of the style that they are variants of. Empty where nothing is laid down.
std::vector<std::string> choices_in(const Declaration& declaration, const std::string& code);

/// The declaration of that name. One that is not known is said by its own name.
Declaration declaration_named(const std::vector<Declaration>& known, const std::string& name);

}  // namespace entrywise
