#!/usr/bin/env bash
# Says whether a tag may become a release: it names the version that the one place has, and the changelog gives that version a day.
#   $1  the tag
set -euo pipefail

refuse() {
  echo "$1" >&2
  exit 1
}

cd "$(dirname "${BASH_SOURCE[0]}")/../.."
version=$(sed -nE 's/.*<Version>([0-9]+\.[0-9]+\.[0-9]+)<\/Version>.*/\1/p' Directory.Build.props)
[ -n "$version" ] || refuse "Directory.Build.props tells no version of three numbers"
[ "$1" = "v$version" ] || refuse "the tag is '$1', and Directory.Build.props has version $version: v$version was expected"
grep -Eq "^## ${version//./\\.}, [0-9]{4}-[0-9]{2}-[0-9]{2}$" CHANGELOG.md ||
  refuse "CHANGELOG.md gives $version no day: write the day in place of 'not released yet'"
echo "$version"
