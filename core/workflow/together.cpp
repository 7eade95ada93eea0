// SPDX-FileCopyrightText: 2026 The Lapwing authors
// SPDX-License-Identifier: Apache-2.0

#include "core/workflow/together.h"

#include <utility>

namespace lapwing::workflow {

Intent together(std::string name, std::vector<std::string> args, std::vector<Intent> all) {
    return [name = std::move(name), args = std::move(args),
            all = std::move(all)](const Now& now) -> Result<Command> {
        auto command = all.front()(now);
        for (std::size_t i = 1; command && i < all.size(); ++i) {
            auto more = all[i](now);
            if (!more) return more;
            command->edits.insert(command->edits.end(), more->edits.begin(), more->edits.end());
        }
        if (command) {
            command->name = name;
            command->args = args;
        }
        return command;
    };
}

}  // namespace lapwing::workflow
