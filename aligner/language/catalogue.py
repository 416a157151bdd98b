"""The translations on file: a .ts file for each language, in the form of Qt's own tools.

`python -m aligner.language.catalogue` brings every file up to date with the code and the data,
keeping what is translated, leaving out what is no longer said, and saying what is missing.
`--release` then makes the .qm files that the program reads. The trap: a text that was changed
is a new one; the old translation would say something else, so it is dropped and not guessed.
"""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path
from xml.etree import ElementTree

from aligner.data_files import resource
from aligner.language.harvest import Text, every_text

#: The one context of all texts; what English says twice is told apart by its meaning.
CONTEXT = "aligner"

#: A translation: one text, or one for each form of number the language has.
Translation = tuple[str, ...]


def folder() -> Path:
    """Where the translations are."""
    return resource("languages")


def read(path: Path) -> dict[tuple[str, str], Translation]:
    """The finished translations of a .ts file, by text and meaning."""
    found: dict[tuple[str, str], Translation] = {}
    for message in ElementTree.parse(path).iter("message"):
        kept = message.find("translation")
        if kept is None or kept.get("type") == "unfinished":
            continue
        forms = [form.text or "" for form in kept.findall("numerusform")] or [kept.text or ""]
        key = (message.findtext("source") or "", message.findtext("comment") or "")
        found[key] = tuple(forms)
    return found


def write(
    path: Path, language: str, texts: list[Text], known: dict[tuple[str, str], Translation]
) -> list[Text]:
    """Write a .ts file with every text, and give those that have no translation."""
    top = ElementTree.Element("TS", version="2.1", language=language, sourcelanguage="en")
    context = ElementTree.SubElement(top, "context")
    ElementTree.SubElement(context, "name").text = CONTEXT
    missing = []
    for text in texts:
        forms = known.get((text.text, text.meaning))
        message = ElementTree.SubElement(context, "message")
        ElementTree.SubElement(message, "location", filename=text.place)
        ElementTree.SubElement(message, "source").text = text.text
        if text.meaning:
            ElementTree.SubElement(message, "comment").text = text.meaning
        if text.one is not None:
            message.set("numerus", "yes")
            ElementTree.SubElement(message, "extracomment").text = text.one
        kept = ElementTree.SubElement(message, "translation")
        if forms is None or (text.one is not None) != (len(forms) > 1):
            kept.set("type", "unfinished")
            missing.append(text)
        elif text.one is None:
            kept.text = forms[0]
        else:
            for form in forms:
                ElementTree.SubElement(kept, "numerusform").text = form
    ElementTree.indent(top, space="  ")
    body = ElementTree.tostring(top, encoding="unicode")
    path.write_text(
        f'<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n{body}\n', encoding="utf-8"
    )
    return missing


def _up_to_date(path: Path) -> list[Text]:
    return write(path, path.stem, every_text(), read(path))


def _release(path: Path) -> None:
    compiled = path.with_suffix(".qm")
    subprocess.run(
        ["pyside6-lrelease", "-silent", str(path), "-qm", str(compiled)],
        check=True,
    )


if __name__ == "__main__":
    for each in sorted(folder().glob("*.ts")):
        for lacking in _up_to_date(each):
            sys.stdout.write(f"{each.name}: no translation: {lacking.place}: {lacking.text}\n")
        if "--release" in sys.argv[1:]:
            _release(each)
