# Shared by the scripts of this folder: the pinned tools of the build, and how each is installed
# from a package registry if it is missing. Sourced, not run; callers have set `set -euo pipefail`.
#
# There is no rust-toolchain.toml: it would make rustup fetch a second toolchain on machines that
# have a good one under another name. `rust-version` in Cargo.toml refuses one that is too old.

# The same versions as in Trunk.toml. wasm-bindgen's must equal that of the library in Cargo.toml.
TRUNK_VERSION=0.21.14
WASM_BINDGEN_VERSION=0.2.130
GECKODRIVER_VERSION=0.37.1

ROOT=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
CACHE="${XDG_CACHE_HOME:-$HOME/.cache}/turns-aloft"
TOOLS="$CACHE/tools"
export PATH="$TOOLS/bin:$PATH"
export TRUNK_SKIP_VERSION_CHECK=true

say() { printf '%s\n' "$*"; }

fail() {
  printf '%s\n' "$*" >&2
  exit 1
}

have() { command -v "$1" >/dev/null 2>&1; }

# need_debian COMMAND PACKAGE : installs the Debian package where COMMAND is missing.
need_debian() {
  have "$1" || install_debian "$2"
}

install_debian() {
  local package=$1 as_root=()
  have apt-get || fail "$package is missing and there is no apt-get here: install it, then run this again."
  if [ "$(id -u)" -ne 0 ]; then
    have sudo || fail "$package is missing: as root, run 'apt-get install $package', then run this again."
    as_root=(sudo)
  fi
  say "Installing $package with apt-get (up to a minute)."
  "${as_root[@]}" apt-get -qq update
  "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get -qq install -y --no-install-recommends "$package" >/dev/null
}

# Installs the parts of the toolchain: the wasm target, rustfmt and clippy.
need_rust() {
  have cargo || fail "Rust is missing: install it with rustup, then run this again."
  [ -d "$(rustc --print sysroot)/lib/rustlib/wasm32-unknown-unknown" ] ||
    rustup target add wasm32-unknown-unknown
  # rustup's proxies exist even for components that are not installed, so run each.
  cargo fmt --version >/dev/null 2>&1 || rustup component add rustfmt
  cargo clippy --version >/dev/null 2>&1 || rustup component add clippy
}

# need_crate CRATE VERSION COMMAND SAYS LEVEL MINUTES [FLAG...] : COMMAND --version must answer SAYS, in
# its first line. Tools run for seconds: they are built with little optimisation (LEVEL), which takes a
# third of the time, and without features that a build has no use for.
need_crate() {
  local crate=$1 version=$2 command=$3 says=$4 level=$5 minutes=$6 start=$SECONDS
  shift 6
  [ "$("$TOOLS/bin/$command" --version 2>/dev/null | sed -n 1p)" = "$says" ] && return
  say "Installing $crate $version into $TOOLS (once; about $minutes minutes)."
  # Keeps the tools' object files out of a target folder set for the project.
  env -u CARGO_TARGET_DIR \
    CARGO_PROFILE_RELEASE_OPT_LEVEL="$level" CARGO_PROFILE_RELEASE_CODEGEN_UNITS=16 \
    CARGO_PROFILE_RELEASE_LTO=off CARGO_PROFILE_RELEASE_DEBUG=false \
    cargo install --quiet --force --no-default-features "$@" --root "$TOOLS" --version "$version" "$crate"
  say "Installed $crate in $((SECONDS - start)) s."
}

# The tools that make a page from the compiled module.
need_bundler() {
  # Without --locked: wasm-bindgen-cli's lock file names a crate that isn't available everywhere.
  need_crate wasm-bindgen-cli "$WASM_BINDGEN_VERSION" wasm-bindgen "wasm-bindgen $WASM_BINDGEN_VERSION" 1 1 --bin wasm-bindgen
  need_crate trunk "$TRUNK_VERSION" trunk "trunk $TRUNK_VERSION" 0 3 --locked
}

