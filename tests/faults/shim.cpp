// Stands between the program and its system (LD_PRELOAD) and lets calls fail, by what the environment says:
//   FAULT_ALLOCATION=N       the N-th allocation of memory fails; with FAULT_LASTS all after it fail too
//   FAULT_SHORT=1            reading and writing do a few bytes at a time and are interrupted now and then
//   FAULT_WRITE=N            the N-th write and all after it fail with an error of the device
//   FAULT_RENAME=1, FAULT_SYNC=1, FAULT_OPEN=N     these fail; of opening, the N-th and all after it
// Standard error stays whole, so that what is told of a fault can be read.
#include <dlfcn.h>
#include <fcntl.h>
#include <sys/types.h>
#include <unistd.h>

#include <algorithm>
#include <atomic>
#include <cerrno>
#include <cstdarg>
#include <cstddef>
#include <cstdlib>

extern "C" void* __libc_malloc(std::size_t size);

namespace {

/// A number of the environment; 0 where it says none. It allocates nothing.
long wanted(const char* name) {
    const char* const value = std::getenv(name);
    return value == nullptr ? 0 : std::atol(value);
}

/// Whether a call is one that has to fail, by its number.
bool fails(std::atomic<long>& calls, long failing, bool lasts) {
    const long call = ++calls;
    return failing > 0 && (call == failing || (lasts && call > failing));
}

std::atomic<long> allocations{0};
std::atomic<long> reads{0};
std::atomic<long> writes{0};
std::atomic<long> opens{0};

/// Reading or writing a few bytes at a time; zero where the call is to be interrupted.
std::size_t shortened(std::atomic<long>& calls, std::size_t size) {
    if (wanted("FAULT_SHORT") == 0) {
        return size;
    }
    constexpr long interrupted_each = 5;
    const long call = ++calls;
    return call % interrupted_each == 0 ? 0 : std::min(size, static_cast<std::size_t>(call % 7 * 11 + 1));
}

template <class Function>
Function* real(const char* name) {
    return reinterpret_cast<Function*>(dlsym(RTLD_NEXT, name));
}

}  // namespace

extern "C" {

void* malloc(std::size_t size) {
    static const long failing = wanted("FAULT_ALLOCATION");
    static const bool lasts = wanted("FAULT_LASTS") != 0;
    if (fails(allocations, failing, lasts)) {
        errno = ENOMEM;
        return nullptr;
    }
    return __libc_malloc(size);
}

ssize_t read(int descriptor, void* buffer, std::size_t size) {
    const std::size_t at_once = shortened(reads, size);
    if (at_once == 0 && size > 0) {
        errno = EINTR;
        return -1;
    }
    return real<ssize_t(int, void*, std::size_t)>("read")(descriptor, buffer, at_once);
}

ssize_t write(int descriptor, const void* buffer, std::size_t size) {
    const auto whole = real<ssize_t(int, const void*, std::size_t)>("write");
    if (descriptor == STDERR_FILENO) {
        return whole(descriptor, buffer, size);
    }
    if (fails(writes, wanted("FAULT_WRITE"), true)) {
        errno = EIO;
        return -1;
    }
    const std::size_t at_once = shortened(reads, size);
    if (at_once == 0 && size > 0) {
        errno = EINTR;
        return -1;
    }
    return whole(descriptor, buffer, at_once);
}

int fsync(int descriptor) {
    if (wanted("FAULT_SYNC") != 0) {
        errno = EIO;
        return -1;
    }
    return real<int(int)>("fsync")(descriptor);
}

int rename(const char* from, const char* to) {
    if (wanted("FAULT_RENAME") != 0) {
        errno = EACCES;
        return -1;
    }
    return real<int(const char*, const char*)>("rename")(from, to);
}

int open(const char* path, int flags, ...) {
    mode_t mode = 0;
    if ((flags & O_CREAT) != 0) {
        va_list arguments;
        va_start(arguments, flags);
        mode = va_arg(arguments, mode_t);
        va_end(arguments);
    }
    if (fails(opens, wanted("FAULT_OPEN"), true)) {
        errno = EMFILE;
        return -1;
    }
    return real<int(const char*, int, ...)>("open")(path, flags, mode);
}
}
