#!/usr/bin/env python3
"""Holds the manual, docs/manual, against the program. Tells everything that is not so, and fails where there is something.

manual.py [ROOT]   In the manual **bold** is a name that stands on the screen: it is a sentence of app/wording, but for
                   its keys, its underlined letters and its dots. `Code` is a key that some sentence names, or a
                   command with a verb that rigband-file has. Every picture and every chapter that is named is there
                   and goes into the program; no word is used that the program does not say; and a chapter that speaks
                   of a verdict says that it is one sign only, and who prevails.
"""
import pathlib
import re
import sys

ROOT = pathlib.Path(sys.argv[1] if len(sys.argv) > 1 else pathlib.Path(__file__).resolve().parents[2])
MANUAL = ROOT / "docs" / "manual"
CONTENTS = "README.md"


def sentences():
    """Every literal under tr() of app/wording, its parts joined; keys are those that a note says are keys."""
    literal = r'"(?:[^"\\]|\\.)*"'
    told, keys = set(), set()
    for path in sorted((ROOT / "app" / "wording").glob("*.cpp")):
        for match in re.finditer(rf'\btr\(\s*({literal}(?:\s*{literal})*)(\s*,\s*"key)?', path.read_text(encoding="utf-8")):
            sentence = "".join(part[1:-1] for part in re.findall(literal, match.group(1)))
            sentence = sentence.replace("\\n", "\n").replace('\\"', '"')
            told.add(sentence)
            if match.group(2):
                keys.add(sentence)
    return told, keys


def name_of(sentence):
    """As it is called: without its number, keys in brackets, underlined letters, dots, and line ends."""
    name = re.sub(r"^\d+ +", "", re.sub(r"&(?=\S)", "", sentence))
    name = re.sub(r"\s*\((?:%\d|[^()%]*)\)$", "", name)
    return re.sub(r"\s+", " ", re.sub(r"\s*…$", "", name)).strip()


def chapters():
    return {path.name: path.read_text(encoding="utf-8") for path in sorted(MANUAL.glob("*.md"))}


def faults_of_names(text, names):
    for bold in re.findall(r"\*\*(.+?)\*\*", text, re.DOTALL):
        if name_of(bold) not in names:
            yield f"“{' '.join(bold.split())}” stands nowhere on the screen"


def named_keys(told, keys):
    """Those that a sentence says, and those between two: Ctrl+1 to Ctrl+5."""
    named = set(keys)
    for one in told:
        named.update(re.findall(r"(?<![\w+])(?:(?:Ctrl|Alt|Shift)\+)*(?:Page Up|Page Down|[A-Z]\w*|\d|\+|-)(?!\w)", one))
        for with_key, first, last in re.findall(r"((?:Ctrl|Alt)\+)(\d) to \1(\d)", one):
            named.update(f"{with_key}{digit}" for digit in range(int(first), int(last) + 1))
    return named


def faults_of_code(text, keys, verbs):
    for code in re.findall(r"`([^`]+)`", text) + re.findall(r"^ {4}(\S.*)$", text, re.MULTILINE):
        if code.startswith("rigband"):
            if code.startswith("rigband-file ") and code.split()[1] not in verbs:
                yield f"“{code}” is no verb of rigband-file"
        elif code not in keys:
            yield f"“{code}” is no key that the program names"


def faults_of_places(text, resources):
    for kind, place in re.findall(r"(!?)\[[^\]]*\]\(([^)]+)\)", text):
        path = (MANUAL / place).resolve()
        if not path.is_file():
            yield f"{place} is not there"
        elif kind and path.relative_to(ROOT.resolve()).as_posix() not in resources:
            yield f"{place} does not go into the program"


def faults_of_verdicts(text):
    words = " ".join(text.split()).lower()
    if re.search(r"\bverdicts?\b|\bthe band\b", words):
        if "one sign" not in words:
            yield "speaks of a verdict and does not say that it is one sign only"
        if "manual" not in words or not re.search(r"local rules|licensed|entitled to decide", words):
            yield "speaks of a verdict and does not say who prevails"


def main():
    told, keys = sentences()
    names = {name_of(one) for one in told}
    keys = named_keys(told, keys)
    usage = (ROOT / "app" / "wording" / "file_usage.cpp").read_text(encoding="utf-8")
    verbs = set(re.findall(r'\{"([a-z]+) ', usage))
    resources = set(re.findall(r"(docs/\S+\.(?:md|png))", (ROOT / "app" / "CMakeLists.txt").read_text(encoding="utf-8")))
    unused = re.compile(r"\b(?:" + "|".join((ROOT / "tests" / "house" / "forbidden_words.txt").read_text().split("\n")[:-1]) +
                        r")\b", re.IGNORECASE)
    texts = chapters()
    listed = [CONTENTS] + re.findall(r"^- \[.+\]\((.+\.md)\)$", texts[CONTENTS], re.MULTILINE)
    found = []
    for name in sorted(set(texts) ^ set(listed)):
        found.append(f"{name} stands only in one of the folder and the contents")
    for name, text in texts.items():
        title = re.match(r"# (.+)\n", text)
        if name != CONTENTS and (not title or f"[{title.group(1)}]({name})" not in texts[CONTENTS]):
            found.append(f"{name}: its title is not the one of the contents")
        if f"docs/manual/{name}" not in resources:
            found.append(f"{name} does not go into the program")
        for word in unused.findall(text):
            found.append(f"{name}: “{word}” is a word that the program does not say")
        for fault in (*faults_of_names(text, names), *faults_of_code(text, keys, verbs),
                      *faults_of_places(text, resources), *faults_of_verdicts(text)):
            found.append(f"{name}: {fault}")
    print("\n".join(found), end="\n" if found else "")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
