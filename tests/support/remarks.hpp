#pragma once

#include "advice/heard.hpp"
#include "reading/remark_reader.hpp"
#include "tests/support/guide.hpp"

namespace entrywise::testing {

/// The remarks that are built in.
inline const RemarkBook& usual_remarks() {
    static const RemarkBook book =
        *read_remarks(*usual_library().document("styles/remarks.yaml"), "styles/remarks.yaml");
    return book;
}

}  // namespace entrywise::testing
