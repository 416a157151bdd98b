import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aligner.errors import AlignerError
from aligner.fastening.thread import COARSE_PITCH_MM, Thread, UnreadableThread, parse_thread


@pytest.mark.parametrize(
    ("text", "diameter_mm", "pitch_mm"),
    [
        ("M8x1.25", 8, 1.25),
        ("M8", 8, 1.25),
        ("M10 x 1,25", 10, 1.25),
        ("M8×1", 8, 1),
        ("m6 X 1.0", 6, 1),
        ("M12*1.5", 12, 1.5),
        (" M25x1 ", 25, 1),
        ("M8 x 1.25 mm", 8, 1.25),
        ("M39x1", 39, 1),
    ],
)
def test_a_thread_is_read_as_people_write_it(text, diameter_mm, pitch_mm):
    assert parse_thread(text) == Thread(diameter_mm, pitch_mm)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "“” is not a metric thread; write it as “M8x1.25” or “M8”"),
        ("8", "“8” is not a metric thread; write it as “M8x1.25” or “M8”"),
        ("5/16 UNC", "“5/16 UNC” is not a metric thread; write it as “M8x1.25” or “M8”"),
        (
            "M8x25",
            "M8 with a pitch of 25 mm; its pitch lies between 0.5 and 1.25 mm: "
            "was the bolt's length taken for the pitch?",
        ),
        (
            "M8x1.5",
            "M8 with a pitch of 1.5 mm; its pitch lies between 0.5 and 1.25 mm: "
            "was the bolt's length taken for the pitch?",
        ),
        ("M25", "M25 has no coarse pitch known here; write the pitch as well, as “M25x1”"),
        (
            "M2",
            "M2 is outside M5 to M60; give the diameter over the bolt's thread in millimetres",
        ),
    ],
    ids=["nothing", "no M", "inch", "length", "too coarse", "no coarse pitch", "too small"],
)
def test_a_refusal_says_what_would_be_right(text, said):
    with pytest.raises(UnreadableThread) as refused:
        parse_thread(text)
    assert str(refused.value) == said


@given(st.text(max_size=30))
def test_no_text_does_worse_than_a_refusal(text):
    try:
        thread = parse_thread(text)
    except AlignerError:
        return
    assert 5 <= thread.diameter_mm <= 60


@given(st.sampled_from(sorted(COARSE_PITCH_MM)), st.sampled_from([0.5, 0.75, 1.0, 1.25, 1.5]))
def test_a_designation_reads_back_as_the_same_thread(diameter_mm, pitch_mm):
    thread = Thread(diameter_mm, min(pitch_mm, COARSE_PITCH_MM[diameter_mm]))
    assert parse_thread(thread.designation) == thread


@given(st.floats(5, 60), st.floats(0.5, 3))
def test_a_finer_thread_of_the_same_diameter_is_stronger(diameter_mm, pitch_mm):
    finer, coarser = Thread(diameter_mm, pitch_mm * 0.9), Thread(diameter_mm, pitch_mm)
    assert finer.stress_area_mm2 > coarser.stress_area_mm2
    assert coarser.root_diameter_mm < coarser.nut_minor_diameter_mm < coarser.pitch_diameter_mm


def test_stress_area_is_the_one_of_the_short_formula():
    # As = pi/4 (d - 0.9382 P)^2, ISO 898-1:2013 clause 9.1.6.1 (memory).
    for diameter_mm, pitch_mm in COARSE_PITCH_MM.items():
        short_mm2 = math.pi / 4 * (diameter_mm - 0.9382 * pitch_mm) ** 2
        assert Thread(diameter_mm, pitch_mm).stress_area_mm2 == pytest.approx(short_mm2, rel=2e-5)


def test_pitch_diameter_is_where_ridge_and_groove_are_equally_wide():
    # A second way: lay the 60 degree profile out in coordinates. A sharp ridge with its apex
    # H/8 above d/2 is 2 x tan(30) wide at depth x below the apex; on d2 that is half a pitch.
    thread = Thread(8, 1.25)
    apex_mm = thread.diameter_mm / 2 + thread.pitch_mm * math.sqrt(3) / 2 / 8
    depth_mm = apex_mm - thread.pitch_diameter_mm / 2
    width_mm = 2 * depth_mm * math.tan(math.radians(30))
    assert width_mm == pytest.approx(thread.pitch_mm / 2, abs=1e-12)
