# shellcheck shell=bash
# Sourced by .ci/test and .ci/try: sees to it that a JDK, Maven and LibreOffice Calc are there.
# As root on Debian or Ubuntu it installs what is missing; anyone else is told in one line what to install.

readonly OLDEST_JAVA=17
readonly OLDEST_OFFICE=7.4

say() { printf '\n== %s\n' "$*"; }

fail() {
    printf '\nError: %s\n' "$*" >&2
    exit 1
}

# Ends a program that hangs. macOS has no "timeout"; there the program runs without a limit.
limited() {
    local seconds=$1
    shift
    if command -v timeout >/dev/null; then
        timeout --kill-after=10 "$seconds" "$@"
    else
        "$@"
    fi
}

is_new_jdk() {
    local major
    major=$("$1" -version 2>/dev/null | sed -nE 's/^javac ([0-9]+).*/\1/p') || return 1
    [ "${major:-0}" -ge "$OLDEST_JAVA" ]
}

# Maven takes JAVA_HOME first, then the path. Where both are too old, a newer JDK may be there beside the chosen one;
# the office obeys JAVA_HOME too.
choose_jdk() {
    local javac
    is_new_jdk "${JAVA_HOME:+$JAVA_HOME/bin/}javac" && return 0
    for javac in /usr/lib/jvm/*/bin/javac; do
        if is_new_jdk "$javac"; then
            export JAVA_HOME=${javac%/bin/javac}
            return 0
        fi
    done
    return 1
}

find_office() {
    local place
    for place in "$(command -v soffice || true)" \
        /usr/lib/libreoffice/program/soffice \
        /usr/lib64/libreoffice/program/soffice \
        /opt/libreoffice/program/soffice \
        /Applications/LibreOffice.app/Contents/MacOS/soffice \
        "/c/Program Files/LibreOffice/program/soffice.com"; do
        if [ -x "$place" ]; then
            printf '%s\n' "$place"
            return 0
        fi
    done
    return 1
}

has_display() { [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; }

# Afterwards, on Linux, SAL_USE_VCLPLUGIN names the part of the office that draws windows. Left to choose, the office runs
# on unseen when the display refuses it; told, it ends and says so. False where there is no display or no such part, as in
# Debian's libreoffice-core-nogui.
office_has_windows() {
    local part
    case $(uname -s) in
        Darwin | MINGW* | MSYS*) return 0 ;;
    esac
    has_display || return 1
    for part in gtk3 kf5 kf6 qt5 qt6 gtk4 gen; do
        if [ -e "$(dirname "$(real_path "$OFFICE")")/libvclplug_${part}lo.so" ]; then
            export SAL_USE_VCLPLUGIN=${SAL_USE_VCLPLUGIN:-$part}
            return 0
        fi
    done
    return 1
}

# The office wants the places of its own folders as URLs.
file_url() { printf 'file://%s\n' "$1" | sed 's/%/%25/g; s/ /%20/g; s/#/%23/g; s/?/%3F/g'; }

real_path() { readlink -f "$1" 2>/dev/null || printf '%s\n' "$1"; }

newest() {
    local file found=
    for file in "$@"; do
        if [ "$file" -nt "$found" ]; then
            found=$file
        fi
    done
    printf '%s\n' "$found"
}

has_package() { dpkg-query -W -f '${Status}' "$1" 2>/dev/null | grep -q '^install ok installed$'; }

# Debian packs one office with windows and one without, and they exclude each other: whatever part of one is there stays.
# Where there is none, the one with windows comes, even where no display is: the tests of the windows need one that can.
missing_calc() {
    if has_package libreoffice-calc || has_package libreoffice-calc-nogui; then
        return 0
    elif has_package libreoffice-core-nogui; then
        echo libreoffice-calc-nogui
    elif has_package libreoffice-core || ! has_display; then
        echo libreoffice-calc
    else
        echo libreoffice-calc libreoffice-gtk3
    fi
}

# Prints the names of the Debian packages that are missing.
missing_packages() {
    local office
    choose_jdk || echo default-jdk-headless
    command -v mvn >/dev/null || echo maven
    office=$(find_office || true)
    # An office from elsewhere (not from a Debian package) brings its own Calc and its own Java support.
    if [ -z "$office" ] || dpkg-query -S "$(real_path "$office")" >/dev/null 2>&1; then
        missing_calc
        has_package libreoffice-java-common || echo libreoffice-java-common
    fi
    # As wide as Arial, in which the office shows the sheets on other systems.
    has_package fonts-liberation || has_package fonts-liberation2 || echo fonts-liberation
    # Another spreadsheet program, which a test asks to work out a copy that goes on working (36 MB).
    [ -z "${runs_tests:-}" ] || command -v ssconvert >/dev/null || echo gnumeric
}

install_packages() {
    local log
    say "Installing: $* (takes a few minutes)"
    log=$(mktemp)
    if ! {
        apt-get -q -o Acquire::Retries=3 update &&
            DEBIAN_FRONTEND=noninteractive NEEDRESTART_MODE=a apt-get -q -y --no-install-recommends \
                -o Acquire::Retries=3 -o DPkg::Lock::Timeout=300 install "$@"
    } >"$log" 2>&1 </dev/null; then
        tail -n 20 "$log" >&2
        fail "apt-get could not install these packages. All it said is in $log"
    fi
    rm -f "$log"
}

set_up_debian() {
    local missing needed
    mapfile -t missing < <(missing_packages | tr ' ' '\n')
    [ "${#missing[@]}" -gt 0 ] || return 0
    if [ "$(id -u)" -ne 0 ]; then
        # The font is for looks only, and one test is skipped without Gnumeric: no reason to stop.
        mapfile -t needed < <(printf '%s\n' "${missing[@]}" | grep -vx -e fonts-liberation -e gnumeric)
        [ "${#needed[@]}" -gt 0 ] || return 0
        fail "something is missing. Run this line, then this command again:
sudo apt-get update && sudo apt-get install -y --no-install-recommends ${missing[*]}"
    fi
    install_packages "${missing[@]}"
}

what_to_install() {
    if command -v dnf >/dev/null; then
        echo 'sudo dnf install -y java-devel maven libreoffice-calc'
    elif [ "$(uname -s)" = Darwin ]; then
        echo 'brew install --cask temurin libreoffice && brew install maven'
    else
        echo "a JDK ($OLDEST_JAVA or newer, 64 bit) and Apache Maven on the PATH, and LibreOffice ($OLDEST_OFFICE or newer)"
    fi
}

check_tools() {
    local scratch office tools
    # Even to tell its version, the office writes down which Java it found: not into the user's own profile.
    scratch=$(mktemp -d)
    office=$(limited 300 "$OFFICE" --version "-env:UserInstallation=$(file_url "$scratch")" 2>/dev/null </dev/null |
        sed -nE 's/^LibreOffice ([0-9.]+).*/\1/p') || true
    rm -rf "$scratch"
    [ -n "$office" ] || fail "$OFFICE does not start: it does not even tell its version."
    [ "$(printf '%s\n' "$OLDEST_OFFICE" "$office" | sort -V | head -n 1)" = "$OLDEST_OFFICE" ] ||
        fail "LibreOffice $office is too old: $OLDEST_OFFICE or newer is needed, as Debian 12 or Ubuntu 24.04 have it."
    tools=$(mvn -v 2>/dev/null </dev/null |
        sed -nE 's/.*(Apache Maven|Java)( version:)? ([0-9.]+).*/\1 \3/p' | paste -sd ' ' -) || true
    say "With LibreOffice $office $tools"
}

# Afterwards OFFICE is the start script of the office, and Maven finds a JDK.
set_up() {
    # Maven’s own Java ends before the thorough compiler has paid for itself: with it, the build takes half as much work again.
    export MAVEN_OPTS="-XX:+IgnoreUnrecognizedVMOptions -XX:TieredStopAtLevel=1 -XX:+UseSerialGC ${MAVEN_OPTS:-}"

    # In the plain C locale Java takes every letter outside ASCII for a question mark, in file names too.
    [ "$(locale charmap 2>/dev/null)" = UTF-8 ] || export LC_ALL=C.UTF-8

    if command -v apt-get >/dev/null && command -v dpkg-query >/dev/null; then
        set_up_debian
    fi
    if ! choose_jdk || ! command -v mvn >/dev/null || ! OFFICE=$(find_office); then
        fail "something is missing. To install: $(what_to_install)"
    fi
    readonly OFFICE
    check_tools
}
