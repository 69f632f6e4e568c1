#include "game/own_page_keeping.h"

#include <algorithm>

namespace game {

const OwnPage* find_own_page(const OwnPages& pages, Id id) {
    const auto found =
        std::find_if(pages.pages.begin(), pages.pages.end(), [id](const OwnPage& page) {
            return page.id == id;
        });
    return found == pages.pages.end() ? nullptr : &*found;
}

OwnPage* find_own_page(OwnPages& pages, Id id) {
    const auto found =
        std::find_if(pages.pages.begin(), pages.pages.end(), [id](const OwnPage& page) {
            return page.id == id;
        });
    return found == pages.pages.end() ? nullptr : &*found;
}

Id add_own_page(OwnPages& pages, const std::string& title) {
    OwnPage page;
    page.id = pages.next_id++;
    page.title = title;
    pages.pages.push_back(std::move(page));
    return pages.pages.back().id;
}

void remove_own_page(OwnPages& pages, Id id) {
    std::erase_if(pages.pages, [id](const OwnPage& page) { return page.id == id; });
}

} // namespace game
