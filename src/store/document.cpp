#include "store/document.h"

#include "store/campaign_check.h"
#include "store/history.h"
#include "store/section_patch.h"
#include "store/time_text.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cassert>
#include <exception>
#include <optional>

namespace store {

using base::Error;
using base::ErrorKind;
using game::Section;

namespace {

// One step of undo: JSON Patch texts in both directions, history left out.
struct Step {
    std::string label;
    std::string forward;
    std::string backward;
    std::string merge_key;
    std::uint64_t revision = 0; // after the edit
};

// The sections an edit may change. A change of the party reaches its combatants.
std::vector<Section> reach_of(std::vector<Section> sections) {
    const auto has = [&](Section section) {
        return std::find(sections.begin(), sections.end(), section) != sections.end();
    };
    if (has(Section::party) && !has(Section::encounter)) sections.push_back(Section::encounter);
    return sections;
}

bool needs_linking(const std::vector<Section>& sections) {
    return std::any_of(sections.begin(), sections.end(), [](Section section) {
        return section == Section::party || section == Section::encounter;
    });
}

// Both patches only replace values in the same places, in the same order: typing in one field.
bool replaces_the_same(const Json& a, const Json& b) {
    return a.size() == b.size() &&
           std::equal(a.begin(), a.end(), b.begin(), [](const Json& left, const Json& right) {
               return left["op"] == "replace" && right["op"] == "replace" &&
                      left["path"] == right["path"];
           });
}

Json joined(Json first, const Json& second) {
    first.insert(first.end(), second.begin(), second.end());
    return first;
}

} // namespace

struct CampaignDocument::Inside {
    game::Campaign campaign;
    game::Campaign before; // the state before the running edit; without history
    std::uint64_t revision = 0;
    std::vector<Step> done;
    std::vector<Step> undone;
    JournalSink sink;
    std::function<std::string()> now = utc_now;

    void restore() {
        for (const Section section : all_sections)
            copy_section(section, before, campaign);
    }

    void settle(const std::vector<Section>& sections) {
        for (const Section section : sections)
            copy_section(section, campaign, before);
    }

    Error restored(Error error) {
        restore();
        return error;
    }

    bool only_changed(const std::vector<Section>& sections) const {
        return std::all_of(all_sections.begin(), all_sections.end(), [&](Section section) {
            return std::find(sections.begin(), sections.end(), section) != sections.end() ||
                   is_same(section, before, campaign);
        });
    }

    // Runs the change; an error if it threw.
    std::optional<Error> run(const game::Edit& edit, std::string& label) {
        try {
            label = edit.change(campaign);
        } catch (const std::exception& problem) {
            return Error{ErrorKind::not_possible, problem.what(), {}, {}};
        } catch (...) {
            return Error{ErrorKind::not_possible, "This could not be done.", {}, {}};
        }
        if (label.empty()) label = edit.label;
        return std::nullopt;
    }

    // Writes the history line, counts the revision up and hands the whole patch to the journal.
    void record(const std::string& label, Json patch, bool replaces_last) {
        revision += 1;
        game::HistoryLine line = history_line(campaign, revision, label, now());
        JournalEntry entry;
        entry.revision = revision;
        entry.label = line.label;
        entry.written_at = line.written_at;
        entry.patch =
            joined(std::move(patch), add_to_history(campaign.history, line, replaces_last)).dump();
        if (sink) sink(entry);
    }

    void
    remember(const std::string& label, const std::string& merge_key, const PatchPair& patches) {
        undone.clear();
        Step step{label, patches.forward.dump(), patches.backward.dump(), merge_key, revision};
        const bool merges = !done.empty() && continues(merge_key, revision - 1);
        if (!merges) {
            done.push_back(std::move(step));
            return;
        }
        Step& last = done.back();
        const Json last_forward = Json::parse(last.forward);
        if (replaces_the_same(last_forward, patches.forward)) {
            step.backward = last.backward;
        } else {
            step.forward = joined(last_forward, patches.forward).dump();
            step.backward = joined(patches.backward, Json::parse(last.backward)).dump();
        }
        last = std::move(step);
    }

