// The driver itself: it clicks, types, drags, scrolls and reads what a person would.
#include "driver.h"

#include <doctest/doctest.h>
#include <imgui_stdlib.h>

namespace {

class Sampler : public driver::Screen {
public:
    Sampler() : Screen({}) { frames(3); }

    int pressed = 0;
    int doubled = 0;
    int row_pressed = -1;
    std::string typed;
    float slid = 0.0F;

protected:
    void draw() override {
        const float height = widgets::row_height();
        if (ImGui::Button("Press me", {120.0F, height})) pressed += 1;
        if (ImGui::IsItemHovered() && ImGui::IsMouseDoubleClicked(ImGuiMouseButton_Left))
            doubled += 1;
        ImGui::SetItemTooltip("a quiet hint");
        ImGui::InputText("##word", &typed);
        ImGui::SliderFloat("##slide", &slid, 0.0F, 100.0F);
        ImGui::BeginDisabled();
        ImGui::Button("Not now", {120.0F, height});
        ImGui::EndDisabled();
        ImGui::BeginChild("list", {400.0F, 120.0F});
        for (int row = 0; row < 40; ++row) {
            ImGui::PushID(row);
            ImGui::SetNextItemAllowOverlap();
            const std::string name = "row " + std::to_string(row) + "###row";
            const ImVec2 at = ImGui::GetCursorPos();
            ImGui::InvisibleButton(name.c_str(), {380.0F, height});
            ImGui::SetCursorPos({at.x + 200.0F, at.y});
            if (ImGui::Button("Take", {60.0F, height})) row_pressed = row;
            ImGui::PopID();
        }
        ImGui::EndChild();
        ImGui::GetWindowDrawList()->AddText({700.0F, 40.0F}, IM_COL32_WHITE, "painted 42");
    }
};

} // namespace

TEST_CASE("driver: clicks, double-clicks and reads a tooltip") {
    Sampler ui;
    ui.click("Press me");
    CHECK(ui.pressed == 1);
    ui.double_click("Press me");
    CHECK(ui.pressed == 3);
    CHECK(ui.doubled == 1);
    ui.hover("Press me");
    CHECK(ui.seen().find("a quiet hint") != std::string::npos);
    CHECK(ui.is_enabled("Press me"));
    CHECK_FALSE(ui.is_enabled("Not now"));
}

TEST_CASE("driver: types letters of any language, replaces what stands in a field") {
    Sampler ui;
    ui.click("##word");
    ui.type("Zoë 7");
    CHECK(ui.typed == "Zoë 7");
    ui.fill("##word", "Bram");
    CHECK(ui.typed == "Bram");
}

TEST_CASE("driver: drags a slider") {
    Sampler ui;
    ui.drag("##slide", {300.0F, 0.0F});
    CHECK(ui.slid > 20.0F);
}

TEST_CASE("driver: finds a row by its name and scrolls to what is out of sight") {
    Sampler ui;
    ui.click("Take", driver::near("row 3"));
    CHECK(ui.row_pressed == 3);
    ui.click("Take", driver::near("row 33"));
    CHECK(ui.row_pressed == 33);
    ui.click("Take", driver::near("row 0"));
    CHECK(ui.row_pressed == 0);
}

TEST_CASE("driver: reads what is painted without any item") {
    Sampler ui;
    CHECK(ui.seen().find("painted 42") != std::string::npos);
    CHECK(ui.shows("painted 42"));
    CHECK_FALSE(ui.shows("painted 43"));
    CHECK(ui.text().find("Press me") != std::string::npos);
}
