#include "screening/fingerprint.hpp"

#include <doctest/doctest.h>

#include "tests/support/demo.hpp"

using namespace entrywise;
using namespace entrywise::testing;

namespace {

std::uint64_t fingerprint_of_text(const std::string& text) {
    Fingerprint fingerprint;
    fingerprint.add(text);
    return fingerprint.value();
}

}  // namespace

// Noll, test vectors of FNV-1a, 64 bits, for texts with the zero byte at their end (from memory).
TEST_CASE("a text's fingerprint is that of FNV-1a over its bytes and a zero") {
    CHECK(fingerprint_of_text("foobar") == 0x34531ca7168b8f38U);
    CHECK(fingerprint_of_text("a") == 0x089be207b544f1e4U);
    CHECK(fingerprint_text(0xabU) == "00000000000000ab");
}

TEST_CASE("the same beer under another name has the same fingerprint, another beer has not") {
    const Recipe slack_tide = demo("slack-tide");
    Recipe renamed = slack_tide;
    renamed.name = "Ebb";
    renamed.style = StyleName{"bjcp-2021", "18B"};
    renamed.declares = {{"strength", "standard"}};
    CHECK(fingerprint_of(renamed) == fingerprint_of(slack_tide));
    Recipe changed = slack_tide;
    changed.hops.back().mass += 1.0 * gram;
    CHECK(fingerprint_of(changed) != fingerprint_of(slack_tide));
    CHECK(fingerprint_of(demo("first-ferry")) != fingerprint_of(slack_tide));
}
