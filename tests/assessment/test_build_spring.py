"""Spring and spacer, against a leg drawn up in heights and against the sag's own change."""

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from aligner.assessment import Level, assess
from aligner.assessment.build import assess_build
from aligner.job.edits_build import with_sag_lengths, with_sag_spacer, with_spring
from aligner.sheet.legs import SagBand, SpringSpecification
from aligner.sheet.quantities import Length
from aligner.units.preferred import Preferred
from aligner.window.build.words import sentence_words
from tests.assessment.build_jobs import job, job_with_gaps, job_with_sag, legs, lengths
from tests.assessment.test_build import WANTED, with_bearing_right, with_ticks

#: 380 + 3 of spring and washers in a room of 480: 97 mm of spacer leave nothing to preload.
STACK = {"free_length": "380 mm", "room": "480 mm", "washers": "3 mm"}


def fitted(made=None, **texts):
    given_lengths = {name: Length.typed(text) for name, text in (STACK | texts).items() if text}
    return with_spring(made or job(), **given_lengths)


def spring_of(made):
    return assess_build(made).spring


def attentions(made):
    return {n.where: n.text for n in assess(made).notices if n.level is Level.ATTENTION}


def test_the_spacer_is_what_the_room_and_the_wanted_preload_leave():
    found = spring_of(fitted(wanted_preload="15 mm"))
    assert found.cut_mm == 112
    assert not found.is_by_sheet


def test_the_sheets_preload_is_taken_where_no_other_is_wanted():
    found = spring_of(fitted())
    assert (found.wanted_mm, found.cut_mm, found.is_by_sheet) == (18, 115, True)


@given(
    free=st.floats(200, 400),
    solid_share=st.floats(0.3, 0.6),
    washers=st.floats(0, 5),
    wanted=st.floats(0, 40),
    room=st.floats(405, 500),
)
def test_a_leg_drawn_in_heights_closes_to_the_same_margin(free, solid_share, washers, wanted, room):
    """Heights above the axle: the seat moves up by the travel, the cap's face stays."""
    seat, travel, solid = 300.0, 150.0, free * solid_share
    face = seat + room
    assume(wanted + room >= free + washers)
    texts = {
        "free_length": f"{free!r} mm",
        "room": f"{room!r} mm",
        "washers": f"{washers!r} mm",
        "wanted_preload": f"{wanted!r} mm",
        "solid_length": f"{solid!r} mm",
    }
    try:
        made = fitted(**texts)
    except ValueError:  # written with an exponent: not as a person types
        assume(False)
    found = spring_of(made)
    spring_top = face - found.cut_mm - washers
    assert free - (spring_top - seat) == pytest.approx(wanted, abs=1e-6)
    assert spring_top - (seat + travel) - solid == pytest.approx(found.margin_mm, abs=1e-6)


def test_each_spacer_at_hand_tells_its_preload():
    sheet = legs().spring.with_changes(spacer=Length.typed("120 mm"))
    made = fitted(job(spring=sheet), old_spacer="110 mm", fitted_spacer="112 mm")
    found = spring_of(made)
    assert (found.old_preload_mm, found.fitted_preload_mm, found.sheet_preload_mm) == (13, 15, 23)


def test_the_margin_is_that_of_the_spacer_that_went_in():
    wanted = fitted(wanted_preload="15 mm", solid_length="200 mm")
    assert spring_of(wanted).margin_mm == 15
    assert spring_of(with_spring(wanted, fitted_spacer=Length.typed("122 mm"))).margin_mm == 5


@pytest.mark.parametrize(
    ("solid", "said"),
    [
        ("209.9 mm", None),
        ("213 mm", "Only 2.0 mm is left at full travel"),
        ("225 mm", "The coils touch 10.0 mm before the leg is right in"),
    ],
    ids=["enough", "tiny", "before full travel"],
)
def test_little_or_nothing_left_before_the_coils_touch_needs_attention(solid, said):
    told = attentions(fitted(wanted_preload="15 mm", solid_length=solid))
    assert (said is None and "build.spring" not in told) or said in told["build.spring"]


