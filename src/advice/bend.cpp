#include "advice/bend.hpp"

namespace entrywise {

bool BendingWords::add(RunKind kind) {
    negation_ = negation_ || kind == RunKind::negation;
    lack_ = lack_ || kind == RunKind::lack;
    excess_ = excess_ || kind == RunKind::excess;
    praise_ = praise_ || kind == RunKind::praise;
    return bends(kind);
}

Bend BendingWords::bend() const {
    if (negation_ && praise_) {
        return Bend::excess;
    }
    if (lack_) {
        return Bend::lack;
    }
    if (negation_) {
        return excess_ ? Bend::praise : Bend::lack;
    }
    return praise_ ? Bend::praise : excess_ ? Bend::excess : Bend::none;
}

}  // namespace entrywise
