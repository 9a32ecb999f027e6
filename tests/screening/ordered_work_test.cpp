#include "screening/ordered_work.hpp"

#include <doctest/doctest.h>

#include <atomic>
#include <chrono>
#include <stdexcept>
#include <string>
#include <thread>
#include <vector>

using namespace entrywise;

namespace {

/// Works on the numbers from nothing up, the first of every ten slowly.
struct Counting {
    int inputs = 200;
    int stop_after = -1;
    int next = 0;
    std::atomic<int> at_once = 0;
    std::atomic<int> begun = 0;
    std::vector<std::string> taken;
    int furthest_ahead = 0;

    void run(std::size_t threads) {
        OrderedWork<int, std::string> work(
            [this] { return next < inputs ? std::optional(next++) : std::nullopt; },
            [this](int number, std::size_t /*thread*/) {
                ++begun;
                if (number % 10 == 0) {
                    std::this_thread::sleep_for(std::chrono::milliseconds(2));
                }
                return std::to_string(number);
            },
            [this](std::string result) {
                CHECK(++at_once == 1);
                taken.push_back(std::move(result));
                furthest_ahead = std::max(furthest_ahead, begun.load() - static_cast<int>(taken.size()));
                --at_once;
                return static_cast<int>(taken.size()) != stop_after;
            });
        work.run(threads);
    }
};

}  // namespace

TEST_CASE("results come in the order of the inputs, whatever the number of threads") {
    for (const std::size_t threads : {1U, 2U, 4U, 9U}) {
        Counting counting;
        counting.run(threads);
        REQUIRE(counting.taken.size() == 200);
        for (std::size_t number = 0; number < 200; ++number) {
            CHECK(counting.taken[number] == std::to_string(number));
        }
    }
}

TEST_CASE("no more inputs are taken up than the window holds") {
    Counting counting;
    counting.inputs = 2000;
    counting.run(4);
    CHECK(counting.furthest_ahead <= 4 * 8);
}

TEST_CASE("work ends where nobody takes any more") {
    Counting counting;
    counting.stop_after = 7;
    counting.run(3);
    CHECK(counting.taken.size() == 7);
    CHECK(counting.next < 200);
}

TEST_CASE("without inputs there are no results") {
    Counting counting;
    counting.inputs = 0;
    counting.run(4);
    CHECK(counting.taken.empty());
}

TEST_CASE("what a piece of work throws is thrown on, and the others end") {
    for (const std::size_t threads : {1U, 4U}) {
        int next = 0;
        OrderedWork<int, int> work([&] { return std::optional(next++); },
                                   [](int number, std::size_t /*thread*/) {
                                       return number == 30 ? throw std::runtime_error("thirty") : number;
                                   },
                                   [](int /*result*/) { return true; });
        CHECK_THROWS_WITH(work.run(threads), "thirty");
    }
}
