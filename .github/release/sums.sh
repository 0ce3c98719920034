#!/usr/bin/env bash
# Writes the SHA-256 of every file of a release into SHA256SUMS beside them.
#   $1  the folder of the release
set -euo pipefail

cd "$1"
rm -f SHA256SUMS
sums=$(LC_ALL=C; for file in *; do sha256sum "$file"; done)
printf '%s\n' "$sums" > SHA256SUMS
