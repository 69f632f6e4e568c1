// The eye of the driver: reads the painted glyphs back from the vertices, so that a test sees what
// a person sees, whatever drew it, with the clipping applied.
#include "driver.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace driver {
namespace {

using TextureSpot = std::tuple<long, long>; // upper left corner of a glyph in the atlas, in texels
using GlyphSpots = std::map<TextureSpot, const ImFontGlyph*>;

TextureSpot spot(const ImFontAtlas& atlas, float u, float v) {
    const auto texels_u = static_cast<float>(atlas.TexWidth);
    const auto texels_v = static_cast<float>(atlas.TexHeight);
    return {std::lround(u * texels_u), std::lround(v * texels_v)};
}

GlyphSpots glyph_spots(const ImFontAtlas& atlas) {
    GlyphSpots spots;
    for (const ImFont* font : atlas.Fonts)
        for (const ImFontGlyph& glyph : font->Glyphs)
            if (glyph.Visible != 0) spots.emplace(spot(atlas, glyph.U0, glyph.V0), &glyph);
    return spots;
}

// Where the pen stood before and after the glyph, and the line it wrote on.
struct SeenGlyph {
    float pen_before = 0.0F;
    float pen_after = 0.0F;
    float line = 0.0F;
    float advance = 0.0F;
    unsigned codepoint = 0;
};

SeenGlyph seen_glyph(const ImFontGlyph& glyph, ImVec2 from, ImVec2 to) {
    const float scale = (to.x - from.x) / (glyph.X1 - glyph.X0);
    SeenGlyph seen;
    seen.pen_before = from.x - glyph.X0 * scale;
    seen.pen_after = seen.pen_before + glyph.AdvanceX * scale;
    seen.line = from.y - glyph.Y0 * scale;
    seen.advance = std::max(glyph.AdvanceX * scale, 4.0F);
    seen.codepoint = glyph.Codepoint;
    return seen;
}

// Glyphs are quads: four vertices after each other, the first the upper left corner.
void collect_glyphs(
    const ImDrawList& list,
    const ImFontAtlas& atlas,
    const GlyphSpots& spots,
    std::vector<SeenGlyph>& glyphs
) {
    for (const ImDrawCmd& command : list.CmdBuffer) {
        for (unsigned at = 0; at + 5 < command.ElemCount; at += 3) {
            const ImDrawIdx* index = &list.IdxBuffer[static_cast<int>(command.IdxOffset + at)];
            if (index[3] != index[0] || index[1] != index[0] + 1 || index[5] != index[0] + 3)
                continue;
            const ImDrawVert& first = list.VtxBuffer[static_cast<int>(index[0])];
            const ImDrawVert& last = list.VtxBuffer[static_cast<int>(index[2])];
            const auto found = spots.find(spot(atlas, first.uv.x, first.uv.y));
            if (found == spots.end()) continue;
            const ImVec2 middle{(first.pos.x + last.pos.x) / 2, (first.pos.y + last.pos.y) / 2};
            const ImVec4& clip = command.ClipRect;
            if (middle.x < clip.x || middle.y < clip.y || middle.x > clip.z || middle.y > clip.w)
                continue;
            glyphs.push_back(seen_glyph(*found->second, first.pos, last.pos));
        }
    }
}

void append_utf8(std::string& text, unsigned codepoint) {
    char bytes[5] = {};
    ImTextCharToUtf8(bytes, codepoint);
    text += bytes;
}

} // namespace

// Glyphs come in the order they were written; where the pen jumped a little there is a space, where
// it jumped back, far or down, a new line.
void Screen::collect_seen() {
    const ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
    static const GlyphSpots spots = glyph_spots(atlas);
    std::vector<SeenGlyph> glyphs;
    const ImDrawData* data = ImGui::GetDrawData();
    for (const ImDrawList* list : data->CmdLists)
        collect_glyphs(*list, atlas, spots, glyphs);
    seen_.clear();
    for (std::size_t i = 0; i < glyphs.size(); ++i) {
        if (i > 0) {
            const SeenGlyph& before = glyphs[i - 1];
            const float gap = glyphs[i].pen_before - before.pen_after;
            const bool is_same_line = std::abs(glyphs[i].line - before.line) < 3.0F;
            if (!is_same_line || gap < -4.0F || gap > 3.0F * before.advance)
                seen_ += '\n';
            else if (gap > 2.0F)
                seen_ += ' ';
        }
        append_utf8(seen_, glyphs[i].codepoint);
    }
}

std::string Screen::seen() {
    frames(1);
    return seen_;
}

} // namespace driver
