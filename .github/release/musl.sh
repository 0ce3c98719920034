#!/usr/bin/env bash
# Publishes the program for a system whose C library is musl, in one of those, and tries it there. The SDK is that system's own.
#   $1  the machine: linux-musl-x64 or linux-musl-arm64
#   $2  the commit, in full
#   $3  the folder to make
set -euo pipefail

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
docker run --rm --volume "$root:/source" --workdir /source --env HOME=/tmp alpine:3.23 sh -euc '
  apk add --quiet bash build-base clang dotnet10-sdk git icu-libs jq zlib-dev
  .github/release/publish.sh "$1" "$2" "$3"
  .github/release/try.sh "$3/program" "$2"
  chown -R "$4" artifacts "$3"
' sh "$1" "$2" "$3" "$(id -u):$(id -g)"
