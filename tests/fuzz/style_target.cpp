#include "reading/style_reader.hpp"
#include "reading/yaml_document.hpp"
#include "tests/fuzz/must.hpp"
#include "tests/fuzz/targets.hpp"

namespace entrywise::fuzz {

void read_style_file(std::string_view bytes) {
    const auto document = yaml_document(bytes, "file");
    must_be_sound(document);
    if (document) {
        must_be_sound(read_style(*document, {"bjcp-2021", "21A"}, "file"));
    }
}

}  // namespace entrywise::fuzz
