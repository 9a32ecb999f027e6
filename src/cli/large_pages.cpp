#include "cli/large_pages.hpp"

#if defined(__GLIBC__)
#include <malloc.h>
#include <sys/mman.h>

#include <cstdint>
#include <cstdlib>
#endif

namespace entrywise {

#if defined(__GLIBC__)

namespace {

std::uintptr_t address_of(const void* place) {
    return reinterpret_cast<std::uintptr_t>(place);
}

}  // namespace

void take_memory_in_large_pages() {
    constexpr std::size_t large_page = std::size_t{2} << 20U;
    constexpr std::size_t more_than_is_left = std::size_t{256} << 10U;
    constexpr std::size_t bookkeeping = 64;  // what the heap may write between two allocations, at most
    mallopt(M_TOP_PAD, 2 * large_page);
    mallopt(M_MMAP_THRESHOLD, large_page);
    // Nothing may have been written yet to what becomes a large page. So all addresses up to it are left out:
    // they take no memory as long as nobody writes there. They stay taken, and are no leak.
    static void* left_out = std::malloc(more_than_is_left);
    const std::uintptr_t begin = address_of(left_out);
    const std::uintptr_t page =
        (begin + more_than_is_left + bookkeeping + large_page - 1) / large_page * large_page;
    void* const up_to_page = std::realloc(left_out, page - begin - bookkeeping);
    left_out = up_to_page == nullptr ? left_out : up_to_page;
    if (begin != 0 && address_of(up_to_page) == begin) {
        madvise(reinterpret_cast<void*>(page), large_page, MADV_HUGEPAGE);
    }
}

#else

void take_memory_in_large_pages() {}

#endif

}  // namespace entrywise
