#pragma once

#include <algorithm>
#include <filesystem>
#include <string>
#include <vector>

#include "advice/check.hpp"
#include "reading/recipe_file.hpp"
#include "recipe/recipe.hpp"
#include "style/style.hpp"
#include "tests/support/guide.hpp"

namespace entrywise::testing {

/// A recipe of the demo club, by the name of its file.
inline Recipe demo(const std::string& name) {
    return *read_recipe(std::string(ENTRYWISE_SOURCE_DIR) + "/recipes/" + name + ".yaml",
                        usual_library().ingredients());
}

/// The names of all of them, in order.
inline std::vector<std::string> demo_names() {
    std::vector<std::string> names;
    for (const auto& file :
         std::filesystem::directory_iterator(std::string(ENTRYWISE_SOURCE_DIR) + "/recipes")) {
        if (file.path().extension() == ".yaml") {
            names.push_back(file.path().stem().string());
        }
    }
    std::sort(names.begin(), names.end());
    return names;
}

/// Every style of the Beer Judge Certification Program, Beer Style Guidelines, 2021.
inline const std::vector<Style>& all_of_the_guide() {
    static const std::vector<Style> styles = styles_of("bjcp-2021");
    return styles;
}

/// Each demo beer held against every so-manyth style of that guide: `visit(name, check)`.
template <class Visit>
void check_demo_beers(std::size_t every, Visit visit) {
    for (const std::string& name : demo_names()) {
        const Recipe recipe = demo(name);
        for (std::size_t index = 0; index < all_of_the_guide().size(); index += every) {
            visit(name, check(recipe, all_of_the_guide()[index], usual_handbook()));
        }
    }
}

}  // namespace entrywise::testing
