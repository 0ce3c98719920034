# Makes a comment of the text that a stranger's run kept. Only lines of the shape that `ohmstead changes --form markdown` gives them are let
# through as Markdown; in them stands nothing but plain words, and the number of a board in code. All else is shown in a block of code, which no
# text can end: its fence is longer than any in it.
#   $text  what was kept
#   $run   the address of the run

# What shows itself, and line ends; neither controls nor what turns or hides text.
def shown: explode | map(select(
    . == 10 or (. >= 32 and . < 127) or (. >= 160 and . != 173 and . != 1564 and . != 6158
      and (. < 8203 or . > 8207) and (. < 8232 or . > 8238) and (. < 8288 or . > 8303) and . != 65279
      and (. < 65529 or . > 65533) and (. < 917504 or . > 921599)))) | implode;

# Hosts take 65,536 characters of a comment. Counted in bytes it is less, whatever they count.
def most: 60000;
def cut: split("\n") as $lines
  | [foreach $lines[] as $line (0; . + ($line | utf8bytelength) + 1; . <= most)] as $fits
  | ($fits | index(false) // length) as $told
  | {told: $lines[:$told], left: ($fits[$told:] | length)};

def longest: reduce explode[] as $letter ([0, 0];
    (if $letter == 96 then .[0] + 1 else 0 end) as $here | [$here, ([.[1], $here] | max)]) | .[1];
# Whoever writes twenty of them in a row only wants a long fence.
def block: rtrimstr("\n") | (if longest > 20 then split("`") | join("'") else . end)
  | ("`" * ([3, longest + 1] | max)) as $fence | "\($fence)text\n\(.)\n\($fence)";

# Neither a name that is called nor an address; and no number or commit that a host would link.
def plain: "[A-Za-z0-9 ,:;'+-]*";
def links: test("gh-[0-9]|[0-9a-f]{7}"; "i");
def is_counts: test("^\\*\\*" + plain + "\\*\\*$");
def is_head: . == "| board | was | now | because of |" or . == "|---|---|---|---|";
# A bar in code still ends a cell, but for the one that is escaped.
def is_row: test("^\\| (?<f>`+) ([^`|\\\\]|\\\\\\|)* \\k<f> \\| " + plain + " \\| " + plain + " \\| " + plain + " \\|$")
  and (sub("`[^`]*`"; "") | links | not);
def is_left: . == "" or test("^and [0-9]{1,6} more boards?, left out$");
def is_known: is_head or is_left or is_row or (is_counts and (links | not));

def opening: "<details><summary>what differs, line by line</summary>";
($text | shown | cut) as $cut
| ($cut.told | index(opening)) as $details
| $cut.told[:$details] as $head
| (if ($head[0] // "" | is_counts) and ($head | all(is_known)) then
    ($head | join("\n")) + (if $details == null then "" else
      "\n\(opening)\n\n\([$cut.told[$details + 1:][] | select(test("^(`{3,}(text)?|</details>|)$") | not)] | join("\n") | block)\n\n</details>\n" end)
  else ($cut.told | join("\n") | block) + "\n" end) as $told
| {body: ("<!-- ohmstead changes -->\nWhat this proposal changes, as [its own run](\($run)) told it:\n\n\($told)"
    + (if $cut.left > 0 then "\nLines that are left out: \($cut.left). The run tells all.\n" else "" end))}
