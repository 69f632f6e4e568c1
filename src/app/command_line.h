// The command line: what a person can ask of the program, and the exit code it ends with.
#pragma once

namespace app {

int run_command_line(int argc, char** argv);

} // namespace app
