#pragma once

#include <span>
#include <string_view>

namespace entrywise {

/// A data file that is built into the program: its path in the project, such as `styles/bjcp-2021/21A.yaml`,
/// and its document as `packed` writes it.
struct EmbeddedDocument {
    std::string_view path;
    std::string_view bytes;
};

/// All data files built in, sorted by path. Written at build time from `styles/` and `recipes/ingredients/`,
/// after each was read and found free of faults; whoever calls it links `entrywise_library_data`.
std::span<const EmbeddedDocument> embedded_documents();

/// The one of that path among documents sorted by path; null if there is none.
const EmbeddedDocument* find_document(std::span<const EmbeddedDocument> documents, std::string_view path);

}  // namespace entrywise
