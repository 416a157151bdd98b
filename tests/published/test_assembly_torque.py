"""Assembly preload and torque at 90 % of yield against VDI 2230.

Fine threads: the table of VDI 2230 (2001) as reproduced at mastik.pt, page 685 (seen). Coarse
threads: VDI 2230 table A1 (memory). Tolerances: 0.15 kN; 1 % or half a printed unit.
"""

import pytest

from aligner.fastening.bolt_limits import yield_preload_n, yield_torque_nm
from aligner.fastening.thread import parse_thread

SEEN = "VDI 2230 (2001) reproduced at mastik.pt (seen)"
MEMORY = "VDI 2230 table A1 (memory)"

#: Thread, class, friction, preload in kN (None: not stored), torque in N·m (None: not stored).
ROWS = [
    ("M8x1", "8.8", 0.10, 20.7, 22.8, SEEN),
    ("M8x1", "8.8", 0.12, 20.2, 26.1, SEEN),
    ("M8x1", "8.8", 0.14, 19.7, 29.2, SEEN),
    ("M8x1", "10.9", 0.10, 30.4, 33.5, SEEN),
    ("M8x1", "10.9", 0.12, 29.7, 38.3, SEEN),
    ("M10x1.25", "8.8", 0.10, 32.4, 44.0, SEEN),
    ("M10x1.25", "8.8", 0.12, 31.6, None, SEEN),
    ("M10x1.25", "8.8", 0.14, 30.8, 57.0, SEEN),
    ("M10x1.25", "10.9", 0.10, 47.5, 65.0, SEEN),
    ("M10x1.25", "10.9", 0.12, 46.4, 75.0, SEEN),
    ("M10x1.25", "10.9", 0.14, 45.2, 83.0, SEEN),
    ("M12x1.25", "8.8", 0.10, 49.1, 79.0, SEEN),
    ("M12x1.25", "8.8", 0.12, 48.0, 90.0, SEEN),
    ("M12x1.25", "8.8", 0.14, 46.8, 101.0, SEEN),
    ("M12x1.25", "10.9", 0.10, 72.1, None, SEEN),
    ("M12x1.25", "10.9", 0.12, 70.5, 133.0, SEEN),
    ("M12x1.25", "10.9", 0.14, 68.7, 149.0, SEEN),
    ("M6", "8.8", 0.12, 10.2, 10.1, MEMORY),
    ("M6", "10.9", 0.12, 14.9, 14.9, MEMORY),
    ("M8", "8.8", 0.12, 18.6, 24.6, MEMORY),
    ("M8", "10.9", 0.12, 27.3, 36.1, MEMORY),
    ("M10", "8.8", 0.12, None, 48.0, MEMORY),
    ("M10", "10.9", 0.12, 43.4, None, MEMORY),
    ("M12", "8.8", 0.12, 43.0, 84.0, MEMORY),
    ("M12", "10.9", 0.12, 63.2, 123.0, MEMORY),
]


def _cases(column):
    return [
        pytest.param(*row[:3], row[column], row[5], id=f"{row[0]} {row[1]} mu={row[2]}")
        for row in ROWS
        if row[column] is not None
    ]


@pytest.mark.parametrize(
    ("thread", "strength_class", "friction", "printed_kn", "source"), _cases(3)
)
def test_preload_is_the_printed_one(thread, strength_class, friction, printed_kn, source):
    preload_kn = yield_preload_n(parse_thread(thread), strength_class, friction) / 1000
    assert preload_kn == pytest.approx(printed_kn, abs=0.15), source


@pytest.mark.parametrize(
    ("thread", "strength_class", "friction", "printed_nm", "source"), _cases(4)
)
def test_torque_is_the_printed_one(thread, strength_class, friction, printed_nm, source):
    torque_nm = yield_torque_nm(parse_thread(thread), strength_class, friction)
    is_whole_number = printed_nm == int(printed_nm) and printed_nm >= 40
    tolerance_nm = max(0.01 * printed_nm, 0.5 if is_whole_number else 0.05)
    assert torque_nm == pytest.approx(printed_nm, abs=tolerance_nm), source
