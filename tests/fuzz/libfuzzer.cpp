#include <cstddef>
#include <cstdint>

#include "tests/fuzz/targets.hpp"

// The one function that the fuzzer calls; the build says which door it knocks at.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    entrywise::fuzz::ENTRYWISE_TARGET({reinterpret_cast<const char*>(bytes), size});
    return 0;
}
