#!/usr/bin/env python3
"""Holds the manual, docs/manual, against the program. Tells everything that is not so, and fails where there is something.

manual.py [ROOT]   In the manual **bold** is a name that stands on the screen: it is a sentence of app/wording, but for
                   its keys, its underlined letters and its dots. `Code` is a key that some sentence names, or a
                   command with a verb that rigband-file has. Every picture and every chapter that is named is there
                   and goes into the program; no word is used that the program does not say; and a chapter that speaks
                   of a verdict says that it is one sign only, and who prevails.
                   docs/manual/de and docs/manual/fr hold the same chapters in the words of those languages: as many
                   headings, points, pictures, names and keys as the English ones, the same links, and every name as
                   resources/languages translates it.
"""
import pathlib
import re
import sys
import xml.etree.ElementTree as ElementTree

ROOT = pathlib.Path(sys.argv[1] if len(sys.argv) > 1 else pathlib.Path(__file__).resolve().parents[2])
MANUAL = ROOT / "docs" / "manual"
CONTENTS = "README.md"
LANGUAGES = ("de", "fr")
# "One sign only", and who prevails, as the sentences of the program say it.
CAUTIONS = {"de": ("nur ein Anzeichen", "berechtigt"), "fr": ("qu’un indice", "habilité")}
# Kinds of thing of which a translated chapter has as many as the English one.
KINDS = {"headings": r"^#+ ", "points": r"^ *(?:- |\d+\. )", "pictures": r"!\[", "links": r"(?<!!)\[[^\]]*\]\(",
         "names": r"\*\*.+?\*\*", "keys": r"`[^`]+`", "commands": r"^ {4}\S"}


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


def chapters(folder):
    return {path.name: path.read_text(encoding="utf-8") for path in sorted(folder.glob("*.md"))}


def translations(language):
    """What each English sentence is called, by whoever says it: {sentence: {translation, ...}}."""
    said = {}
    for message in ElementTree.parse(ROOT / "resources" / "languages" / f"rigband_{language}.ts").iter("message"):
        translation = message.find("translation")
        forms = [form.text or "" for form in translation.iter("numerusform")] or [translation.text or ""]
        said.setdefault(message.findtext("source"), set()).update(forms)
    return said


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


def places(text):
    return re.findall(r"(!?)\[[^\]]*\]\(([^)]+)\)", text)


def faults_of_places(text, folder, resources):
    for kind, place in places(text):
        path = (folder / place).resolve()
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


def faults_of_translation(english, text, language, said):
    """Of one chapter, beside the English one."""
    for kind, pattern in KINDS.items():
        count, wanted = (len(re.findall(pattern, one, re.MULTILINE | re.DOTALL)) for one in (text, english))
        if count != wanted:
            yield f"has {count} {kind}, the English one {wanted}"
    if sorted(pathlib.Path(place).name for _, place in places(text)) != \
            sorted(pathlib.Path(place).name for _, place in places(english)):
        yield "leads to other chapters or pictures than the English one"
    called = {name_of(one) for bold in re.findall(r"\*\*(.+?)\*\*", english, re.DOTALL)
              for one in said["names"].get(name_of(bold), ())}
    yield from faults_of_names(text, called)
    for code in re.findall(r"`([^`]+)`", text):
        if code not in english and not re.search(rf"(?<![\w+]){re.escape(code)}(?!\w)", said["all"]):
            yield f"“{code}” is no key that the program names"
    sign, entitled = CAUTIONS[language]
    flat, flat_english = (" ".join(one.split()) for one in (text, english))
    if "one sign only" in flat_english.lower() and sign not in flat:
        yield f"does not say “{sign}”"
    if re.search("licensed|entitled to decide", flat_english) and entitled not in flat:
        yield f"does not say who is “{entitled}”"


