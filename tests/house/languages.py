#!/usr/bin/env python3
"""Compares the translations in resources/languages with the sentences of the source.

languages.py LUPDATE    tells every message that has no translation, that lost or gained a placeholder or an access
                        key, that changed a key of the keyboard, that uses a word the program does not use, or that
                        calls a thing otherwise than tests/house/glossary.txt; and every text of app/wording that lupdate
                        does not see, such as one in a macro of its own, or sees for a class that asks for none.
                        Fails where there is one.
"""
import collections
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ElementTree

ROOT = pathlib.Path(__file__).resolve().parents[2]
LANGUAGES = ("de", "fr")
PLACEHOLDER = re.compile(r"%(?:L?\d+|n)")
STRING = r'"(?:[^"\\\n]|\\.)*"'
COMMENT_OR_TEXT = re.compile(r"//[^\n]*|/\*.*?\*/|'(?:[^'\\\n]|\\.)+'|(?P<text>" + STRING + r"(?:\s*" + STRING + ")*)",
                             re.DOTALL)
ESCAPED = {r"\n": "\n", r"\t": "\t", r"\"": '"', r"\\": "\\"}
# Texts that are the same in every language: how a command of rigband-file is typed.
IN_NO_LANGUAGE = re.compile(r"[a-z-]+ (?:--|[A-Z]{3})|--help ")


def messages(path):
    """(class of words, English, note, [translations], whether finished) of each message of a .ts file."""
    for context in ElementTree.parse(path).getroot().iter("context"):
        for message in context.iter("message"):
            translation = message.find("translation")
            if translation.get("type") in ("obsolete", "vanished"):
                continue
            forms = [form.text or "" for form in translation.iter("numerusform")] or [translation.text or ""]
            yield (context.find("name").text, message.find("source").text, message.findtext("comment") or "", forms,
                   translation.get("type") != "unfinished")


def lines_of(name):
    path = ROOT / "tests" / "house" / name
    return [line for line in path.read_text(encoding="utf-8").splitlines() if line and not line.startswith("#")]


def access_keys(text):
    return len(re.findall(r"&(?=[^&\s])", text.replace("&&", "")))


def faults_of(source, note, forms, finished, unused, glossary):
    if not finished or not all(forms):
        yield "is not translated"
        return
    for form in forms:
        if collections.Counter(PLACEHOLDER.findall(form)) != collections.Counter(PLACEHOLDER.findall(source)):
            yield f"has other placeholders: {form}"
        if access_keys(form) != access_keys(source):
            yield f"has another number of access keys: {form}"
        if note.startswith("key") and form != source:
            yield f"is another key of the keyboard: {form}"
        word = unused.search(form)
        if word:
            yield f"says what the program does not say, “{word.group(0)}”: {form}"
        for english, theirs in glossary:
            if english.search(source.replace("&", "")) and not theirs.search(form.replace("&", "")):
                yield f"has nothing of “{theirs.pattern}”: {form}"


def texts_of(path):
    """Each string of a source file as the program has it, in several pieces or in one."""
    for found in COMMENT_OR_TEXT.finditer(path.read_text(encoding="utf-8")):
        if found["text"]:
            whole = "".join(piece[1:-1] for piece in re.findall(STRING, found["text"]))
            yield re.sub(r"\\.", lambda escaped: ESCAPED.get(escaped[0], escaped[0]), whole)


def unseen(seen, contexts):
    """(where, what is wrong) of each text that lupdate does not see, or for another class than asks for it."""
    declared = set()
    for path in sorted((ROOT / "app").rglob("*.h")):
        declared.update(re.findall(r"Q_DECLARE_TR_FUNCTIONS\((\w+)\)", path.read_text(encoding="utf-8")))
    for context in sorted(contexts - declared):
        yield context, "is no class that asks for translations"
    for path in sorted((ROOT / "app" / "wording").glob("*.cpp")):
        for text in texts_of(path):
            if " " in text.strip() and text not in seen and not IN_NO_LANGUAGE.match(text):
                yield path.name, f"lupdate does not see “{text}”"


def renewed(lupdate, language, folder):
    """The .ts file as it would be with the sentences of the source today."""
    copy = folder / f"rigband_{language}.ts"
    shutil.copy(ROOT / "resources" / "languages" / copy.name, copy)
    subprocess.run([lupdate, "-silent", "-no-obsolete", "-locations", "none", "app", "core", "-ts", copy], cwd=ROOT,
                   check=True, stderr=subprocess.DEVNULL)
    return copy


def main():
    found = 0
    with tempfile.TemporaryDirectory() as folder:
        for place, language in enumerate(LANGUAGES):
            unused = re.compile(r"\b(?:" + "|".join(map(re.escape, lines_of(f"forbidden_words_{language}.txt"))) +
                                r")\b", re.IGNORECASE)
            glossary = [(re.compile(row[0], re.IGNORECASE), re.compile(row[place + 1], re.IGNORECASE))
                        for row in (line.split(" | ") for line in lines_of("glossary.txt"))]
            told = list(messages(renewed(sys.argv[1], language, pathlib.Path(folder))))
            for words, source, note, forms, finished in told:
                for fault in faults_of(source, note, forms, finished, unused, glossary):
                    found += 1
                    print(f"{language}, {words}: “{source}” {fault}")
        # Notes for translators stand in a .ts file as well.
        seen = {text for _, source, note, _, _ in told for text in (source, note)}
        for where, fault in unseen(seen, {words for words, *_ in told}):
            found += 1
            print(f"{where}: {fault}")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
