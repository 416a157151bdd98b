"""A variant keeps what fits the other fork, says where it is from, and names what it dropped."""

from aligner.assessment.sheet_changes import refusal_of
from aligner.sheet import Fastener, OrderRule, Side
from aligner.sheet.legs import Legs
from aligner.sheet.patterns import choices_like, composed
from aligner.sheet.printed_torque import printed_torque
from aligner.sheet.variant import variant_of


def _sheet():
    """An air-assisted bike with one torque, one fastener no pattern knows, and two rules."""
    sheet = composed({"fork": "air_assisted", "lower_clamps": "two"})
    torque = printed_torque("23 N·m ± 10 %", "invented p. 3")
    fasteners = [
        each.with_changes(torque=torque)
        if each.kind in ("lower_clamp", "air_manifold_fitting")
        else each
        for each in sheet.fasteners
    ]
    lamp = Fastener(name="lamp bolts", kind="lamp_bracket", bolts=2)
    rules = (
        *sheet.rules,
        OrderRule(first="lamp bolts", then="fork_cap", because="An invented reason."),
        OrderRule(first="left air fitting", then="lamp bolts", because="An invented reason."),
    )
    return sheet.with_changes(name="Year one", fasteners=(*fasteners, lamp), rules=rules)


def _variant(**choices):
    sheet = _sheet()
    return variant_of(sheet, "Year two", {**choices_like(sheet), **choices})


def test_what_fits_is_kept_and_says_from_which_sheet_it_is():
    variant = _variant(fork="anti_dive")
    clamp = next(each for each in variant.sheet.fasteners if each.name == "left lower clamp")
    assert clamp.torque.low_nm == 23 * 0.9
    assert clamp.torque.source == "invented p. 3 (from the sheet of Year one)"
    assert variant.sheet.name == "Year two"


def test_what_does_not_fit_is_dropped_by_name_with_the_rule_that_named_it():
    variant = _variant(fork="anti_dive")
    assert variant.dropped == (
        "left air fitting",
        "right air fitting",
        "the rule of left air fitting and lamp bolts",
    )
    assert variant.added == ("left anti-dive unit bolts", "right anti-dive unit bolts")
    assert "Dropped: left air fitting" in variant.words
    assert "New: left anti-dive" in variant.words


def test_a_fastener_no_pattern_speaks_of_and_its_rules_stay():
    sheet = _variant(fork="damper_rod").sheet
    assert "lamp bolts" in {each.name for each in sheet.fasteners}
    assert "lamp bolts" in {rule.first for rule in sheet.rules}


def test_the_rules_of_the_old_pattern_give_way_to_those_of_the_new():
    sheet = _variant(fork="anti_dive").sheet
    assert "air_manifold_fitting" not in {rule.first for rule in sheet.rules}
    assert "anti_dive_unit_bolt" in {rule.first for rule in sheet.rules}
    assert refusal_of(sheet) is None


def test_another_number_of_bolts_keeps_the_torque():
    sheet = _variant(lower_clamps="three").sheet
    clamps = [each for each in sheet.fasteners if each.kind == "lower_clamp"]
    assert [(each.side, each.bolts) for each in clamps] == [(Side.LEFT, 3), (Side.RIGHT, 3)]
    assert all(each.torque is not None for each in clamps)


def test_the_same_choices_under_the_same_name_change_nothing():
    sheet = _sheet()
    variant = variant_of(sheet, sheet.name, choices_like(sheet))
    assert variant.dropped == variant.added == ()
    assert set(variant.sheet.rules) == set(sheet.rules)
    assert variant.sheet.fasteners == sheet.fasteners
    assert variant.words == "Nothing was dropped."


def test_oil_springs_and_wear_limits_go_with_the_fork_and_the_bearing_stays():
    legs = Legs.model_validate({"travel": "150 mm", "bearing": {"torque_low": "1 N·m"}})
    sources = {"legs.travel": "p. 1", "legs.bearing.torque_low": "p. 2", "steering.rake": "p. 3"}
    sheet = _sheet().with_changes(legs=legs, sources=sources)
    choices = choices_like(sheet)
    same = variant_of(sheet, "Year two", {**choices, "lower_clamps": "three"})
    assert (same.sheet.legs, same.sheet.sources) == (legs, sources)
    other = variant_of(sheet, "Year two", {**choices, "fork": "cartridge"})
    assert other.sheet.legs == Legs(bearing=legs.bearing)
    assert other.sheet.sources.keys() == {"legs.bearing.torque_low", "steering.rake"}
    assert "oil, springs and travel" in other.dropped
