# shellcheck shell=sh disable=SC2034 # the lists are read by those who source this
# Sourced by run and check: makes sure that everything they need is installed, asking nothing.
# Debian 12 and 13 (and systems with the same package names). `need PACKAGE...` returns at once when all
# are there; otherwise it installs them as root or through sudo, or prints them and stops.

need() {
    missing=
    for package in "$@"; do
        [ "$(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null)" = installed ] ||
            missing="$missing $package"
    done
    [ -z "$missing" ] && return 0
    if ! command -v apt-get >/dev/null; then
        echo "These packages (Debian names) are needed and this system has no apt-get:$missing" >&2
        exit 1
    fi
    if [ "$(id -u)" = 0 ]; then
        as_root=
    elif command -v sudo >/dev/null && sudo -n true 2>/dev/null || { [ -t 0 ] && command -v sudo >/dev/null; }; then
        as_root=sudo
    else
        echo "These packages are needed and cannot be installed without root or sudo:" >&2
        echo "    apt-get install --no-install-recommends$missing" >&2
        exit 1
    fi
    echo "Installing:$missing" >&2
    log=$(mktemp)
    # shellcheck disable=SC2086 # lists of words
    if ! { $as_root apt-get -qq -o Acquire::Retries=3 update &&
        $as_root env DEBIAN_FRONTEND=noninteractive apt-get -qq -y --no-install-recommends \
            -o Acquire::Retries=3 -o Dpkg::Use-Pty=0 install $missing; } >"$log" 2>&1; then
        cat "$log" >&2
        rm -f "$log"
        echo "The packages could not be installed; the lines above say why." >&2
        exit 1
    fi
    rm -f "$log"
}

# To build and to start the program; ca-certificates and xz-utils serve the fetched source.
build_packages="g++ cmake ninja-build pkg-config ca-certificates xz-utils libglfw3-dev libgl-dev
    libfreetype-dev nlohmann-json3-dev libutf8proc-dev libpango1.0-dev
    libcairo2-dev libstb-dev python3-glad fonts-b612 fonts-dejavu-core libgl1-mesa-dri"
# To draw without a display.
picture_packages="xvfb xauth"
# To test and to look over the code.
check_packages="doctest-dev libboost-dev libeigen3-dev libpoppler-cpp-dev poppler-utils clang-format clang-tidy xdotool x11-utils"
