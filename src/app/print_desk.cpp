#include "app/print_desk.h"

#include <utility>

namespace app {

PrintDesk::PrintDesk(
    OpenCampaign& campaign,
    widgets::PrintChoices& choices,
    std::function<void()> wake,
    ShowImage show_image
)
    : campaign_(campaign), choices_(choices), show_image_(std::move(show_image)),
      worker_(std::move(wake)) {}

PrintWorker::Values PrintDesk::values() const {
    return std::make_shared<const PrintValues>(campaign_);
}

void PrintDesk::show(std::size_t side, int width) {
    const std::uint64_t revision = campaign_.document().revision();
    const bool is_new = asked_ != choices_.order || asked_revision_ != revision;
    if (is_new) {
        asked_ = choices_.order;
        asked_revision_ = revision;
        worker_.lay_out(choices_.order, values());
    }
    if (width <= 0 || (!is_new && asked_side_ == side && asked_width_ == width)) return;
    asked_side_ = side;
    asked_width_ = width;
    worker_.draw(side, width);
}

void PrintDesk::save(const std::string& path) {
    worker_.save(choices_.order, values(), path, choices_.opens_afterwards);
}

void PrintDesk::stop() {
    worker_.stop();
}

std::vector<std::string> PrintDesk::look_after() {
    PrintNews news = worker_.take_news();
    state_.doing = std::move(news.doing);
    state_.done = news.done;
    state_.all = news.all;
    state_.problem = std::move(news.problem);
    state_.pages = news.pages;
    state_.sides = news.sides;
    state_.wanted = std::move(news.wanted);
    if (news.image.has_value()) {
        widgets::SidePicture& picture = state_.picture;
        if (show_image_) picture.texture = show_image_(*news.image, picture.texture);
        picture.width = news.image->width;
        picture.height = news.image->height;
    }
    return std::move(news.messages);
}

} // namespace app
