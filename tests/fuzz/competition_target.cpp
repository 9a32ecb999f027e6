#include "reading/competition_reader.hpp"
#include "reading/yaml_document.hpp"
#include "tests/fuzz/must.hpp"
#include "tests/fuzz/targets.hpp"

namespace entrywise::fuzz {

void read_competition_file(std::string_view bytes) {
    const auto document = yaml_document(bytes, "file");
    must_be_sound(document);
    if (document) {
        must_be_sound(read_competition(*document, built_in(), "file"));
    }
}

}  // namespace entrywise::fuzz
