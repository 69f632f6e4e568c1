// Names of files that belong to the campaign and stand beside it.
#pragma once

#include "widgets/panel.h"

#include <string>

namespace widgets {

// "/home/me/salt.json" and "-pages.pdf": "/home/me/salt-pages.pdf".
std::string beside_campaign(const PanelContext& context, const std::string& ending);

} // namespace widgets
