#!/usr/bin/env bash
# Obtains the program and puts it on the path of the steps that follow: built from the commit of this action, or an archive of a release, of
# which nothing is run or unpacked before its SHA-256 is the one that was meant.
#   FROM_SOURCE  true to build it
#   RELEASE      the tag of a release of REPOSITORY, or the address of the folder with the archives
#   REPOSITORY   the repository of this action, owner/name; empty where the action is a folder of the workflow's own repository
#   SHA256       the SHA-256 of the archive; that of SHA256SUMS beside it when empty
set -euo pipefail

refuse() {
  echo "::error::$1"
  exit 1
}

bin=$RUNNER_TEMP/ohmstead-bin
mkdir -p "$bin"

if [ "$FROM_SOURCE" = true ]; then
  # From its own folder: a global.json or a nuget.config that lies in the collection says nothing here.
  cd "$GITHUB_ACTION_PATH/../../.."
  dotnet publish src/Ohmstead --configuration Release --output "$RUNNER_TEMP/ohmstead"
  printf '#!/bin/sh\nexec dotnet "$RUNNER_TEMP/ohmstead/ohmstead.dll" "$@"\n' > "$bin/ohmstead"
  chmod +x "$bin/ohmstead"
  echo "$bin" >> "$GITHUB_PATH"
  exit 0
fi

[ -n "$RELEASE" ] ||
  refuse "no release of the program is published yet: write 'from-source: true' for this action, or name one by 'release'"
if [[ "$RELEASE" =~ ^v[0-9]+\.[0-9]+\.[0-9]+$ ]]; then
  [ -n "$REPOSITORY" ] || refuse "nothing says whose release $RELEASE is: write the https address of the folder that holds its archives"
  RELEASE=$GITHUB_SERVER_URL/$REPOSITORY/releases/download/$RELEASE
fi
[[ "$RELEASE" == https://* ]] ||
  refuse "'release' is no address: write the tag of a release, such as v1.2.3, or the https address of the folder that holds the archives"

case "${RUNNER_OS:-}-${RUNNER_ARCH:-}" in
  Linux-X64) machine=linux-x64 ;;
  Linux-ARM64) machine=linux-arm64 ;;
  macOS-ARM64) machine=osx-arm64 ;;
  Windows-X64) machine=win-x64 ;;
  Windows-ARM64) machine=win-arm64 ;;
  *) refuse "no archive is made for this runner: write 'from-source: true' for this action" ;;
esac
# A job may run in a container whose C library is the other one.
if compgen -G '/lib/ld-musl-*' > /dev/null && ! compgen -G '/lib*/ld-linux-*' > /dev/null; then
  machine=${machine/linux-/linux-musl-}
fi

# Its own words are the reason; what fetched it tells more on the other stream.
told=$("$GITHUB_ACTION_PATH/obtain.sh" "$RELEASE" "$machine" "$SHA256" "$bin") || refuse "$told"
echo "$bin" >> "$GITHUB_PATH"
