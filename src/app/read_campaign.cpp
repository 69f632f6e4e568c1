#include "app/read_campaign.h"

#include "store/campaign_json.h"
#include "store/creature_library.h"
#include "store/rulebook_json.h"

#include <fstream>
#include <iterator>
#include <utility>

namespace app {

namespace {

class PictureCampaign : public OpenCampaign {
public:
    PictureCampaign(
        store::LoadedCampaign loaded,
        rules::Rulebook book,
        std::vector<game::LibraryCreature> library
    )
        : document_(std::move(loaded.campaign), loaded.revision), rulebook_(std::move(book)),
          library_(std::move(library)) {}

    store::CampaignDocument& document() override { return document_; }

    const rules::Rulebook& rulebook() const override { return rulebook_; }

    const std::vector<game::LibraryCreature>& library() const override { return library_; }

    store::SaveState save_state() const override { return {}; }

    std::vector<std::string> take_messages() override { return {}; }

    void keep_ours() override {}

    void take_theirs() override {}

    void save_copy_to(const std::filesystem::path& /*file*/) override {}

    bool look_after() override { return false; }

    base::Result<base::Nothing> finish() override { return base::Nothing{}; }

private:
    store::CampaignDocument document_;
    rules::Rulebook rulebook_;
    std::vector<game::LibraryCreature> library_;
};

} // namespace

base::Result<std::unique_ptr<OpenCampaign>>
read_for_pictures(const std::filesystem::path& file, const std::filesystem::path& assets) {
    std::ifstream stream(file, std::ios::binary);
    if (!stream)
        return base::Error{
            base::ErrorKind::cannot_read,
            "The campaign cannot be read.",
            {file.string(), 0, 0, {}},
            "Check its name and whether it is yours to read."};
    const std::string text(std::istreambuf_iterator<char>(stream), {});
    store::CampaignReading reading = store::read_campaign(text, file.string());
    if (!reading.loaded.has_value()) return reading.error();
    const game::About& about = reading.loaded->campaign.about;
    auto book = store::load_rulebook(assets, about.rules, about.srd_edition);
    if (!book.ok()) return book.error();
    auto library = store::load_creature_library(assets, book.value());
    if (!library.ok()) return library.error();
    std::unique_ptr<OpenCampaign> campaign = std::make_unique<PictureCampaign>(
        std::move(*reading.loaded), std::move(book).value(), std::move(library).value()
    );
    return campaign;
}

} // namespace app
