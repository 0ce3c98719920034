#!/usr/bin/env bash
# Puts what a run kept as text under its pull request, or over the comment that is there already.
#   RUN                  the run that kept it
#   COMMIT               the commit that was proposed, as the host tells it
#   OWNER, FORK, BRANCH  where that commit lies
# The run belongs to whoever proposes: its text may be anything. Which pull request it is about is asked of the host and never of the text,
# nothing is unpacked to the disk, and comment.jq makes the text inert.
set -euo pipefail

readonly most_packed=1048576 most=262144

leave() {
  echo "::notice::no comment: $1"
  exit 0
}

# Fields are sent as they are (-f): whatever a branch is called, it is neither a part of an address nor the name of a file.
number=$(
  gh api --method GET "repos/$GITHUB_REPOSITORY/pulls" -f state=open -f "head=$OWNER:$BRANCH" -f per_page=100 |
    jq --raw-output --arg commit "$COMMIT" --arg fork "$FORK" --arg base "$GITHUB_REPOSITORY" \
      '.[] | select(.head.sha == $commit and .head.repo.full_name == $fork and .base.repo.full_name == $base) | .number'
)
[[ "$number" =~ ^[1-9][0-9]*$ ]] || leave "the commit of this run is not the last one of exactly one open pull request"

artifact=$(
  gh api --method GET "repos/$GITHUB_REPOSITORY/actions/runs/$RUN/artifacts" -f name=ohmstead-changes -f per_page=100 |
    jq --raw-output --argjson most "$most_packed" \
      '[.artifacts[] | select(.name == "ohmstead-changes" and (.expired | not))] | if length == 1 and .[0].size_in_bytes <= $most then .[0].id else empty end'
)
[[ "$artifact" =~ ^[1-9][0-9]*$ ]] || leave "the run kept no text, or more than can be one"

packed=$(mktemp)
text=$(mktemp)
trap 'rm -f "$packed" "$text"' EXIT
gh api "repos/$GITHUB_REPOSITORY/actions/artifacts/$artifact/zip" > "$packed"

# The one file of that name, to a pipe: no path of the archive is made, no link in it followed, and what unpacks to more is cut.
# unzip is stopped by the cut, so how it ends says nothing.
{ unzip -p "$packed" changes.md 2> /dev/null || true; } | head -c "$most" > "$text"
[ -s "$text" ] || leave "the run kept no text"

body=$(mktemp)
trap 'rm -f "$packed" "$text" "$body"' EXIT
jq --null-input --rawfile text "$text" --arg run "$GITHUB_SERVER_URL/$GITHUB_REPOSITORY/actions/runs/$RUN" \
  --from-file "$GITHUB_ACTION_PATH/comment.jq" > "$body"

# A comment of a person that begins as ours does is a person's.
ours=$(
  gh api --method GET --paginate "repos/$GITHUB_REPOSITORY/issues/$number/comments" -f per_page=100 |
    jq --raw-output --slurp '[.[][] | select(.user.login == "github-actions[bot]" and (.body | startswith("<!-- ohmstead changes -->"))) | .id][0] // empty'
)
if [[ "$ours" =~ ^[1-9][0-9]*$ ]]; then
  gh api --method PATCH "repos/$GITHUB_REPOSITORY/issues/comments/$ours" --input "$body" > /dev/null
else
  gh api --method POST "repos/$GITHUB_REPOSITORY/issues/$number/comments" --input "$body" > /dev/null
fi
