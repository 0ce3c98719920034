#!/bin/sh
# Runs the check over public corpora of hostile input, from where they lie: the YAML test suite, the JSON test suite, lists of naughty strings.
#
#   tests/corpora.sh FOLDER        # any folder of files; each is a record, a file of the workshop, a story, and each of its lines a value
#
# Ends with 0 when nothing crashed, nothing hung, each finding has a place and a next step, and the texts of what is read are those that
# PyYAML reads, where Python has it.
set -eu
[ $# -eq 1 ] && [ -d "$1" ] || { echo "usage: tests/corpora.sh FOLDER" >&2; exit 2; }
OHMSTEAD_CORPORA=$(cd "$1" && pwd)
export OHMSTEAD_CORPORA
cd "$(dirname "$0")/.."
OHMSTEAD_TEXTS=$(mktemp)
export OHMSTEAD_TEXTS
trap 'rm -f "$OHMSTEAD_TEXTS"' EXIT
dotnet run --project tests/Ohmstead.Tests -- -class "*CorporaTests" -class "*CorporaTextsTests" -showLiveOutput
if python3 -c 'import yaml' 2> /dev/null; then
  python3 tests/corpora.py "$OHMSTEAD_TEXTS"
else
  echo "Python has no PyYAML here: the texts were not compared"
fi
