#include "reading/embedded.hpp"

#include <algorithm>

namespace entrywise {

const EmbeddedDocument* find_document(std::span<const EmbeddedDocument> documents, std::string_view path) {
    const auto found = std::lower_bound(
        documents.begin(), documents.end(), path,
        [](const EmbeddedDocument& document, std::string_view wanted) { return document.path < wanted; });
    return found == documents.end() || found->path != path ? nullptr : &*found;
}

}  // namespace entrywise
