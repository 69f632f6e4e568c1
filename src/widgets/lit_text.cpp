#include "widgets/lit_text.h"

#include "game/registering.h"
#include "widgets/kind_ink.h"

#include <imgui.h>

#include <algorithm>
#include <cstddef>
#include <string>

namespace widgets {

namespace {

// A word with the blanks before it, whole or the part of it inside or outside a name.
struct Piece {
    std::string_view text;
    const game::Mention* mention = nullptr;
    bool begins_mention = false;
    bool can_break = false; // a line may end before it
    bool is_line_break = false;
};

bool is_blank(char letter) {
    return letter == ' ' || letter == '\t';
}

std::vector<Piece> pieces_of(std::string_view text, const std::vector<game::Mention>& mentions) {
    std::vector<Piece> pieces;
    std::size_t next_mention = 0;
    bool can_break = false;
    for (std::size_t at = 0; at < text.size();) {
        while (next_mention < mentions.size() && mentions[next_mention].end <= at)
            next_mention += 1;
        const game::Mention* mention =
            next_mention < mentions.size() && mentions[next_mention].begin <= at
                ? &mentions[next_mention]
                : nullptr;
        if (text[at] == '\n') {
            pieces.push_back({{}, nullptr, false, false, true});
            at += 1;
            can_break = false;
            continue;
        }
        std::size_t edge = text.size();
        if (mention != nullptr)
            edge = mention->end;
        else if (next_mention < mentions.size())
            edge = mentions[next_mention].begin;
        std::size_t end = at;
        while (end < edge && is_blank(text[end]))
            end += 1;
        can_break = can_break || end > at;
        while (end < edge && !is_blank(text[end]) && text[end] != '\n')
            end += 1;
        const bool begins = mention != nullptr && at == mention->begin;
        pieces.push_back({text.substr(at, end - at), mention, begins, can_break, false});
        can_break = end < text.size() && is_blank(text[end]);
        at = end;
    }
    return pieces;
}

float width_of(std::string_view text) {
    return ImGui::CalcTextSize(text.data(), text.data() + text.size()).x;
}

float letter_width(const char* letter) {
    push_font(TextSize::small);
    const float width = ImGui::CalcTextSize(letter).x + px(5.0F);
    ImGui::PopFont();
    return width;
}

// The letter of the kind in a small raised square.
void paint_letter(ImVec2 at, game::Kind kind) {
    const char* letter = game::kind_letter(kind);
    push_font(TextSize::small);
    const ImVec2 size = ImGui::CalcTextSize(letter);
    ImDrawList* list = ImGui::GetWindowDrawList();
    const Ink ink = ink_of_kind(kind);
    const ImVec2 to{at.x + size.x + px(3.0F), at.y + size.y};
    list->AddRectFilled(at, to, colour_u32(Ink::raised), px(2.0F));
    list->AddText({at.x + px(1.5F), at.y - px(0.5F)}, colour_u32(ink), letter);
    ImGui::PopFont();
}

// Each kind has an underline of its own: solid, double, dotted, dashed, long dashes.
void paint_underline(ImVec2 from, float width, game::Kind kind) {
    ImDrawList* list = ImGui::GetWindowDrawList();
    const std::uint32_t ink = colour_u32(ink_of_kind(kind));
    const float thick = std::max(1.0F, px(1.0F));
    const auto dashes = [&](float dash, float gap) {
        for (float x = 0.0F; x < width; x += dash + gap)
            list->AddLine(
                {from.x + x, from.y}, {from.x + std::min(x + dash, width), from.y}, ink, thick
            );
    };
    switch (kind) {
    case game::Kind::person: list->AddLine(from, {from.x + width, from.y}, ink, thick); break;
    case game::Kind::place:
        list->AddLine(from, {from.x + width, from.y}, ink, thick);
        list->AddLine({from.x, from.y + px(2.0F)}, {from.x + width, from.y + px(2.0F)}, ink, thick);
        break;
    case game::Kind::creature: dashes(px(1.5F), px(2.0F)); break;
    case game::Kind::item: dashes(px(4.0F), px(3.0F)); break;
    case game::Kind::faction: dashes(px(9.0F), px(3.0F)); break;
    }
}

// Lays the pieces out; paints them where `paints`. Returns the height.
float lay_out(Ink ink, const std::vector<Piece>& pieces, float width, ImVec2 origin, bool paints) {
    const float line = ImGui::GetTextLineHeight() + px(4.0F);
    ImVec2 at{0.0F, 0.0F};
    for (const Piece& piece : pieces) {
        if (piece.is_line_break) {
            at = {0.0F, at.y + line};
            continue;
        }
        std::string_view words = piece.text;
        const float mark =
            piece.begins_mention ? letter_width(game::kind_letter(piece.mention->kind)) : 0.0F;
        if (at.x > 0.0F && piece.can_break && at.x + mark + width_of(words) > width) {
            at = {0.0F, at.y + line};
            while (!words.empty() && is_blank(words.front()))
                words.remove_prefix(1);
        }
        const ImVec2 screen{origin.x + at.x, origin.y + at.y};
        const float wide = width_of(words);
        if (paints) {
            if (mark > 0.0F) paint_letter(screen, piece.mention->kind);
            const Ink of = piece.mention == nullptr ? ink : ink_of_kind(piece.mention->kind);
            ImGui::GetWindowDrawList()->AddText(
                {screen.x + mark, screen.y},
                colour_u32(of),
                words.data(),
                words.data() + words.size()
            );
            if (piece.mention != nullptr)
                paint_underline(
                    {screen.x + mark, screen.y + ImGui::GetTextLineHeight()},
                    wide,
                    piece.mention->kind
                );
        }
        at.x += mark + wide;
    }
    return at.y + line;
}

} // namespace

float lit_text_height(
    std::string_view text, const std::vector<game::Mention>& mentions, float width
) {
    return lay_out(Ink::text, pieces_of(text, mentions), width, {0.0F, 0.0F}, false);
}

void lit_text(
    Ink ink, std::string_view text, const std::vector<game::Mention>& mentions, float width
) {
    const std::vector<Piece> pieces = pieces_of(text, mentions);
    const ImVec2 origin = ImGui::GetCursorScreenPos();
    const float height = lay_out(ink, pieces, width, origin, true);
    ImGui::Dummy({width, height});
    // For whoever reads the screen without seeing it.
    ImGui::LogText("%.*s\n", static_cast<int>(text.size()), text.data());
}

} // namespace widgets
