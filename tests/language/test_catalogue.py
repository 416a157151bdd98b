"""The translations on file are whole, and what is installed is what was translated."""

import string
from collections import Counter

import pytest
from PySide6.QtCore import QTranslator

from aligner.language.catalogue import CONTEXT, folder, read
from aligner.language.harvest import every_text

TEXTS = every_text()
FILES = sorted(folder().glob("*.ts"))


def places_in(text):
    return Counter(name for _, name, _, _ in string.Formatter().parse(text) if name is not None)


def test_texts_are_found_in_the_code_and_in_the_data():
    assert {text.place.split("/")[0] for text in TEXTS} == {"aligner", "resources"}


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_every_text_is_translated_and_nothing_else_is(path):
    wanted = {(text.text, text.meaning) for text in TEXTS}
    found = set(read(path))
    assert sorted(wanted - found) == []
    assert sorted(found - wanted) == []


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_a_translation_has_the_same_places_for_values(path):
    known = read(path)
    for text in TEXTS:
        forms = known[text.text, text.meaning]
        assert all(forms), text
        for form in forms:
            left_out = {"count"} if text.one is not None and form is not forms[-1] else set()
            wanted, found = set(places_in(text.text)), set(places_in(form))
            assert found <= wanted, (text.text, form)
            assert wanted - found <= left_out, (text.text, form)


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_what_is_installed_is_what_was_translated(path):
    translator = QTranslator()
    assert translator.load(str(path.with_suffix(".qm")))
    known = read(path)
    for text in TEXTS:
        forms = known[text.text, text.meaning]
        counts = (-1,) if text.one is None else (1, 2)
        said = [translator.translate(CONTEXT, text.text, text.meaning, n) for n in counts]
        assert tuple(said) == forms
