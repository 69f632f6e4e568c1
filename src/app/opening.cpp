#include "app/opening.h"

#include <array>
#include <cerrno>
#include <spawn.h>
#include <sys/wait.h>

extern char** environ;

namespace app {

namespace {

// xdg-open (freedesktop.org, xdg-utils) may stay until the viewer is closed, so it is left behind
// in a session of its own. The name of the file is an argument, never part of the script.
constexpr const char* script = "command -v xdg-open >/dev/null || exit 127; setsid xdg-open \"$1\" "
                               "</dev/null >/dev/null 2>&1 &";

base::Error no_viewer(const std::string& file) {
    return {
        base::ErrorKind::not_possible,
        "No program was found that shows PDF files; the pages are in " + file + ".",
        {},
        {}};
}

} // namespace

base::Result<base::Nothing> open_with_system(const std::string& file) {
    std::string shell = "sh";
    std::string option = "-c";
    std::string words = script;
    std::string name = file;
    const std::array<char*, 6> arguments{
        shell.data(), option.data(), words.data(), shell.data(), name.data(), nullptr};
    pid_t child = 0;
    if (posix_spawnp(&child, "sh", nullptr, nullptr, arguments.data(), environ) != 0)
        return no_viewer(file);
    int status = 0;
    while (waitpid(child, &status, 0) < 0)
        if (errno != EINTR) return no_viewer(file);
    if (!WIFEXITED(status) || WEXITSTATUS(status) != 0) return no_viewer(file);
    return base::Nothing{};
}

} // namespace app
