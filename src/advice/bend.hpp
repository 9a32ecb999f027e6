#pragma once

#include "advice/note_words.hpp"

namespace entrywise {

/// How words bend the remark that they stand with.
enum class Bend { none, lack, excess, praise };

/// The words between two phrases that bend one of them.
class BendingWords {
  public:
    /// Takes a run in where it bends, and returns whether it does.
    bool add(RunKind kind);

    /// What they come to together: `not too` is praise, `not enough` a lack, `not nice` an excess.
    Bend bend() const;

  private:
    bool negation_ = false;
    bool lack_ = false;
    bool excess_ = false;
    bool praise_ = false;
};

}  // namespace entrywise