    // Whether an edit with this key goes on with the last step, and nothing came between.
    bool continues(const std::string& merge_key, std::uint64_t last_revision) const {
        return !merge_key.empty() && !done.empty() && done.back().merge_key == merge_key &&
               done.back().revision == last_revision;
    }

    // Carries a patch of a step out; used by undo and redo.
    bool step_to(const std::string& patch_text, const std::string& label) {
        Json patch = Json::parse(patch_text);
        const std::vector<Section> sections = sections_of(patch);
        if (!apply_patch(patch, sections, campaign)) {
            assert(false && "a recorded patch fits the campaign it was taken from");
            return false;
        }
        if (needs_linking(sections)) game::link_party(campaign);
        settle(reach_of(sections));
        record(label, std::move(patch), false);
        return true;
    }
};

CampaignDocument::CampaignDocument(game::Campaign campaign, std::uint64_t revision)
    : inside_(std::make_unique<Inside>()) {
    inside_->campaign = std::move(campaign);
    game::link_party(inside_->campaign);
    inside_->revision = revision;
    inside_->settle({all_sections.begin(), all_sections.end()});
}

CampaignDocument::~CampaignDocument() = default;

const game::Campaign& CampaignDocument::view() const {
    return inside_->campaign;
}

std::uint64_t CampaignDocument::revision() const {
    return inside_->revision;
}

void CampaignDocument::set_sink(JournalSink sink) {
    inside_->sink = std::move(sink);
}

void CampaignDocument::set_time_source(std::function<std::string()> now) {
    inside_->now = std::move(now);
}

base::Result<std::string> CampaignDocument::edit(const game::Edit& edit) {
    Inside& in = *inside_;
    std::string label;
    if (auto error = in.run(edit, label)) return in.restored(*error);
    const std::vector<Section> sections = reach_of(edit.sections);
    if (needs_linking(sections)) game::link_party(in.campaign);
    assert(in.only_changed(sections) && "an edit changes only the sections it names");
    PatchPair patches;
    Problems problems;
    for (const Section section : sections)
        append_difference(section, in.before, in.campaign, patches, problems);
    if (patches.forward.empty()) return label;
    check_references(in.campaign, problems);
    if (!problems.empty()) return in.restored(problems.errors().front());
    if (!is_text(label)) label = edit.label;
    const bool is_writable = is_text(label) && is_writable_text(patches.forward);
    if (!is_writable)
        return in.restored({ErrorKind::bad_text, "This text is not valid UTF-8.", {}, {}});
    label = short_label(label);
    in.settle(sections);
    const bool goes_on = in.continues(edit.merge_key, in.revision);
    in.record(label, patches.forward, goes_on);
    in.remember(label, edit.merge_key, patches);
    return label;
}

bool CampaignDocument::can_undo() const {
    return !inside_->done.empty();
}

bool CampaignDocument::can_redo() const {
    return !inside_->undone.empty();
}

std::string CampaignDocument::undo_label() const {
    return can_undo() ? inside_->done.back().label : std::string();
}

std::string CampaignDocument::redo_label() const {
    return can_redo() ? inside_->undone.back().label : std::string();
}

void CampaignDocument::undo() {
    if (!can_undo()) return;
    Step step = inside_->done.back();
    if (!inside_->step_to(step.backward, "Undid: " + step.label)) return;
    inside_->done.pop_back();
    inside_->undone.push_back(std::move(step));
}

void CampaignDocument::redo() {
    if (!can_redo()) return;
    Step step = inside_->undone.back();
    if (!inside_->step_to(step.forward, "Redid: " + step.label)) return;
    inside_->undone.pop_back();
    step.revision = inside_->revision;
    inside_->done.push_back(std::move(step));
}

base::Result<base::Nothing> CampaignDocument::carry_out(game::Edits& edits) {
    base::Result<base::Nothing> outcome = base::Nothing{};
    for (const game::Edit& one : edits.take())
        if (const auto done = edit(one); !done && outcome.ok()) outcome = done.error();
    for (int left = edits.take_undos(); left > 0; --left)
        undo();
    for (int left = edits.take_redos(); left > 0; --left)
        redo();
    return outcome;
}

} // namespace store
