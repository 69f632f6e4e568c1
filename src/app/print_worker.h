// The thread that lays pages out, draws the one that is looked at, and saves them. Wishes are left
// with it and never waited for; what it has done is taken once a frame.
#pragma once

#include "app/print_values.h"
#include "print/order.h"
#include "widgets/print_desk.h"

#include <atomic>
#include <condition_variable>
#include <cstdint>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <thread>
#include <vector>

namespace app {

// Pixels of one side: four bytes each, red, green, blue and nothing, rows from the top.
struct SideImage {
    std::size_t side = 0;
    int width = 0;
    int height = 0;
    std::vector<std::uint8_t> pixels;
};

struct PrintNews {
    std::string doing{}; // empty: nothing is going on
    std::size_t done = 0;
    std::size_t all = 0;
    std::string problem{}; // stopped; nothing can be laid out
    std::size_t pages = 0;
    std::size_t sides = 0;
    std::vector<widgets::WantedPageState> wanted{};
    std::optional<SideImage> image{};    // if a new one was drawn
    std::vector<std::string> messages{}; // for the person
};

class PrintWorker {
public:
    // `wake` is called from the thread whenever there is news.
    explicit PrintWorker(std::function<void()> wake);
    ~PrintWorker(); // returns when everything is saved that was to be saved
    PrintWorker(const PrintWorker&) = delete;
    PrintWorker& operator=(const PrintWorker&) = delete;

    using Values = std::shared_ptr<const PrintValues>;

    // Replaces what was to be laid out before; the side is drawn anew afterwards.
    void lay_out(print::PrintOrder order, Values values);
    void draw(std::size_t side, int width);
    void save(print::PrintOrder order, Values values, std::string path, bool opens_afterwards);
    // What goes on and what waits, but for drawing.
    void stop();

    PrintNews take_news();
    // Returns when nothing waits any more: for pictures of the program.
    void wait_until_idle();

private:
    struct Layout {
        print::PrintOrder order;
        Values values;
    };

    struct Drawing {
        std::size_t side = 0;
        int width = 0;
    };

    struct Saving {
        Layout layout;
        std::string path;
        bool opens_afterwards = false;
    };

    void run();
    bool is_idle() const;
    void work_on(const Layout& layout);
    void work_on(const Drawing& drawing);
    void work_on(const Saving& saving);
    bool note_progress(const char* doing, std::size_t done, std::size_t all, bool is_layout);
    void end_work(const std::function<void(PrintNews&)>& tell);

    std::function<void()> wake_;
    mutable std::mutex mutex_;
    std::condition_variable work_;
    std::condition_variable idle_;
    std::optional<Layout> layout_; // what waits
    std::optional<Drawing> drawing_;
    std::vector<Saving> savings_;
    bool is_working_ = false;
    bool is_over_ = false;
    std::atomic<bool> is_stopped_ = false;
    std::atomic<bool> is_outdated_ = false; // a newer layout waits
    PrintNews news_;
    std::optional<print::Document> document_; // of the thread alone
    std::thread thread_;
};

} // namespace app