@pytest.mark.parametrize(
    ("changes", "where", "said"),
    [
        ({"free_length": "0 mm"}, "free_length", "greater than 0"),
        ({"room": "0 mm"}, "room", "greater than 0"),
        ({"solid_length": "0 mm"}, "solid_length", "greater than 0"),
        ({"solid_length": "390 mm"}, "solid_length", "not shorter than the free length"),
        ({"room": "370 mm", "wanted_preload": "5 mm"}, "wanted_preload", "without a spacer"),
        ({"wanted_preload": "380 mm"}, "wanted_preload", "cannot be shortened by 380 mm"),
        ({"fitted_spacer": "90 mm"}, "fitted_spacer", "7 mm shorter than the room"),
        ({"fitted_spacer": "600 mm"}, "fitted_spacer", "cannot be shortened by 503 mm"),
    ],
    ids=lambda each: each if isinstance(each, str) else "",
)
def test_what_cannot_be_is_refused_at_its_field(changes, where, said):
    assert said in attentions(fitted(**changes))[f"build.spring.{where}"]


def test_a_spring_that_was_loose_as_found_is_told_and_needs_no_attention():
    made = fitted(old_spacer="90 mm")
    notes = [n for n in assess(made).notices if n.where == "build.spring.old_spacer"]
    assert [n.level for n in notes] == [Level.NOTE]
    assert "7 mm shorter than the room" in notes[0].text


def test_what_is_still_needed_is_named_and_no_length_is_said_before():
    bare = job(spring=SpringSpecification(), travel=None)
    found = spring_of(with_spring(bare, room=Length.typed("480 mm")))
    assert found.missing == (
        "free length of the spring",
        "washers and seats (0 for none)",
        "wanted preload",
    )
    assert found.missing_for_margin == ("all coils touching", "travel")
    assert (found.cut_mm, found.margin_mm) == (None, None)
    assert spring_of(bare).missing == ()


def test_no_washers_is_typed_as_nothing():
    assert spring_of(fitted(washers="0 mm", wanted_preload="15 mm")).cut_mm == 115


def out_by_sag(**texts):
    """Rider sag of 60 mm, where 43.5 mm is the middle of the band."""
    return fitted(job_with_sag("200 mm", "135 mm", "145 mm"), **texts)


def test_the_new_spacer_is_the_one_that_was_in_and_the_sags_own_change():
    made = with_sag_spacer(out_by_sag(solid_length="180 mm"), Length.typed("115 mm"))
    found = assess_build(made)
    change = found.sag.rider.change_mm
    assert found.spacer_change.length_mm == pytest.approx(115 + change)
    assert found.spacer_change.margin_mm == pytest.approx(380 - 180 - (18 + change) - 150)


def test_a_spacer_fitted_since_does_not_move_what_the_sag_asked_for():
    made = with_sag_spacer(out_by_sag(), Length.typed("115 mm"))
    asked = assess_build(made).spacer_change
    after = assess_build(with_spring(made, fitted_spacer=Length.typed(f"{asked.length_mm} mm")))
    assert after.spacer_change.length_mm == asked.length_mm
    assert (asked.is_in, after.spacer_change.is_in) == (False, True)


def test_with_the_new_spacer_in_the_sag_is_read_again_and_not_corrected_twice():
    made = job_with_sag("200 mm", "135 mm", "145 mm", job_with_gaps(WANTED, WANTED))
    made = with_bearing_right(with_ticks(made, "leg", "oil", "spring", "cap", "bearing"))
    made = with_sag_spacer(fitted(made), Length.typed("115 mm"))
    new = Length.typed(f"{assess_build(made).spacer_change.length_mm} mm")
    sentences = [
        sentence_words(assess_build(each), Preferred())[0]
        for each in (made, with_spring(made, fitted_spacer=new))
    ]
    assert sentences[0].startswith("Give each leg")
    assert sentences[1] == "Read the sag again."


def test_a_spacer_that_went_in_and_is_neither_is_told_as_not_counted():
    made = with_sag_spacer(out_by_sag(fitted_spacer="140 mm"), Length.typed("115 mm"))
    assert assess_build(made).spacer_change.not_counted_mm == 140
    assert assess_build(out_by_sag(fitted_spacer="140 mm")).spacer_change.not_counted_mm is None


def narrow(low, high):
    """Rider sag of 45 mm, held to a band so narrow that any of it is out."""
    band = SagBand(rider_low=Length.typed(low), rider_high=Length.typed(high))
    steps = job(sag=band, spring=SpringSpecification())
    return fitted(job_with_sag("200 mm", "150 mm", "160 mm", steps))


