"""What the manual calls a control is what the program calls it, in every language.

A name in the manual stands in **bold**, or in quotation marks where a reading or a file is cited.
"""

import re
import string

import pytest

from aligner.data_files import resource
from aligner.language.catalogue import folder, read
from aligner.language.harvest import every_text

MANUAL = resource("manual")
LANGUAGES = ["en", *(path.stem for path in sorted(folder().glob("*.ts")))]
#: Pages that name no controls: one explains words, the other a file for other programs.
LEFT_OUT = {"glossary", "figures"}
#: Cited, and no control: what a person writes down, what a wrench's maker prints, and the
#: words before a warning.
CITED = {
    "en": {"measured", "not under 20 % of the top"},
    "de": {"gemessen", "nicht unter 20 % vom Höchstwert", "Achtung"},
}
#: Names of files and folders are the same in every language, but for what a person calls them.
FILE = re.compile(r"Aligner|photographs|NAME.*\.json(\.previous)?")


def texts_in(language):
    """Every text of the program in a language."""
    if language == "en":
        found = {text for each in every_text() for text in (each.text, each.one) if text}
    else:
        forms = read(folder() / f"{language}.ts").values()
        found = {text for each in forms for text in each}
    return found


def plain(text):
    """A text as it is called: without the mark of its letter, its key and what ends it.

    The first letter may be large or small, by where the name stands in its sentence.
    """
    text = re.sub(r"&(?=\w)", "", text.partition("   ")[0]).rstrip(".:")
    return text[:1].lower() + text[1:]


def names_in(language):
    """Every name in the manual, with its page."""
    pages = MANUAL if language == "en" else MANUAL / language
    for path in sorted(pages.glob("*.md")):
        if path.stem not in LEFT_OUT:
            text = path.read_text(encoding="utf-8")
            quoted = r"„([^“]+)“" if language == "de" else r'"([^"\n]+)"'
            for name in (*re.findall(r"\*\*(.+?)\*\*", text), *re.findall(quoted, text)):
                yield path.stem, name


def with_values(texts):
    """What finds a text with its values filled in: "{length}, reading {number} of {wanted}"."""
    for text in texts:
        parts = list(string.Formatter().parse(text))
        if any(field is not None for _, field, _, _ in parts):
            fixed = [re.escape(words) for words, _, _, _ in parts]
            if len("".join(fixed)) > 8:
                yield ".+".join(fixed) if parts[-1][1] is None else ".+".join(fixed) + ".+"


def pieces(texts):
    """The parts of the sentences with values: "not inside" of "Delivers {span}, not inside..."."""
    for text in texts:
        if "{" in text:
            yield from (piece.strip() for piece in re.split(r"\{\w+\}|[,;:.]", text))


def explained(language):
    """The words of the glossary."""
    path = MANUAL / ("" if language == "en" else language) / "glossary.md"
    return re.findall(r"^\*\*(.+?)\.?\*\*", path.read_text(encoding="utf-8"), re.MULTILINE)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_name_in_the_manual_is_one_of_the_programs(language):
    texts = texts_in(language)
    known = {plain(text) for text in (*texts, *pieces(texts), *explained(language))}
    filled = re.compile("|".join(with_values(texts)), re.IGNORECASE)
    unknown = [
        (page, name)
        for page, name in names_in(language)
        if plain(name) not in known
        and name not in CITED.get(language, ())
        and not FILE.fullmatch(name)
        and not filled.fullmatch(name)
    ]
    assert unknown == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_letter_given_for_a_button_is_the_one_marked_on_it(language):
    marked = {
        (plain(text), letter.upper())
        for text in texts_in(language)
        for letter in re.findall(r"&(\w)", text)
    }
    pages = MANUAL if language == "en" else MANUAL / language
    given = []
    for path in pages.glob("*.md"):
        text = path.read_text(encoding="utf-8")
        given += re.findall(r"\*\*(.+?)\*\* \(Alt\+(\w)\)", text)
        for keys, names in re.findall(r"^\| ((?:Alt\+\w, )+Alt\+\w) \| (.+?) \|$", text, re.M):
            letters = re.findall(r"Alt\+(\w)", keys)
            given += zip(names.split(", "), letters, strict=True)
    assert len(given) >= 9
    assert [each for each in given if (plain(each[0]), each[1]) not in marked] == []
