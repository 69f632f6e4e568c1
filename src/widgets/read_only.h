// Why nothing can be changed, for the buttons that would change something.
#pragma once

#include "widgets/panel.h"

namespace widgets {

// Empty when edits are allowed.
inline const char* read_only_reason(const PanelContext& context) {
    return context.is_read_only ? "The campaign is open for reading only." : "";
}

} // namespace widgets
