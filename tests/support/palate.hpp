#pragma once

#include "reading/library.hpp"
#include "reading/perception_reader.hpp"
#include "style/perception.hpp"

namespace entrywise::testing {

/// The palate of the program: the maps of styles/perception.yaml.
inline const Perception& usual_palate() {
    static const Perception palate = [] {
        const Library library(embedded_documents());
        return *read_perception(*library.document("styles/perception.yaml"), "styles/perception.yaml");
    }();
    return palate;
}

}  // namespace entrywise::testing
