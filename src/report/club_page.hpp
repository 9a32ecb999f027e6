#pragma once

#include <string>
#include <vector>

namespace entrywise {

/// An entry of a club's evening as its page shows it. Every text is shown as it is.
struct ClubRow {
    std::string entry;     ///< its number
    std::string name;      ///< of the recipe
    std::string category;  ///< as it was entered, `21A`
    std::string style;     ///< the category in words
    std::string status;    ///< one of the words of `ClubPage::statuses`
    double at_risk = 0.0;  ///< points, middle
    std::string at_risk_span;
    std::string suggestion;            ///< where it would do better, what is missing; may be empty
    std::vector<std::string> details;  ///< sentences that its row opens
};

/// A status in the order in which it wants attention.
struct ClubStatus {
    std::string word;     ///< `move`
    std::string meaning;  ///< `would do better elsewhere`
};

/// A club's evening.
struct ClubPage {
    std::string title;
    std::vector<ClubStatus> statuses;
    std::vector<ClubRow> rows;
};

/// The page of an evening, in one file: entries by status, each row opening its detail. A small script sorts
/// and filters; without it everything can be read.
std::string club_page(const ClubPage& page);

}  // namespace entrywise
