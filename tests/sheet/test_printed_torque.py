"""What manuals print of a torque is read from one box, and written back the same."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aligner.sheet import AlsoPrinted, TorqueSpecification
from aligner.sheet.printed_torque import printed_torque, torque_text
from aligner.sheet.quantities import Ratio, Torque
from aligner.units import TORQUE, UnreadableQuantity


@pytest.mark.parametrize(
    ("typed", "words", "low_nm", "target_nm", "high_nm"),
    [
        pytest.param("23 N·m", "23 N·m", 23, 23, 23, id="a nominal alone"),
        pytest.param("23Nm", "23 N·m", 23, 23, 23, id="without the dot"),
        pytest.param("21-25 N·m", "21 to 25 N·m", 21, 23, 25, id="a range with a hyphen"),
        pytest.param("21 – 25 N·m", "21 to 25 N·m", 21, 23, 25, id="a range with a dash"),
        pytest.param("21 to 25 Nm", "21 to 25 N·m", 21, 23, 25, id="a range in words"),
        pytest.param("21 Nm - 25 Nm", "21 to 25 N·m", 21, 23, 25, id="the unit at both ends"),
        pytest.param("23 ± 2 N·m", "23 N·m ± 2 N·m", 21, 23, 25, id="the unit once, at the end"),
        pytest.param("23 N·m ± 2", "23 N·m ± 2 N·m", 21, 23, 25, id="the unit once, before"),
        pytest.param("23 +/- 2 Nm", "23 N·m ± 2 N·m", 21, 23, 25, id="plus or minus typed"),
        pytest.param("20 N·m ± 10 %", "20 N·m ± 10 %", 18, 20, 22, id="per cent"),
        pytest.param("2,1–2,5 Nm", "2.1 to 2.5 N·m", 2.1, 2.3, 2.5, id="decimal commas"),
        pytest.param("1 Nm - 2 N m", "1 to 2 N·m", 1, 1.5, 2, id="a space in the unit"),
    ],
)
def test_a_torque_is_read_as_printed(typed, words, low_nm, target_nm, high_nm):
    found = printed_torque(typed)
    assert torque_text(found) == words
    assert (found.low_nm, found.target_nm, found.high_nm) == pytest.approx(
        (low_nm, target_nm, high_nm)
    )


@pytest.mark.parametrize(
    ("typed", "words"),
    [
        pytest.param("17 lbf·ft (23 N·m)", "17 lbf·ft (23 N·m)", id="in brackets"),
        pytest.param("23 N·m [17 ft-lb]", "23 N·m (17 lbf·ft)", id="in square brackets"),
        pytest.param("23 N·m / 17 lb ft", "23 N·m (17 lbf·ft)", id="behind a stroke"),
        pytest.param("21-25 Nm (15-18 lb-ft)", "21 to 25 N·m (15 to 18 lbf·ft)", id="two ranges"),
    ],
)
def test_a_second_printed_unit_is_kept_beside_the_first(typed, words):
    found = printed_torque(typed)
    assert found.also_printed is not None
    assert torque_text(found) == words


def test_the_first_printed_unit_is_the_one_that_counts():
    # 1 lbf·ft = 1.355 817 948 N·m (0.3048 m x 4.448 221 615 260 5 N, both exact by definition)
    found = printed_torque("17 lbf·ft (23 N·m)")
    assert found.target_nm == pytest.approx(17 * 0.3048 * 4.4482216152605, rel=1e-12)


def test_two_and_a_half_is_no_range():
    # 1 kgf = 9.806 65 N, exact by definition
    assert printed_torque("2-1/2 kgf·m").target_nm == pytest.approx(2.5 * 9.80665)


@pytest.mark.parametrize(
    ("typed", "understood"),
    [
        pytest.param("", "no torque", id="nothing"),
        pytest.param("23", "has no unit", id="no unit"),
        pytest.param("21-25", "has no unit", id="a range without a unit"),
        pytest.param("23 ± 10 %", "has no unit", id="only the tolerance has one"),
        pytest.param("25-21 N·m", "runs from 25 N·m down to 21 N·m", id="the wrong way round"),
        pytest.param("17 lb", "not clear", id="pounds alone"),
        pytest.param("23 mm", "is a length", id="a length"),
        pytest.param("23 N·m +2 -1", "uneven", id="an uneven tolerance"),
        pytest.param("23 N·m ± 100 %", "down to 0 N·m", id="down to nothing"),
        pytest.param("0 N·m", "down to 0 N·m", id="nought"),
        pytest.param("23 N·m (", "do not pair", id="half a bracket"),
        pytest.param("23 N·m (17 lb ft, 2.3 kgm)", "more than one second", id="three units"),
        pytest.param("23 N·m ±", "one side of the ±", id="no tolerance"),
        pytest.param("21-25 N·m ± 1 N·m", "± on the range", id="a tolerance on a range"),
        pytest.param("tight", "does not begin with a number", id="a word"),
        pytest.param("2" * 200, "too long", id="far too long"),
    ],
)
def test_what_cannot_be_read_is_refused_in_words(typed, understood):
    with pytest.raises(UnreadableQuantity, match=understood):
        printed_torque(typed)


numbers = st.decimals(1, 90, places=2).map(lambda number: f"{number.normalize():f}")
units = st.sampled_from([unit.symbol for unit in TORQUE.units])


@st.composite
def torques(draw):
    """Any torque a manual can print."""

    def ends(unit):
        low, high = sorted((draw(numbers), draw(numbers)), key=float)
        return {"low": Torque.typed(f"{low} {unit}"), "high": Torque.typed(f"{high} {unit}")}

    def one(unit):
        return {"nominal": Torque.typed(f"{draw(numbers)} {unit}")}

    fields = draw(st.sampled_from([ends, one]))(draw(units))
    if "nominal" in fields and draw(st.booleans()):
        nominal = fields["nominal"]
        unit = nominal.text.rpartition(" ")[2]
        least = float(nominal.text.rpartition(" ")[0])
        share = draw(st.integers(1, 99))
        fields["tolerance"] = draw(
            st.sampled_from([Ratio.typed(f"{share} %"), Torque.typed(f"{least / 2:.4f} {unit}")])
        )
    if draw(st.booleans()):
        fields["also_printed"] = AlsoPrinted(**draw(st.sampled_from([ends, one]))(draw(units)))
    return TorqueSpecification(**fields)


@given(torques())
def test_what_is_written_is_read_back_the_same(torque):
    assert printed_torque(torque_text(torque)) == torque


@given(st.text(max_size=60))
def test_any_text_is_refused_or_is_a_torque_above_nothing(text):
    try:
        found = printed_torque(text)
    except UnreadableQuantity:
        return
    assert found.low_nm > 0
