"""Saying texts in another language: whole sentences, numbers of things, lists, decimal signs."""

import pytest

from aligner.language import listed, say, say_count, spoken, with_decimal_sign, written
from aligner.units.dimension import LENGTH
from aligner.units.shown import rounded, shown
from aligner.units.typed import UnreadableQuantity, read_quantity

GERMAN = {
    ("Push it up {size}.", "", -1): "{size} hochschieben.",
    ("open", "of a step", -1): "offen",
    ("open", "a file", -1): "öffnen",
    ("{count} steps left", "", 1): "noch {count} Schritt",
    ("{count} steps left", "", 3): "noch {count} Schritte",
    ("{a} and {b}", "", -1): "{a} und {b}",
}


@pytest.mark.usefixtures("german")
def test_a_sentence_is_said_in_the_other_language_with_its_values():
    assert spoken() == f"de-{__name__}"
    assert say("Push it up {size}.", size="1,3 mm") == "1,3 mm hochschieben."


@pytest.mark.usefixtures("german")
def test_the_same_words_are_told_apart_by_their_meaning():
    assert say("open", meaning="of a step") == "offen"
    assert say("open", meaning="a file") == "öffnen"


@pytest.mark.usefixtures("german")
def test_a_text_without_a_translation_stays_english():
    assert say("Nothing left to correct.") == "Nothing left to correct."


@pytest.mark.parametrize(
    ("count", "english", "other"),
    [(1, "1 step left", "noch 1 Schritt"), (3, "3 steps left", "noch 3 Schritte")],
)
def test_a_number_of_things_takes_its_form(count, english, other, request):
    assert say_count("{count} step left", "{count} steps left", count) == english
    request.getfixturevalue("german")
    assert say_count("{count} step left", "{count} steps left", count) == other


def test_things_are_listed_with_an_and_before_the_last(request):
    assert [listed(items) for items in ([], ["a"], ["a", "b"], ["a", "b", "c"])] == [
        "", "a", "a and b", "a, b and c",
    ]  # fmt: skip
    request.getfixturevalue("german")
    assert listed(["a", "b", "c"]) == "a, b und c"


def test_numbers_are_written_with_the_decimals_they_have():
    assert [written(number) for number in (0.4, 90.0, 1 / 3)] == ["0.4", "90", "0.333333"]
    assert written(1 / 3, "") == str(1 / 3)


@pytest.mark.usefixtures("german")
def test_numbers_are_written_with_the_decimal_sign_of_the_language():
    assert rounded(-1.25, 2) == "−1,25"
    assert shown(4.25 * 25.4, LENGTH, "in") == "4,250 in"
    assert [written(0.4), written(90.0), written(0.156, ".2g")] == ["0,4", "90", "0,16"]
    assert with_decimal_sign("4.25 mm") == "4,25 mm"


@pytest.mark.parametrize(
    ("language", "typed", "either"),
    [("en", "1,450", "1.450"), ("de", "1.450", "1,450")],
)
def test_a_sign_that_may_part_thousands_is_asked_about(language, typed, either, request):
    if language == "de":
        request.getfixturevalue("german")
    with pytest.raises(UnreadableQuantity, match=f"as {either} or as 1450"):
        read_quantity(typed, LENGTH, unit_if_bare="mm")
    assert read_quantity(either, LENGTH, unit_if_bare="mm").text == "1.450 mm"


@pytest.mark.usefixtures("german")
def test_a_document_has_its_decimal_point_whatever_is_spoken():
    assert read_quantity("1.450 mm", LENGTH, decimal=".").value == 1.45


@pytest.mark.usefixtures("german")
@pytest.mark.parametrize("mm", [4.25, 36.83, -0.5, 1450.0])
@pytest.mark.parametrize("unit", ["mm", "in"])
def test_what_is_shown_can_be_typed_again(mm, unit):
    written = shown(mm, LENGTH, unit)
    assert shown(read_quantity(written, LENGTH, signed=True).value, LENGTH, unit) == written
