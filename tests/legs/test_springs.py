"""Spring and spacer: the stack drawn up in coordinates must come to the same preload."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aligner.legs import (
    LegError,
    coil_bind_margin_mm,
    preload_mm,
    spacer_length_mm,
)


@given(
    seat=st.floats(-500, -350),
    spring=st.floats(300, 400),
    spacer=st.floats(50, 250),
    washers=st.floats(0, 4),
    reach=st.floats(0, 30),
)
def test_the_preload_is_what_the_stack_stands_above_the_caps_face(
    seat, spring, spacer, washers, reach
):
    """Heights above the tube's top edge (0): the seat below it, the cap's face at -reach."""
    top_of_stack = seat + spring + washers + spacer
    cap_face = -reach
    if top_of_stack < cap_face - 1e-6:
        with pytest.raises(LegError, match="longer spacer"):
            preload_mm(spring, spacer, cap_face - seat, washers)
        return
    if top_of_stack < cap_face + 1e-6 or top_of_stack - cap_face >= spring:
        return
    by_room = preload_mm(spring, spacer, cap_face - seat, washers)
    assert by_room == pytest.approx(top_of_stack - cap_face)
    assert spacer_length_mm(spring, by_room, cap_face - seat, washers) == pytest.approx(spacer)


def test_one_millimetre_more_preload_is_one_millimetre_more_spacer():
    assert spacer_length_mm(380, 16, 480, 3) - spacer_length_mm(380, 15, 480, 3) == 1
    assert spacer_length_mm(380, 15, 480, 3) == 112


def test_preload_and_travel_come_off_the_room_before_the_coils_touch():
    assert coil_bind_margin_mm(380, 200, preload_mm=15, travel_mm=150) == 15
    assert coil_bind_margin_mm(380, 200, preload_mm=40, travel_mm=150) == -10


@pytest.mark.parametrize(
    ("ask", "words"),
    [
        pytest.param(lambda: preload_mm(380, 90, 480), "10 mm shorter than the room", id="loose"),
        pytest.param(
            lambda: spacer_length_mm(500, 15, 480),
            "without a spacer already gives 20 mm",
            id="spring",
        ),
        pytest.param(lambda: preload_mm(0, 90, 480), "spring free length: 0 mm", id="none"),
        pytest.param(lambda: preload_mm(100, 480, 450), "shortened by 130 mm", id="to nothing"),
        pytest.param(
            lambda: spacer_length_mm(100, 100, 450), "shortened by 100 mm", id="all of it"
        ),
        pytest.param(lambda: coil_bind_margin_mm(200, 380, 15, 150), "not shorter", id="solid"),
        pytest.param(lambda: preload_mm(380, -1, 370), "spacer length: -1 mm", id="spacer"),
    ],
)
def test_a_stack_that_cannot_be_is_refused_in_words(ask, words):
    with pytest.raises(LegError, match=words):
        ask()
