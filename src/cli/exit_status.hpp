#pragma once

namespace entrywise {

/// How a run ended, for scripts; over many inputs the highest counts. An interrupt from the keyboard ends the
/// program by its signal, which shells show as 130.
enum class ExitStatus { done = 0, findings = 1, wrong_input = 2, fault_of_ours = 3 };

inline ExitStatus worse(ExitStatus first, ExitStatus second) {
    return first < second ? second : first;
}

}  // namespace entrywise
