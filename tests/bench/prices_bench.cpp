// Finding a price at every letter typed, against a plain search for the text in every name.
#include "bench/measure.h"
#include "game/price_search.h"
#include "store/prices.h"

#include <cstdio>
#include <string>

int main() {
    const auto read = store::load_prices(
        TABLEWICK_SOURCE_DIR "/assets", rules::Family::srd5, rules::SrdEdition::srd_5_2_1
    );
    if (!read.ok()) return 1;
    const rules::PriceBook& book = read.value();
    std::printf("%zu prices\n", book.prices.size());
    for (const char* typed : {"", "l", "long", "longsowrd"}) {
        const std::string text = typed;
        measure::compare(
            "search for \"" + text + "\"",
            [&] {
                return static_cast<double>(game::search_prices(book, {text, {}, -1, {}}).size());
            },
            "a plain search of the names",
            [&] {
                double found = 0;
                for (const rules::Price& price : book.prices)
                    found += price.name.find(text) == std::string::npos ? 0 : 1;
                return found;
            }
        );
    }
    return 0;
}
