"""Wrench settings with an adapter against worked examples in government manuals."""

import pytest

from aligner.fastening.wrench import Adapter, lengthening, setting_nm

#: Torque and lengths as printed; the torque's unit does not matter, nor does the length's.
SETTINGS = [
    (100, 12, 6, 66.7, 0.05, "US Navy training manual, tpub.com/air/3-8.htm (seen)"),
    (40, 12, 4, 30, 1e-9, "US Army TM 9-2350-261-20-1 p. 2-29 (seen)"),
    (300, 10, 4, 214, 0.5, "US Army TM 1-1500-204-23-9 fig. 8-16 (seen)"),
    (140, 12, 3, 112, 1e-9, "US Army TM 9-2350-277-20-2 p. 25-27 (seen)"),
]


@pytest.mark.parametrize(
    ("torque", "grip_length", "adapter_length", "printed", "tolerance", "source"),
    SETTINGS,
    ids=[f"{row[0]} at {row[1]}+{row[2]}" for row in SETTINGS],
)
def test_settings_are_those_printed(
    torque, grip_length, adapter_length, printed, tolerance, source
):
    setting = setting_nm(torque, grip_length, Adapter("crowfoot", adapter_length))
    assert setting == pytest.approx(printed, abs=tolerance), source


def test_what_is_applied_is_the_printed_torque():
    # Source: US Army TM 9-254 p. 91 fig. 4-5 (seen): 60 in-lb set, 12 and 2 in long: 70 in-lb.
    assert 60 * lengthening(12, Adapter("crowfoot", 2)) == pytest.approx(70, abs=1e-9)


def test_a_right_angle_reads_direct():
    # Source: US Navy 14008 fig. 2-12; TM 9-2350-277-20-2 p. 25 (seen).
    assert setting_nm(40, 300, Adapter("crowfoot", 60, angle_deg=90)) == 40


def test_a_slanted_adapter_counts_by_its_cosine():
    # Formula: TM 9-254 fig. 4-6 (seen), whose "x" before the cosine term is a slip for "+";
    # number computed, not printed.
    setting = setting_nm(40, 300, Adapter("crowfoot", 60, angle_deg=45))
    assert setting == pytest.approx(35.044, abs=0.001)
