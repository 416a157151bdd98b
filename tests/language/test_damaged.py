"""Translations that are missing or damaged: English is said in their place, and nothing fails."""

import pytest

from aligner.data_files import resource
from aligner.language import decimal_sign, say, say_count, speak, spoken
from aligner.language.every_language import _translations, is_called
from aligner.window import language as window_language
from aligner.window.language import speak_language


@pytest.fixture(autouse=True)
def _english_after():
    yield
    speak_language("en")
    _translations.cache_clear()


def files_in(folder, monkeypatch):
    """Have translations looked for in another folder, which may be missing."""

    def found(*parts):
        path = folder.joinpath(*parts)
        if not path.exists():
            raise FileNotFoundError(path.name)
        return path

    monkeypatch.setattr(window_language, "resource", found)
    monkeypatch.setattr("aligner.language.every_language.resource", found)
    _translations.cache_clear()


WHOLE = resource("languages", "de.qm").read_bytes()


@pytest.mark.parametrize("held", [None, b"", b"no translation", WHOLE[: len(WHOLE) // 2]])
def test_english_is_spoken_with_its_decimal_point_where_a_language_cannot_be_read(
    held, tmp_path, monkeypatch, qapp
):
    if held is not None:
        (tmp_path / "languages").mkdir()
        (tmp_path / "languages" / "de.qm").write_bytes(held)
    files_in(tmp_path, monkeypatch)
    assert not speak_language("de")
    assert (spoken(), decimal_sign()) == ("en", ".")


def test_what_was_spoken_before_ends_where_the_next_language_cannot_be_read(
    tmp_path, monkeypatch, qapp
):
    assert speak_language("de")
    assert say("Preferences.") == "Einstellungen."
    files_in(tmp_path, monkeypatch)
    assert speak_language("xx")
    assert (spoken(), decimal_sign(), say("Preferences.")) == ("en", ".", "Preferences.")


@pytest.mark.parametrize("damaged", ["{si<e} rauf", "{size rauf", "rauf}", "{0}", "{size.up}"])
def test_a_text_whose_place_for_a_value_is_damaged_is_said_in_english(damaged):
    speak("de", lambda *_: damaged, ",")
    assert say("Push it up {size}.", size="1,3 mm") == "Push it up 1,3 mm."
    assert say_count("{count} step", "{count} steps", 1) == "1 step"
    speak("en")


@pytest.mark.parametrize("held", [None, "<TS><context>", ""])
def test_names_are_compared_without_translations_that_cannot_be_read(held, tmp_path, monkeypatch):
    assert is_called("Messschieber mit Nonius", "vernier caliper")
    if held is not None:
        (tmp_path / "languages").mkdir()
        (tmp_path / "languages" / "de.ts").write_text(held)
    files_in(tmp_path, monkeypatch)
    assert not is_called("Messschieber mit Nonius", "vernier caliper")
    assert is_called("vernier caliper", "vernier caliper")