def what_is_said(language):
    """names: what each name of the English screen is called; all: every sentence, for the keys in them."""
    names, every = {}, []
    for sentence, forms in translations(language).items():
        names.setdefault(name_of(sentence), set()).update(forms)
        every.extend(forms)
    told = "\n".join(every)
    for with_key, first, last in re.findall(r"((?:Ctrl|Strg|Alt)\+)(\d) (?:bis|à) \1(\d)", told):
        told += "".join(f"\n{with_key}{digit}" for digit in range(int(first), int(last) + 1))
    return {"names": names, "all": told}


def unused_words(language=""):
    words = (ROOT / "tests" / "house" / f"forbidden_words{language and '_' + language}.txt").read_text(encoding="utf-8")
    return re.compile(r"\b(?:" + "|".join(words.split("\n")[:-1]) + r")\b", re.IGNORECASE)


def resources_of(listing):
    """What app/CMakeLists.txt puts into the program: the names of its lists, in their folders."""
    lists = {name: body.split() for name, body in re.findall(r"set\((manual_\w+)\s+([^)]*)\)", listing)}
    into = {f"docs/manual/{folder}{name}.md" for folder in ("", "de/", "fr/") for name in lists["manual_chapters"]}
    into |= {f"docs/manual/pictures/{name}.png" for name in lists["manual_pictures"]}
    into |= {f"docs/pictures/{name}.png" for name in lists["manual_pictures_of_pages"]}
    return into | {f"docs/manual/{folder}/pictures/{name}.png" for folder in LANGUAGES
                   for name in lists["manual_pictures"] + lists["manual_pictures_of_pages"]}


def faults_of_contents(texts, folder, resources):
    listed = [CONTENTS] + re.findall(r"^- \[.+\]\((.+\.md)\)$", texts[CONTENTS], re.MULTILINE)
    for name in sorted(set(texts) ^ set(listed)):
        yield f"{name} stands only in one of the folder and the contents"
    for name, text in texts.items():
        title = re.match(r"# (.+)\n", text)
        if name != CONTENTS and (not title or f"[{title.group(1)}]({name})" not in texts[CONTENTS]):
            yield f"{name}: its title is not the one of the contents"
        if (folder / name).relative_to(ROOT).as_posix() not in resources:
            yield f"{name} does not go into the program"
        for fault in faults_of_places(text, folder, resources):
            yield f"{name}: {fault}"


def faults_of_english(texts):
    told, keys = sentences()
    names = {name_of(one) for one in told}
    keys = named_keys(told, keys)
    usage = (ROOT / "app" / "wording" / "file_usage.cpp").read_text(encoding="utf-8")
    verbs = set(re.findall(r'\{"([a-z-]+) ', usage))
    for name, text in texts.items():
        for word in unused_words().findall(text):
            yield f"{name}: “{word}” is a word that the program does not say"
        for fault in (*faults_of_names(text, names), *faults_of_code(text, keys, verbs), *faults_of_verdicts(text)):
            yield f"{name}: {fault}"


def faults_of_language(language, english, texts):
    unused, said = unused_words(language), what_is_said(language)
    for name in sorted(set(texts) ^ set(english)):
        yield f"{name} stands only in one of the two manuals"
    for name in sorted(set(texts) & set(english)):
        for word in unused.findall(texts[name]):
            yield f"{name}: “{word}” is a word that the program does not say"
        for fault in faults_of_translation(english[name], texts[name], language, said):
            yield f"{name}: {fault}"


def main():
    resources = resources_of((ROOT / "app" / "CMakeLists.txt").read_text(encoding="utf-8"))
    english = chapters(MANUAL)
    found = [*faults_of_contents(english, MANUAL, resources), *faults_of_english(english)]
    for language in LANGUAGES:
        texts = chapters(MANUAL / language)
        if CONTENTS not in texts:
            found.append(f"{language}: there is no manual in this language")
            continue
        found += [f"{language}/{fault}" for fault in (*faults_of_contents(texts, MANUAL / language, resources),
                                                      *faults_of_language(language, english, texts))]
    print("\n".join(found), end="\n" if found else "")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
