#include "store/checksum.h"

#include <array>

namespace store {

namespace {

constexpr std::uint32_t polynomial = 0xEDB88320; // IEEE 802.3, bits reversed

constexpr std::array<std::uint32_t, 256> make_table() {
    std::array<std::uint32_t, 256> table{};
    for (std::uint32_t byte = 0; byte < table.size(); ++byte) {
        std::uint32_t rest = byte;
        for (int bit = 0; bit < 8; ++bit)
            rest = (rest & 1U) != 0 ? (rest >> 1U) ^ polynomial : rest >> 1U;
        table[byte] = rest;
    }
    return table;
}

} // namespace

std::uint32_t crc32(std::string_view bytes) {
    static constexpr auto table = make_table();
    std::uint32_t sum = 0xFFFFFFFF;
    for (const char byte : bytes)
        sum = (sum >> 8U) ^ table[(sum ^ static_cast<unsigned char>(byte)) & 0xFFU];
    return ~sum;
}

std::string crc32_text(std::string_view bytes) {
    constexpr std::string_view digits = "0123456789abcdef";
    std::string text;
    const std::uint32_t sum = crc32(bytes);
    for (int shift = 28; shift >= 0; shift -= 4)
        text += digits[(sum >> static_cast<unsigned>(shift)) & 0xFU];
    return text;
}

} // namespace store
