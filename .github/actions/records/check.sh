#!/usr/bin/env bash
# Checks the records, puts what is found on their lines, and tells of a pull request what it changes.
#   RECORDS  the folder of the collection
#   SINCE    the earlier state; the base of a pull request when empty
set -euo pipefail

# Files are named from the root of the repository in which they lie, wherever it was checked out.
top=$(git -C "$RECORDS" rev-parse --show-toplevel) ||
  { echo "::error::the records lie in no repository that git reads; check it out in front of this action"; exit 1; }
records=$(git -C "$RECORDS" rev-parse --show-prefix)
records=${records%/}
cd "$top"

since=$SINCE
if [ "$GITHUB_EVENT_NAME" = pull_request ] && [ -z "$since" ]; then
  # What is checked out is the merge into the base, and the base is its first parent: what differs is the proposal alone.
  since=$(git rev-parse --verify --quiet 'HEAD^1') || {
    echo "::error::the base of the pull request is not there: write 'fetch-depth: 2' for the checkout"
    exit 1
  }
fi

# The text is made though the check fails, and the check though there is no text: whichever goes wrong is told by how this ends.
status=0
if [ "$GITHUB_EVENT_NAME" = pull_request ]; then
  changes=$RUNNER_TEMP/changes.md
  if ohmstead changes "$since" HEAD --in "${records:-.}" --form markdown > "$changes"; then
    cat "$changes" >> "$GITHUB_STEP_SUMMARY"
    echo "changes=$changes" >> "$GITHUB_OUTPUT"
  else
    status=$?
  fi
fi

sarif=$RUNNER_TEMP/findings.sarif
ohmstead check "${records:-.}" --form annotations --thorough ${since:+--since "$since"} --also "sarif=$sarif" || status=$?
[ ! -f "$sarif" ] || echo "sarif=$sarif" >> "$GITHUB_OUTPUT"
exit "$status"
