# SPDX-FileCopyrightText: 2026 The Lapwing authors
# SPDX-License-Identifier: Apache-2.0
# shellcheck shell=bash
#
# What the Linux scripts share; they source it and stand at the top of the tree when they call it.

say() { printf '%s\n' "$*"; }
step() { printf '\n== %s  [%d:%02d]\n' "$*" $((SECONDS / 60)) $((SECONDS % 60)); }
complain() { printf '%s\n' "$*" >&2; }

# One compiler needs about 1 GB at its worst: on a small machine fewer jobs finish sooner than swapping.
build_jobs() {
    local cores gigabytes
    cores=$(nproc)
    gigabytes=$(awk '/^MemAvailable/ { print int($2 / 1048576) }' /proc/meminfo 2>/dev/null)
    [ -n "$gigabytes" ] && [ "$gigabytes" -lt "$cores" ] && cores=$gigabytes
    [ "$cores" -lt 1 ] && cores=1
    echo "$cores"
}

# configure_and_build PRESET [CMAKE OPTION...] [--target TARGET...]
configure_and_build() {
    local preset=$1 options=()
    shift
    while [ $# -gt 0 ] && [ "$1" != --target ]; do
        options+=("$1")
        shift
    done
    command -v ccache >/dev/null && options+=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
    cmake --preset "$preset" "${options[@]}" </dev/null || return
    NINJA_STATUS='[%f/%t, %es] ' cmake --build ".build/$preset" --parallel "$(build_jobs)" "$@" </dev/null
}

# packages_in SECTION...: the names that platform/linux/packages lists there.
packages_in() {
    awk -v wanted=" $* " '
        /^\[/ { on = index(wanted, " " substr($1, 2, length($1) - 2) " "); next }
        on && NF && !/^#/ { print $1 }' platform/linux/packages
}

missing_of() {
    local name
    for name in "$@"; do
        [ "$(dpkg-query -W -f='${db:Status-Status}' "$name" 2>/dev/null)" = installed ] || echo "$name"
    done
}

# install_packages SECTION...: installs what is missing and calls apt-get only when something is.
install_packages() {
    local needed missing name unknown=0
    mapfile -t needed < <(packages_in "$@")
    if [ ${#needed[@]} -eq 0 ]; then
        complain "platform/linux/packages lists nothing under: $*"
        return 1
    fi
    if ! command -v apt-get >/dev/null || ! command -v dpkg-query >/dev/null; then
        complain "This script installs packages on Debian 12 only, and apt-get was not found here. Install what \
platform/linux/packages lists under $* with your own package manager, then build as DEVELOPERS.md says."
        return 1
    fi
    mapfile -t missing < <(missing_of "${needed[@]}")
    if [ ${#missing[@]} -eq 0 ]; then
        say "All ${#needed[@]} packages are there."
        return 0
    fi
    say "Missing: ${missing[*]}"
    become_root || return 1
    mkdir -p .build
    for name in "${missing[@]}"; do
        apt-cache show --no-all-versions "$name" >/dev/null 2>&1 || unknown=1
    done
    if [ $unknown = 1 ]; then
        refresh_package_lists || return 1
        apt_install "${missing[@]}" || { explain_apt; return 1; }
    elif ! apt_install "${missing[@]}"; then
        # Old lists name versions that the mirror no longer has.
        say "That did not work; fetching newer package lists and trying once more."
        refresh_package_lists || return 1
        apt_install "${missing[@]}" || { explain_apt; return 1; }
    fi
    mapfile -t missing < <(missing_of "${needed[@]}")
    if [ ${#missing[@]} -gt 0 ]; then
        complain "apt-get finished, but these packages are still missing: ${missing[*]}"
        return 1
    fi
}

become_root() {
    AS_ROOT=()
    [ "$(id -u)" = 0 ] && return 0
    if ! command -v sudo >/dev/null; then
        complain "Installing packages needs root, and there is no sudo here. Ask an administrator to run this \
script once, or to install the packages named above; then start it again."
        return 1
    fi
    if ! sudo true; then
        complain "Installing packages needs root, and sudo did not let $(id -un) in. Ask an administrator to run \
this script once, or to install the packages named above; then start it again."
        return 1
    fi
    AS_ROOT=(sudo)
}

refresh_package_lists() {
    say "Fetching the package lists (apt-get update)."
    patiently update -q && return
    explain_apt
    return 1
}

apt_install() { patiently install -q -y --no-install-recommends "$@"; }

explain_apt() {
    complain "apt-get failed; its last words, all of them in .build/apt.log:"
    tail -n 12 .build/apt.log >&2
    complain "Look whether this machine is online and its package sources are those of Debian 12; then run this again."
}

# patiently APT-GET ARGUMENTS: waits up to ten minutes for another package manager to finish. The lock of
# the package database has an apt option for that, the lock of the package lists has none.
patiently() {
    local tries=0
    until "${AS_ROOT[@]}" env DEBIAN_FRONTEND=noninteractive LC_ALL=C.UTF-8 apt-get \
        -o DPkg::Lock::Timeout=600 -o Acquire::Retries=3 "$@" </dev/null 2>&1 |
        tee .build/apt.log | apt_progress; [ "${PIPESTATUS[0]}" = 0 ]; do
        grep -qE 'Could not get lock|Unable to (lock|acquire)' .build/apt.log && [ $tries -lt 120 ] || return 1
        [ $tries = 0 ] && say "Another package manager is at work; waiting for it."
        tries=$((tries + 1))
        sleep 5
    done
}

# A line for each tenth of the way in place of apt-get's hundreds.
apt_progress() {
    local line total=0 fetched=0 set_up=0 every=1
    while IFS= read -r line; do
        case $line in
            *' newly installed,'*)
                total=$(sed -E 's/.* ([0-9]+) newly installed.*/\1/' <<<"$line")
                every=$((total / 10 + 1))
                ;;
            'Need to get '*) say "  $total packages. $line" ;;
            Get:*)
                fetched=$((fetched + 1))
                [ "$total" -gt 0 ] && [ $((fetched % every)) = 0 ] && say "  fetched $fetched of $total"
                ;;
            'Setting up '*)
                set_up=$((set_up + 1))
                [ "$total" -gt 0 ] && [ $((set_up % every)) = 0 ] && say "  installed $set_up of $total"
                ;;
            'E: Could not get lock'* | 'E: Unable to lock'*) ;;
            E:* | Err:*) say "  $line" ;;
        esac
    done
}
