#include "app/read_campaign.h"

#include "store/calendars.h"
#include "store/campaign_rulebook.h"
#include "store/climate_json.h"
#include "store/creature_library.h"
#include "store/latest_campaign.h"
#include "store/name_lists.h"
#include "store/prices.h"

#include <utility>

namespace app {

namespace {

class PictureCampaign : public OpenCampaign {
public:
    PictureCampaign(
        store::LoadedCampaign loaded,
        rules::Rulebook book,
        std::vector<game::LibraryCreature> library,
        const std::filesystem::path& file,
        std::vector<game::ReadyNameList> name_lists,
        game::Climates climates,
        rules::PriceBook prices,
        game::Reference reference,
        std::vector<game::Calendar> calendars
    )
        : document_(std::move(loaded.campaign), loaded.revision), rulebook_(std::move(book)),
          library_(std::move(library)), file_(file.string()), name_lists_(std::move(name_lists)),
          climates_(std::move(climates)), prices_(std::move(prices)),
          reference_(std::move(reference)), calendars_(std::move(calendars)) {}

    store::CampaignDocument& document() override { return document_; }

    const rules::Rulebook& rulebook() const override { return rulebook_; }

    const std::vector<game::LibraryCreature>& library() const override { return library_; }

    const rules::PriceBook& prices() const override { return prices_; }

    const std::string& file_name() const override { return file_; }

    void read_rules_again() override {}

    const std::vector<game::ReadyNameList>& name_lists() const override { return name_lists_; }

    const std::vector<game::Calendar>& calendars() const override { return calendars_; }

    const game::Climates& climates() const override { return climates_; }

    const game::Reference& reference() const override { return reference_; }

    store::SaveState save_state() const override { return {}; }

    std::vector<std::string> take_messages() override { return {}; }

    void keep_ours() override {}

    void take_theirs() override {}

    void save_copy_to(const std::filesystem::path& /*file*/) override {}

    void save_text(const std::string& /*path*/, const std::string& /*text*/) override {}

    bool look_after() override { return false; }

    base::Result<base::Nothing> finish() override { return base::Nothing{}; }

private:
    store::CampaignDocument document_;
    rules::Rulebook rulebook_;
    std::vector<game::LibraryCreature> library_;
    std::string file_;
    std::vector<game::ReadyNameList> name_lists_;
    game::Climates climates_;
    rules::PriceBook prices_;
    game::Reference reference_;
    std::vector<game::Calendar> calendars_;
};

} // namespace

base::Result<std::unique_ptr<OpenCampaign>>
read_for_pictures(const std::filesystem::path& file, const std::filesystem::path& assets) {
    auto loaded = store::read_latest(file);
    if (!loaded.ok()) return loaded.error();
    const game::About& about = loaded.value().campaign.about;
    auto book = store::load_campaign_rulebook(assets, about, file);
    if (!book.ok()) return book.error();
    auto library = store::load_creature_library(assets, book.value());
    if (!library.ok()) return library.error();
    auto prices = store::load_prices(
        assets, about.rules, about.srd_edition, store::house_rules_path(about, file)
    );
    if (!prices.ok()) return prices.error();
    auto reference = store::load_campaign_reference(assets, about, file);
    if (!reference.ok()) return reference.error();
    std::unique_ptr<OpenCampaign> campaign = std::make_unique<PictureCampaign>(
        std::move(loaded).value(),
        std::move(book).value(),
        std::move(library).value(),
        file,
        store::load_name_lists(assets).lists,
        store::load_climates(assets).climates,
        std::move(prices).value(),
        std::move(reference).value(),
        store::load_calendars(assets).calendars
    );
    return campaign;
}

} // namespace app