# inputs_hash PATH... : one hash over the compiler's version and all files under the existing paths.
inputs_hash() {
  local path paths=()
  for path in "$@"; do
    [ ! -e "$path" ] || paths+=("$path")
  done
  {
    rustc --version
    find "${paths[@]}" -type f -print0 | LC_ALL=C sort -z | xargs -0 sha256sum
  } | sha256sum | cut -d ' ' -f 1
}

# need_python FOLDER : sets PYTHON to an interpreter with the packages that FOLDER asks for; cached outside
# the repository for each set of requirements and Python version.
need_python() {
  local requirements="$ROOT/$1/requirements.txt" wanted venv
  need_debian python3 python3
  wanted=$(cat "$requirements" <(python3 --version) | sha256sum | cut -c 1-12)
  venv="$CACHE/python-$wanted"
  if [ ! -f "$venv/complete" ]; then
    python3 -c 'import ensurepip' 2>/dev/null || install_debian python3-venv
    say "Installing the Python packages of $1 into $venv (up to a minute)."
    python3 -m venv --clear "$venv"
    "$venv/bin/pip" install --quiet --disable-pip-version-check -r "$requirements"
    touch "$venv/complete"
  fi
  PYTHON="$venv/bin/python"
}

# Sets OUTSIDE_PYTHON to a Python with the engines that compute the flights again.
need_outside() {
  need_python tests/outside
  OUTSIDE_PYTHON=$PYTHON
}

# Sets WORKFLOWS_PYTHON to a Python that checks the forge's workflow.
need_workflows() {
  need_python tests/workflows
  WORKFLOWS_PYTHON=$PYTHON
}

# Chromium and its driver; sets BROWSER_PYTHON to a Python with the packages of the browser tests.
need_browser() {
  need_debian chromium chromium
  need_debian chromedriver chromium-driver
  need_python tests/browser
  BROWSER_PYTHON=$PYTHON
  need_axe
}

# Exports AXE, the script of a public checker of accessibility; cached outside the repository for each of
# its versions.
need_axe() {
  local wanted folder
  need_debian npm npm
  wanted=$(sha256sum <"$ROOT/tests/browser/axe/package-lock.json" | cut -c 1-12)
  folder="$CACHE/axe-$wanted"
  export AXE="$folder/node_modules/axe-core/axe.min.js"
  if [ ! -f "$AXE" ]; then
    say "Installing the checker of accessibility into $folder (seconds)."
    mkdir -p "$folder"
    cp "$ROOT"/tests/browser/axe/package*.json "$folder"
    npm ci --silent --no-audit --no-fund --ignore-scripts --prefix "$folder"
  fi
}

# Firefox and its driver, which Debian does not have.
need_second_browser() {
  need_debian firefox-esr firefox-esr
  # A virtual screen, and software rendering for WebGL on it.
  need_debian Xvfb xvfb
  [ -e /usr/lib/*/dri/swrast_dri.so ] || install_debian libgl1-mesa-dri
  [ -e /usr/lib/*/libEGL.so.1 ] || install_debian libegl1
  need_crate geckodriver "$GECKODRIVER_VERSION" geckodriver "geckodriver $GECKODRIVER_VERSION" 0 2 --locked
}

# Sets FILMS to a folder with the test films; cached outside the repository for each way of making them.
need_films() {
  local wanted
  need_debian python3 python3
  need_debian ffmpeg ffmpeg
  wanted=$(cat "$ROOT"/tests/films/*.py <(ffmpeg -version | sed -n 1p) | sha256sum | cut -c 1-12)
  FILMS="$CACHE/films-$wanted"
  if [ ! -f "$FILMS/complete" ]; then
    say "Making the test films in $FILMS (about two minutes)."
    rm -rf "$FILMS"
    python3 "$ROOT/tests/films/make.py" "$FILMS"
    touch "$FILMS/complete"
  fi
}
