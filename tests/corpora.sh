#!/bin/sh
# Runs the check over public corpora of hostile input, from where they lie: the YAML test suite, the JSON test suite, lists of naughty strings.
#
#   tests/corpora.sh FOLDER        # any folder of files; each is a record, a file of the workshop, a story, and each of its lines a value
#
# Ends with 0 when nothing crashed, nothing hung and each finding has a place and a next step.
set -eu
[ $# -eq 1 ] && [ -d "$1" ] || { echo "usage: tests/corpora.sh FOLDER" >&2; exit 2; }
OHMSTEAD_CORPORA=$(cd "$1" && pwd)
export OHMSTEAD_CORPORA
cd "$(dirname "$0")/.."
exec dotnet run --project tests/Ohmstead.Tests -- -class "*CorporaTests" -showLiveOutput
