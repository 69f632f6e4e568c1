#!/bin/sh
# Fetches the pinned Dear ImGui source into a cache folder and prints nothing when it is already there.
# Usage: fetch_imgui.sh FOLDER. The distribution's own mirror is used through an isolated apt set-up:
# the system's sources and package lists stay untouched and no host name stands in this file.
set -eu
folder=${1:?usage: fetch_imgui.sh FOLDER}
release=trixie
version=1.90.1+ds
archive=imgui_${version}.orig.tar.xz
sha256=ecce377df0f90b292f15dcbd83d438bddc162b2388c881132bde18c787572a1c

[ -f "$folder/.complete-$sha256" ] && exit 0
mkdir -p "$folder"
folder=$(cd "$folder" && pwd)
work=$folder/apt
rm -rf "$work"
mkdir -p "$work/sources" "$work/preferences" "$work/lists/partial" "$work/cache/archives/partial" "$work/download"

if [ ! -f "$folder/$archive" ] || ! echo "$sha256  $folder/$archive" | sha256sum --check --status; then
    # Every archive the system already trusts is tried; only the release name and the type change.
    keyring=$(find /usr/share/keyrings -name 'debian-archive-keyring.*' | sort | head -n 1)
    mirrors=$(apt-get indextargets --format '$(SITE)' 'Created-By: Packages' 2>/dev/null | sort -u)
    [ -n "$mirrors" ] || mirrors=$(cat /etc/apt/sources.list /etc/apt/sources.list.d/*.list \
        /etc/apt/sources.list.d/*.sources 2>/dev/null |
        grep -v '^#' | grep -oE '[a-z]+://[^ ]+' | sort -u)
    for mirror in $mirrors; do
        case $mirror in *security*) continue ;; */debian | */debian/) ;; *) continue ;; esac
        printf 'Types: deb-src\nURIs: %s\nSuites: %s\nComponents: main\nSigned-By: %s\n' \
            "$mirror" "$release" "$keyring" >"$work/sources/source.sources"
        options="-o Dir::Etc::sourcelist=/dev/null -o Dir::Etc::sourceparts=$work/sources \
            -o Dir::Etc::preferencesparts=$work/preferences -o Dir::Etc::preferences=/dev/null \
            -o Dir::State::lists=$work/lists -o Dir::Cache=$work/cache -o APT::Sandbox::User= \
            -o Acquire::Languages=none -o Acquire::Retries=3"
        # shellcheck disable=SC2086 # the options are meant to be split
        if apt-get $options -qq update >"$work/log" 2>&1 &&
            (cd "$work/download" && apt-get $options -qq source --download-only "imgui=$version-*" \
                >>"$work/log" 2>&1 || apt-get $options -qq source --download-only imgui >>"$work/log" 2>&1) &&
            [ -f "$work/download/$archive" ]; then
            mv "$work/download/$archive" "$folder/$archive"
            break
        fi
    done
fi
if [ ! -f "$folder/$archive" ]; then
    echo "Dear ImGui $version could not be fetched from the distribution's archive; see $work/log." >&2
    echo "Give its source yourself: cmake -DIMGUI_SOURCE_DIR=FOLDER" >&2
    exit 1
fi
if ! echo "$sha256  $folder/$archive" | sha256sum --check --status; then
    echo "The Dear ImGui archive $folder/$archive does not have the expected SHA-256; remove it and try again." >&2
    exit 1
fi
rm -rf "$folder/source"
mkdir "$folder/source"
tar -xf "$folder/$archive" -C "$folder/source" --strip-components=1
rm -rf "$work"
: >"$folder/.complete-$sha256"
