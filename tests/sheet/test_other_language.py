"""A sheet in another language: names are written in it, and nothing depends on them later."""

import pytest

from aligner.job import Job
from aligner.job.edits_sheet import with_fastener_on_other_side
from aligner.sheet import Side
from aligner.sheet.patterns import choices_like, composed
from aligner.sheet.printed_torque import printed_torque, torque_text
from aligner.sheet.quantities import Length
from aligner.sheet.variant import variant_of
from aligner.units import ANGLE, LENGTH, UnreadableQuantity, read_quantity
from aligner.window.bike.fastener_reads import default_name, field_text, read_field

GERMAN = {
    "left": "links",
    "right": "rechts",
    "left:right": "links:rechts",
    "{low} to {high}": "{low} bis {high}",
    "{side} lower clamp": "untere Klemmung {side}",
    "lower clamp": "untere Klemmung",
    "left {fastener}": "{fastener} links",
    "common practice, no source": "allgemeine Praxis, ohne Quelle",
    "a length": "eine Länge",
    "{kind} here is zero or more": "{kind} ist hier null oder mehr",
}


def _clamps(sheet):
    return [each for each in sheet.fasteners if each.kind == "lower_clamp"]


@pytest.mark.usefixtures("german")
def test_a_pattern_writes_its_names_and_sources_in_the_language_spoken():
    sheet = composed({"fork": "cartridge"})
    names = [(each.name, each.side) for each in _clamps(sheet)]
    assert names == [("untere Klemmung links", Side.LEFT), ("untere Klemmung rechts", Side.RIGHT)]
    assert {rule.source for rule in sheet.rules} == {"allgemeine Praxis, ohne Quelle"}
    assert default_name("lower_clamp", Side.LEFT) == "untere Klemmung links"


def test_a_sheet_begun_in_one_language_goes_on_in_another(request):
    english = composed({"fork": "cartridge", "lower_clamps": "two"})
    torque = printed_torque("23 N·m", "invented p. 3")
    english = english.with_changes(
        fasteners=tuple(each.with_changes(torque=torque) for each in english.fasteners)
    )
    request.getfixturevalue("german")
    choices = choices_like(english)
    variant = variant_of(english, "Year two", choices)
    assert choices["fork"] == "cartridge"
    assert choices["lower_clamps"] == "two"
    assert variant.dropped == variant.added == ()
    assert [each.name for each in variant.sheet.fasteners] == [
        each.name for each in english.fasteners
    ]


@pytest.mark.usefixtures("german")
def test_a_copy_goes_to_the_other_side_by_the_words_of_the_language():
    sheet = composed({})
    alone = sheet.with_changes(fasteners=tuple(_clamps(sheet)[:1]), rules=())
    copied = with_fastener_on_other_side(Job().with_changes(sheet=alone), 0)
    assert copied.sheet.fasteners[1].name == "untere Klemmung rechts"


@pytest.mark.usefixtures("german")
@pytest.mark.parametrize(
    ("typed", "written"),
    [
        ("1,5 bis 2 kgf·m", "1,5 bis 2 kgf·m"),
        ("1.5 to 2 kgf·m", "1,5 bis 2 kgf·m"),
        ("22,5 N·m ± 10 Prozent", "22,5 N·m ± 10 %"),
    ],
)
def test_a_torque_is_read_back_from_what_is_written_in_the_language(typed, written):
    torque = printed_torque(typed)
    assert torque_text(torque) == written
    assert printed_torque(torque_text(torque)) == torque


@pytest.mark.usefixtures("german")
def test_a_comma_between_two_digits_parts_no_passes():
    sheet = composed({"lower_clamps": "two"})
    place = sheet.fasteners.index(_clamps(sheet)[0])
    passes = read_field(sheet, place, "passes", "62,5 %, 100 %")
    assert [each.value for each in passes] == [62.5, 100.0]
    assert field_text(sheet.fasteners[place].with_changes(passes=passes), "passes") == (
        "62,5 %, 100 %"
    )


def test_passes_are_parted_by_commas_where_a_point_is_the_decimal_sign():
    sheet = composed({"lower_clamps": "two"})
    place = sheet.fasteners.index(_clamps(sheet)[0])
    assert [each.value for each in read_field(sheet, place, "passes", "50,100")] == [50.0, 100.0]


@pytest.mark.usefixtures("german")
def test_a_quantity_is_kept_with_a_point_and_said_with_a_comma():
    length = Length.typed("4,25 mm")
    assert (length.text, length.said) == ("4.25 mm", "4,25 mm")


@pytest.mark.usefixtures("german")
def test_a_refusal_shows_its_example_in_the_language():
    with pytest.raises(UnreadableQuantity, match="write it as “4,2 mm”"):
        read_quantity("abc", LENGTH)
    with pytest.raises(UnreadableQuantity, match="-4,5 mm is negative; eine Länge ist hier null"):
        read_quantity("-4,5 mm", LENGTH)


@pytest.mark.parametrize(
    ("typed", "dimension", "kept"),
    [
        ("1 Zoll", LENGTH, "1 in"),
        ("45 Grad", ANGLE, "45 deg"),
        ("1/8 Umdrehung", ANGLE, "1/8 turn"),
    ],
)
def test_units_are_read_by_their_german_names_too(typed, dimension, kept):
    assert read_quantity(typed, dimension).text == kept
