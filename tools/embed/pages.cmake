# Writes the parts of the HTML pages into a source file of the program, each by its file name.
# Use: cmake "-DFILES=A;B" -DOUTPUT=FILE -P pages.cmake
set(entries "")
foreach(file IN LISTS FILES)
    file(READ "${file}" text)
    cmake_path(GET file FILENAME name)
    string(APPEND entries "        {\"${name}\", R\"~~~~(${text})~~~~\"},\n")
endforeach()
file(WRITE "${OUTPUT}" "#include \"report/page_parts.hpp\"

namespace entrywise {

std::span<const PagePart> page_parts() {
    static constexpr PagePart parts[] = {
${entries}    };
    return parts;
}

}  // namespace entrywise
")
