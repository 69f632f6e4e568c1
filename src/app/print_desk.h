// The printing as the Print panel sees it: keeps the worker in step with choices and campaign, and
// its pictures in the graphics memory.
#pragma once

#include "app/print_worker.h"
#include "widgets/print_desk.h"

#include <cstdint>
#include <functional>
#include <optional>

namespace app {

// Puts an image where the renderer finds it and returns its name there; the one with the former
// name is given up. 0: there is no renderer.
using ShowImage = std::function<std::uint64_t(const SideImage& image, std::uint64_t former)>;

class PrintDesk : public widgets::PrintDesk {
public:
    // `choices` are kept by the caller.
    PrintDesk(
        OpenCampaign& campaign,
        widgets::PrintChoices& choices,
        std::function<void()> wake,
        ShowImage show_image
    );

    widgets::PrintChoices& choices() override { return choices_; }

    const widgets::PrintState& state() const override { return state_; }

    void show(std::size_t side, int width) override;
    void save(const std::string& path) override;
    void stop() override;

    // Once a frame, before panels are drawn: takes what the worker has done. Returns what the
    // person should read.
    std::vector<std::string> look_after();

    void wait_until_idle() { worker_.wait_until_idle(); }

private:
    PrintWorker::Values values() const;

    OpenCampaign& campaign_;
    widgets::PrintChoices& choices_;
    ShowImage show_image_;
    widgets::PrintState state_;
    std::optional<print::PrintOrder> asked_; // laid out, or being laid out
    std::uint64_t asked_revision_ = 0;
    std::size_t asked_side_ = 0;
    int asked_width_ = 0;
    PrintWorker worker_; // last, so that it ends while the rest still stands
};

} // namespace app
