#include "interchange/remark.hpp"

namespace entrywise {

std::string name_of(RemarkKind kind) {
    switch (kind) {
        case RemarkKind::matched:
            return "matched";
        case RemarkKind::read_as:
            return "read as";
        case RemarkKind::missing:
            return "missing";
        case RemarkKind::left_out:
            return "left out";
    }
    return {};
}

}  // namespace entrywise
