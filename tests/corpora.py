"""Holds what the program's reader took out of YAML against PyYAML: python3 tests/corpora.py FILE, as tests/corpora.sh writes it.

Each line of FILE is a text that the reader took without a word, and the texts of its nodes. PyYAML composes the same text into nodes,
whose scalars are text too, so that no type is guessed on either side. Ends with 1 when any text, key or order differs.
"""
import json
import sys

import yaml

# Where PyYAML, which reads YAML 1.1, says otherwise than the YAML test suite does.
KNOWN = {"{ ?foo: bar,\nbar: 42\n}\n": "a question mark with no blank behind it is a letter of the key since YAML 1.2"}


def tree(node):
    if node is None:
        return {"map": []}  # A text of remarks alone: a file in which nothing is written yet.
    if isinstance(node, yaml.MappingNode):
        return {"map": [[tree(key), tree(value)] for key, value in node.value]}
    if isinstance(node, yaml.SequenceNode):
        return [tree(item) for item in node.value]
    return node.value


def ours(read):
    if isinstance(read, dict):
        return {"map": [[key, ours(value)] for key, value in read.items()]}
    return [ours(item) for item in read] if isinstance(read, list) else read


def main(path):
    same, refused, different, known = 0, [], [], []
    with open(path, encoding="utf-8") as lines:
        for line in lines:
            case = json.loads(line)
            try:
                theirs = tree(yaml.compose(case["yaml"], Loader=yaml.SafeLoader))
            except yaml.YAMLError as error:
                refused.append((case["yaml"], str(error).split("\n")[0]))
                continue
            if theirs == ours(case["read"]):
                same += 1
            elif case["yaml"] in KNOWN:
                known.append(case["yaml"])
            else:
                different.append((case["yaml"], theirs, ours(case["read"])))
    print(
        f"{same} texts are the same by PyYAML {yaml.__version__}, {len(refused)} it refuses, "
        f"{len(known)} differ for a known reason, {len(different)} differ"
    )
    for text in known:
        print(f"known: {text!r}: {KNOWN[text]}")
    for text, why in refused:
        print(f"refused there: {text!r}: {why}")
    for text, theirs, read in different:
        print(f"differs: {text!r}\n  there {theirs!r}\n  here  {read!r}")
    return 1 if different else 0


sys.exit(main(sys.argv[1]))
