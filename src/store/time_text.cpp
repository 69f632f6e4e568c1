#include "store/time_text.h"

#include <algorithm>
#include <array>
#include <ctime>

namespace store {

std::string utc_now() {
    const std::time_t now = std::time(nullptr);
    std::tm parts{};
    gmtime_r(&now, &parts);
    std::array<char, 32> text{};
    const std::size_t size = std::strftime(text.data(), text.size(), "%Y-%m-%dT%H:%M:%SZ", &parts);
    return {text.data(), size};
}

std::string file_stamp(const std::string& utc) {
    std::string stamp = utc;
    std::replace(stamp.begin(), stamp.end(), ':', '-');
    return stamp;
}

} // namespace store
