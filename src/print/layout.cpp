#include "print/layout.h"

#include "print/pieces.h"

#include <algorithm>

namespace print {

namespace {

constexpr double foot_mm = 6;

template <class... Functions>
struct Overloaded : Functions... {
    using Functions::operator()...;
};
template <class... Functions>
Overloaded(Functions...) -> Overloaded<Functions...>;

void add_title(Pieces& pieces, const Title& title, const Room& room, const Texts& texts) {
    add_lines(pieces, texts.lines(title.text, room.width, {TextStyle::title}), 0, true);
    if (!title.subtitle.empty())
        add_lines(pieces, texts.lines(title.subtitle, room.width), 0, true);
    Piece rule;
    rule.height = 9;
    rule.keeps_with_next = true;
    rule.marks.emplace_back(LineMark{0, 3, room.width, 3, 1.4, 0});
    pieces.push_back(std::move(rule));
}

void add_heading(Pieces& pieces, const Heading& heading, const Room& room, const Texts& texts) {
    add_space(pieces, 7);
    add_lines(pieces, texts.lines(heading.text, room.width, {TextStyle::heading}), 0, true);
    add_space(pieces, 2);
    pieces.back().keeps_with_next = true;
}

class Measurer {
public:
    Measurer(Pieces& pieces, const Room& room, const PrintSetup& setup, const Texts& texts)
        : pieces_(pieces), room_(room), setup_(setup), texts_(texts) {}

    void add(const Blocks& blocks) {
        for (std::size_t i = 0; i < blocks.size(); ++i) {
            if (!std::holds_alternative<Card>(blocks[i])) {
                add(blocks[i]);
                continue;
            }
            std::vector<const Card*> cards;
            for (; i < blocks.size() && std::holds_alternative<Card>(blocks[i]); ++i)
                cards.push_back(std::get_if<Card>(&blocks[i]));
            i -= 1;
            const Room cut_out{
                content_width(setup_, PageUse::cut_out), content_height(setup_, PageUse::cut_out)};
            add_cards(pieces_, cards, setup_.card->size, cut_out, texts_);
        }
    }

private:
    void add(const Block& block) {
        std::visit(
            Overloaded{
                [&](const Title& title) { add_title(pieces_, title, room_, texts_); },
                [&](const Heading& heading) { add_heading(pieces_, heading, room_, texts_); },
                [&](const Paragraph& paragraph) {
                    add_lines(
                        pieces_,
                        texts_.lines(paragraph.text, room_.width, {paragraph.style}),
                        0,
                        false
                    );
                    add_space(pieces_, 3);
                },
                [&](const TickList& list) { add_ticks(pieces_, list, room_, texts_); },
                [&](const Tally& tally) { add_tally(pieces_, tally, room_, texts_); },
                [&](const RuledLines& lines) { add_ruled_lines(pieces_, lines, room_, texts_); },
                [&](const Table& table) { add_table(pieces_, table, room_, texts_); },
                [&](const Divider&) { add_divider(pieces_, room_); },
                [&](const PageBreak&) {
                    Piece end;
                    end.is_break = true;
                    pieces_.push_back(std::move(end));
                },
                [&](const RuledPage& page) { add_ruled_page(pieces_, page, room_); },
                [&](const Pack& pack) { add_pack(pieces_, pack, room_, texts_); },
                [&](const DividerPage& page) { add_divider_page(pieces_, page, room_, texts_); },
                [&](const Staff& staff) { add_staff(pieces_, staff, room_, texts_); },
                [&](const Picture& picture) { add_picture(pieces_, picture, room_, texts_); },
                [&](const Card&) {}},
            block
        );
    }

    Pieces& pieces_;
    const Room& room_;
    const PrintSetup& setup_;
    const Texts& texts_;
};

class Paginator {
public:
    explicit Paginator(double height) : height_(height) { pages_.emplace_back(); }

    void place(const Pieces& pieces) {
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            const Piece& piece = pieces[i];
            if (i == 0 || piece.is_break)
                share_ = share_of_rest(pieces, piece.is_break ? i + 1 : i);
            if (piece.is_break) {
                turn();
                continue;
            }
            if (piece.is_spare && used_ + piece.height > height_) continue;
            if (piece.is_space && used_ == 0) continue;
            if (piece.is_space && used_ + piece.height > height_) {
                used_ = height_; // what follows begins a page, if anything does
                continue;
            }
            if (used_ > 0 && used_ + needed(pieces, i) > height_ + tolerance) turn();
            if (used_ == 0 && piece.head != nullptr) put(*piece.head);
            put(piece);
        }
    }

    std::vector<LaidPage> take() {
        if (pages_.size() > 1 && pages_.back().marks.empty()) pages_.pop_back();
        return std::move(pages_);
    }

private:
    static constexpr double tolerance = 0.001; // of adding up

    // The piece with all that must stand on its page; no more than a page's worth.
    double needed(const Pieces& pieces, std::size_t from) const {
        double sum = 0;
        for (std::size_t i = from; i < pieces.size(); ++i) {
            if (pieces[i].is_break) break;
            sum += pieces[i].height;
            if (!pieces[i].keeps_with_next) break;
        }
        return sum > height_ ? pieces[from].height : sum;
    }

    // What each of the pieces that share a page gets beyond its least height.
    double share_of_rest(const Pieces& pieces, std::size_t from) const {
        double sum = 0;
        int shares = 0;
        for (std::size_t i = from; i < pieces.size() && !pieces[i].is_break; ++i) {
            sum += pieces[i].is_space && sum == 0 ? 0 : pieces[i].height;
            shares += pieces[i].shares_rest ? 1 : 0;
        }
        return shares == 0 ? 0 : std::max(0.0, height_ - sum) / shares;
    }

    double height_of(const Piece& piece) const {
        if (!piece.fill) return piece.height;
        return piece.shares_rest ? piece.height + share_ : std::max(piece.height, height_ - used_);
    }

    void put(const Piece& piece) {
        const double height = height_of(piece);
        if (piece.use == PageUse::cut_out) pages_.back().use = piece.use;
        const std::vector<Mark> marks = piece.fill ? piece.fill(height) : piece.marks;
        for (const Mark& mark : marks)
            pages_.back().marks.push_back(moved(mark, 0, used_));
        used_ += height;
    }

    void turn() {
        if (used_ == 0) return;
        pages_.emplace_back();
        used_ = 0;
    }

    double height_;
    double used_ = 0;
    double share_ = 0;
    std::vector<LaidPage> pages_;
};

} // namespace

double foot_height(const PrintSetup& /*setup*/) {
    return foot_mm * points_per_mm;
}

double content_width(const PrintSetup& setup, PageUse use) {
    return content_box(setup, 0, use).width * points_per_mm;
}

double content_height(const PrintSetup& setup, PageUse use) {
    return content_box(setup, 0, use).height * points_per_mm - foot_height(setup);
}

std::vector<LaidPage> lay_out(const Blocks& blocks, const PrintSetup& setup, const Texts& texts) {
    const Room room{content_width(setup), content_height(setup)};
    Pieces pieces;
    Measurer(pieces, room, setup, texts).add(blocks);
    Paginator paginator(room.height);
    paginator.place(pieces);
    return paginator.take();
}

} // namespace print
