#!/usr/bin/env bash
# Prints the chapter of the changelog about a version, without its heading.
#   $1  the version
set -euo pipefail

cd "$(dirname "${BASH_SOURCE[0]}")/../.."
notes=$(awk -v wanted="$1" '/^## / { is_in = index($0, "## " wanted ",") == 1; next } is_in' CHANGELOG.md)
[ -n "$notes" ] || { echo "CHANGELOG.md has no chapter of $1" >&2; exit 1; }
printf '%s\n' "$notes"