def test_a_change_smaller_than_a_saw_cuts_is_not_called_made(monkeypatch):
    made = with_sag_spacer(narrow("40 mm", "42 mm"), Length.typed("115 mm"))
    monkeypatch.setattr("aligner.assessment.build_spring.CUT_TO_MM", 10.0)
    same = with_spring(made, fitted_spacer=Length.typed("115 mm"))
    change = assess_build(same).spacer_change
    assert (change.change_mm, change.length_mm, change.is_in) == (4, 119, False)


def test_a_spacer_shortened_to_nothing_is_none():
    change = assess_build(
        with_sag_spacer(narrow("49 mm", "51 mm"), Length.typed("4.6 mm"))
    ).spacer_change
    assert change.length_mm == 0


def test_without_the_spacer_that_was_in_no_new_one_is_guessed():
    change = assess_build(out_by_sag(fitted_spacer="115 mm")).spacer_change
    assert (change.was_mm, change.length_mm) == (None, None)


def test_a_sag_that_is_within_asks_for_no_spacer():
    made = fitted(job_with_sag("200 mm", "150 mm", "160 mm"))
    assert assess_build(with_sag_spacer(made, Length.typed("115 mm"))).spacer_change is None


def test_the_sag_counts_with_the_preload_of_the_spacer_that_was_in():
    """28 mm by the stack, 18 mm by the sheet; the air is counted, and the rate changes at 85."""

    def read(preload):
        sheets = {"preload": Length.typed(preload), "rate_changes_at": Length.typed("85 mm")}
        air = job_with_gaps(("221",), ("221",), spring=legs().spring.with_changes(**sheets))
        return fitted(job_with_sag("200 mm", "135 mm", "145 mm", air))

    def change(made):
        return assess_build(made).sag.rider.change_mm

    by_stack = change(with_sag_spacer(read("18 mm"), Length.typed("125 mm")))
    assert by_stack == pytest.approx(change(read("28 mm")))
    assert by_stack != pytest.approx(change(read("18 mm")))


def test_a_new_spacer_that_lets_the_coils_touch_needs_attention():
    made = with_sag_spacer(out_by_sag(solid_length="210 mm"), Length.typed("115 mm"))
    assert "The coils touch" in attentions(made)["build.sag.spacer"]


@pytest.mark.parametrize(
    ("spacer", "said"),
    [("10 mm", "too short to be cut by"), ("100 mm", "New spacer: spring, spacer and washers")],
    ids=["shorter than the cut", "loose afterwards"],
)
def test_less_preload_than_can_be_taken_away_is_refused(spacer, said):
    band = SagBand(rider_low=Length.typed("60 mm"), rider_high=Length.typed("70 mm"))
    made = job_with_sag("200 mm", "150 mm", "160 mm", job(sag=band, spring=SpringSpecification()))
    made = with_sag_spacer(fitted(made), Length.typed(spacer))
    assert said in attentions(made)["build.sag.spacer"]


def test_the_spacer_that_went_in_and_its_preload_are_rows_of_the_card():
    rows = {row.name: row.words for row in assess_build(fitted(fitted_spacer="112 mm")).settings}
    assert rows["spacer"] == "112.0 mm"
    assert rows["preload"] == "15.0 mm"
    assert "spacer" not in {row.name for row in assess_build(fitted()).settings}


@pytest.mark.parametrize("changes", [{"free_length": ""}, {}], ids=["not known", "loose"])
def test_the_sheets_preload_is_not_recorded_for_a_spacer_that_may_give_another(changes):
    made = fitted(**changes, fitted_spacer="90 mm")
    assert [r.name for r in assess_build(made).settings if r.name in ("spacer", "preload")] == [
        "spacer"
    ]


def test_what_is_wrong_with_the_spacer_is_said_once_for_both_loads():
    ends = {"static_low": "20", "static_high": "24", "rider_low": "40", "rider_high": "47"}
    band = SagBand(**{name: Length.typed(f"{mm} mm") for name, mm in ends.items()})
    made = fitted(job_with_sag("200 mm", "135 mm", "145 mm", job(sag=band)))
    made = with_sag_spacer(made, Length.typed("90 mm"))
    for which, text in (("static_down", "195 mm"), ("static_up", "199 mm")):
        made = with_sag_lengths(made, which, lengths(text, text, text))
    told = [n for n in assess_build(made).sag.notices if n.where == "build.sag.spacer"]
    assert len(told) == 1


def test_a_length_alone_begins_the_stage():
    assert assess_build(with_spring(job(), room=Length.typed("480 mm"))).is_begun
    assert with_sag_lengths(job(), "extended", lengths("200")).build.sag.spacer is None
