#pragma once

#include <span>
#include <string_view>

namespace entrywise {

/// A document that is built into the program, as `packed` writes it, under its path: that of the data file in
/// the project, such as `styles/bjcp-2021/21A.yaml`, or, for each entry of an ingredient file, its kind and
/// each of its names in small letters, such as `ingredients/hop/cascade`, so that one is read without the
/// rest.
struct EmbeddedDocument {
    std::string_view path;
    std::string_view bytes;
};

/// All documents built in, sorted by path. Written at build time from `styles/` and `recipes/ingredients/`,
/// after each was read and found free of faults; whoever calls it links `entrywise_library_data`.
std::span<const EmbeddedDocument> embedded_documents();

/// The one of that path among documents sorted by path; null if there is none.
const EmbeddedDocument* find_document(std::span<const EmbeddedDocument> documents, std::string_view path);

}  // namespace entrywise
