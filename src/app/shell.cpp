#include "app/shell.h"

#include "app/help.h"
#include "app/shell_keys.h"
#include "app/top_bar.h"
#include "store/text_file.h"
#include "store/time_text.h"
#include "widgets/ui.h"

#include <imgui.h>
#include <imgui_internal.h>

#include <utility>

namespace app {

Shell::Shell(
    OpenCampaign& campaign, Settings settings, std::uint64_t dice_seed, Surroundings surroundings
)
    : state_{campaign, std::move(settings)}, dice_(dice_seed), read_text_(store::read_text_file),
      save_text_([&campaign](const std::string& path, const std::string& text) {
          campaign.save_text(path, text);
      }),
      print_desk_(
          campaign,
          state_.settings.printing,
          std::move(surroundings.wake),
          std::move(surroundings.show_image)
      ) {}

void Shell::draw_panel(const std::string& key) {
    bool reads_rules_again = false;
    const std::string real_time = store::utc_now();
    const widgets::PanelContext context{
        .campaign = state_.campaign.document().view(),
        .rulebook = state_.campaign.rulebook(),
        .dice = dice_,
        .selection = state_.selection,
        .edits = state_.edits,
        .now_seconds = ImGui::GetTime(),
        .is_read_only = state_.campaign.is_read_only(),
        .has_keyboard = !state_.is_help_open && key == keyboard_owner(state_),
        .can_undo = state_.campaign.document().can_undo(),
        .can_redo = state_.campaign.document().can_redo(),
        .library = &state_.campaign.library(),
        .real_time = real_time,
        .campaign_file = state_.campaign.file_name(),
        .reads_rules_again = &reads_rules_again,
        .name_lists = &state_.campaign.name_lists(),
        .read_text = &read_text_,
        .save_text = &save_text_,
        .climates = &state_.campaign.climates(),
        .prices = &state_.campaign.prices(),
        .reference = &state_.campaign.reference(),
        .calendars = &state_.campaign.calendars(),
        .print_desk = &print_desk_};
    draw_and_press(state_, key, [&] { panels_.draw(key, context); });
    if (reads_rules_again) state_.campaign.read_rules_again();
}

// A finger that has left does not hover: what a tooltip tells comes while it rests there.
static void follow_finger() {
    constexpr float usual_seconds = 0.15F; // the library's own
    constexpr float never_seconds = 1e6F;
    constexpr float rests_after_seconds = 0.4F;
    const bool rests = ImGui::GetIO().MouseDownDuration[0] >= rests_after_seconds;
    ImGui::GetStyle().HoverStationaryDelay =
        !widgets::look().is_touch || rests ? usual_seconds : never_seconds;
    if (widgets::look().is_touch && !rests)
        ImGui::GetCurrentContext()->HoverItemUnlockedStationaryId = 0;
}

void Shell::draw() {
    follow_finger();
    scroll_by_finger(state_.finger);
    for (std::string& message : state_.campaign.take_messages())
        state_.messages.add(std::move(message));
    for (std::string& message : print_desk_.look_after())
        state_.messages.add(std::move(message));
    read_shell_keys(state_);
    const ImVec2 size = ImGui::GetIO().DisplaySize;
    float top = draw_top_bar(state_, size.x);
    top += draw_messages(state_.messages, state_.campaign, 0.0F, top, size.x);
    draw_tiles(
        state_.tiles(),
        state_.tiles_view,
        {0.0F, top, size.x, size.y - top},
        [this](const std::string& key) { draw_panel(key); }
    );
    const std::string wanted = std::exchange(state_.selection.wanted_panel, {});
    if (!wanted.empty()) bring_to_front(state_, wanted);
    draw_help(state_.is_help_open);
    const base::Result<base::Nothing> done = state_.campaign.document().carry_out(state_.edits);
    if (!done.ok()) state_.messages.add(base::to_text(done.error()));
}

std::string window_title(const game::Campaign& campaign) {
    const std::string& title = campaign.about.title;
    return (title.empty() ? std::string("Unnamed campaign") : title) + " - Tablewick";
}

} // namespace app
