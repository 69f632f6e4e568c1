#include "app/print_worker.h"

#include "app/opening.h"
#include "app/print_pages.h"

#include <algorithm>
#include <cairo.h>
#include <chrono>
#include <cmath>
#include <utility>

namespace app {

namespace {

constexpr int width_max = 8000; // pixels of a side

struct SurfaceEnd {
    void operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
};

struct CairoEnd {
    void operator()(cairo_t* cairo) const { cairo_destroy(cairo); }
};

SideImage image_of(const print::Document& document, std::size_t side, int width) {
    const print::SizeMm sheet = print::sheet_size(document.setup());
    const double scale = width / (sheet.width * print::points_per_mm);
    SideImage image{side, width, 0, {}};
    image.height =
        std::max(1, static_cast<int>(std::lround(sheet.height * print::points_per_mm * scale)));
    const std::unique_ptr<cairo_surface_t, SurfaceEnd> surface(
        cairo_image_surface_create(CAIRO_FORMAT_RGB24, width, image.height)
    );
    const std::unique_ptr<cairo_t, CairoEnd> cairo(cairo_create(surface.get()));
    cairo_set_source_rgb(cairo.get(), 1, 1, 1);
    cairo_paint(cairo.get());
    cairo_scale(cairo.get(), scale, scale);
    document.draw_side(cairo.get(), document.sides()[side]);
    cairo_surface_flush(surface.get());
    const unsigned char* rows = cairo_image_surface_get_data(surface.get());
    if (rows == nullptr) return {side, 0, 0, {}};
    const int stride = cairo_image_surface_get_stride(surface.get());
    image.pixels.reserve(
        static_cast<std::size_t>(width) * static_cast<std::size_t>(image.height) * 4
    );
    for (int y = 0; y < image.height; ++y) {
        // Cairo keeps a pixel in one number, blue lowest.
        const auto* row = reinterpret_cast<const std::uint32_t*>(rows + std::ptrdiff_t{y} * stride);
        for (int x = 0; x < width; ++x) {
            image.pixels.push_back(static_cast<std::uint8_t>(row[x] >> 16U));
            image.pixels.push_back(static_cast<std::uint8_t>(row[x] >> 8U));
            image.pixels.push_back(static_cast<std::uint8_t>(row[x]));
            image.pixels.push_back(0xFF);
        }
    }
    return image;
}

} // namespace

PrintWorker::PrintWorker(std::function<void()> wake)
    : wake_(std::move(wake)), thread_([this] { run(); }) {}

PrintWorker::~PrintWorker() {
    {
        const std::lock_guard lock(mutex_);
        is_over_ = true;
        layout_.reset();
        drawing_.reset();
        is_outdated_ = true; // nobody looks any more
    }
    work_.notify_all();
    thread_.join();
}

void PrintWorker::lay_out(print::PrintOrder order, Values values) {
    {
        const std::lock_guard lock(mutex_);
        layout_ = Layout{std::move(order), std::move(values)};
        is_outdated_ = true;
    }
    work_.notify_all();
}

void PrintWorker::draw(std::size_t side, int width) {
    {
        const std::lock_guard lock(mutex_);
        drawing_ = Drawing{side, std::clamp(width, 1, width_max)};
    }
    work_.notify_all();
}

void PrintWorker::save(
    print::PrintOrder order, Values values, std::string path, bool opens_afterwards
) {
    {
        const std::lock_guard lock(mutex_);
        savings_.push_back(
            {{std::move(order), std::move(values)}, std::move(path), opens_afterwards}
        );
    }
    work_.notify_all();
}

void PrintWorker::stop() {
    const std::lock_guard lock(mutex_);
    layout_.reset();
    savings_.clear();
    if (is_working_) is_stopped_ = true;
}

PrintNews PrintWorker::take_news() {
    const std::lock_guard lock(mutex_);
    PrintNews news = news_;
    news_.image.reset();
    news_.messages.clear();
    return news;
}

bool PrintWorker::is_idle() const {
    return !is_working_ && !layout_.has_value() && !drawing_.has_value() && savings_.empty();
}

void PrintWorker::wait_until_idle() {
    std::unique_lock lock(mutex_);
    idle_.wait(lock, [this] { return is_idle(); });
}

void PrintWorker::run() {
    std::unique_lock lock(mutex_);
    while (true) {
        if (is_idle()) idle_.notify_all();
        work_.wait(lock, [this] { return is_over_ || !is_idle(); });
        if (is_idle()) break; // the end, and nothing is left to be saved
        is_working_ = true;
        is_stopped_ = false;
        // What is looked at goes first; a side is drawn of the newest layout alone.
        if (layout_.has_value()) {
            const Layout layout = *std::exchange(layout_, std::nullopt);
            is_outdated_ = false;
            lock.unlock();
            work_on(layout);
        } else if (drawing_.has_value()) {
            const Drawing drawing = *std::exchange(drawing_, std::nullopt);
            lock.unlock();
            work_on(drawing);
        } else {
            const Saving saving = std::move(savings_.front());
            savings_.erase(savings_.begin());
            lock.unlock();
            work_on(saving);
        }
        lock.lock();
        is_working_ = false;
    }
    document_.reset(); // its texts belong to this thread
}

bool PrintWorker::note_progress(
    const char* doing, std::size_t done, std::size_t all, bool is_layout
) {
    {
        const std::lock_guard lock(mutex_);
        news_.doing = doing;
        news_.done = done;
        news_.all = all;
    }
    if (wake_) wake_();
    return !is_stopped_ && !(is_layout && is_outdated_);
}

void PrintWorker::end_work(const std::function<void(PrintNews&)>& tell) {
    {
        const std::lock_guard lock(mutex_);
        news_.doing.clear();
        tell(news_);
    }
    if (wake_) wake_();
}

// Pages that cannot be made say why in their row and do not take the others with them.
void PrintWorker::work_on(const Layout& layout) {
    const print::PrintSource source = layout.values->source();
    std::vector<print::Section> sections;
    std::vector<widgets::WantedPageState> wanted;
    for (const print::WantedPage& page : layout.order.pages) {
        auto section = print::make_section(page, source);
        wanted.push_back({0, section.ok() ? std::string() : base::to_text(section.error())});
        if (section.ok()) sections.push_back(std::move(section).value());
    }
    auto laid = print::Document::lay_out(
        sections,
        source.campaign.about.title,
        layout.order.setup,
        [this](std::size_t done, std::size_t all) {
            return note_progress("Laying out", done, all, true);
        }
    );
    document_.reset();
    if (!laid.ok()) {
        const std::string problem = base::to_text(laid.error());
        end_work([&problem](PrintNews& news) {
            news.problem = problem;
            news.pages = 0;
            news.sides = 0;
            news.wanted.clear();
        });
        return;
    }
    document_.emplace(std::move(laid).value());
    const std::vector<std::size_t> first_sides = document_->first_sides();
    auto next = first_sides.begin();
    for (widgets::WantedPageState& state : wanted)
        if (state.problem.empty()) state.first_side = *next++;
    end_work([&, this](PrintNews& news) {
        news.problem.clear();
        news.pages = document_->page_count();
        news.sides = document_->sides().size();
        news.wanted = wanted;
    });
}

void PrintWorker::work_on(const Drawing& drawing) {
    if (!document_.has_value()) return;
    const std::size_t sides = document_->sides().size();
    if (drawing.side >= sides) return;
    SideImage image = image_of(*document_, drawing.side, drawing.width);
    end_work([&image](PrintNews& news) { news.image = std::move(image); });
}

void PrintWorker::work_on(const Saving& saving) {
    const auto progress = [this](std::size_t done, std::size_t all) {
        return note_progress("Saving", done, all, false);
    };
    const auto laid = lay_out_pages(saving.layout.order, saving.layout.values->source(), progress);
    const base::Result<std::string> saved = laid.ok()
                                                ? save_pages(laid.value(), saving.path, progress)
                                                : base::Result<std::string>(laid.error());
    std::vector<std::string> messages{
        saved.ok() ? "Saved as " + saved.value() + "." : base::to_text(saved.error())};
    if (saved.ok() && saving.opens_afterwards) {
        const auto opened = open_with_system(saving.path);
        if (!opened.ok()) messages.push_back(base::to_text(opened.error()));
    }
    end_work([&messages](PrintNews& news) {
        for (std::string& message : messages)
            news.messages.push_back(std::move(message));
    });
}

} // namespace app
