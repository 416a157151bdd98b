"""Metric threads: reading "M8x1.25" and the dimensions that follow from diameter and pitch.

The trap: "M10" alone means the coarse pitch, and a fine thread of the same diameter is a
different bolt. Diameters are worked out from the profile and never typed in from a list.
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass

from aligner.errors import AlignerError
from aligner.language import say, written


class UnreadableThread(AlignerError):
    """A text cannot be read as a metric thread."""


#: Coarse pitch by nominal diameter, both in mm. ISO 261, seen (secondary) in the chart
#: "M1.6 to M64 (ISO 261)" at mlc.org.uk; M7, M9 and M11 in the table of metric series at
#: sizes.com. What is not listed (M13, M25) has no coarse pitch in ISO 261.
COARSE_PITCH_MM = {
    5.0: 0.8,
    6.0: 1.0,
    7.0: 1.0,
    8.0: 1.25,
    9.0: 1.25,
    10.0: 1.5,
    11.0: 1.5,
    12.0: 1.75,
    14.0: 2.0,
    16.0: 2.0,
    18.0: 2.5,
    20.0: 2.5,
    22.0: 2.5,
    24.0: 3.0,
    27.0: 3.0,
}

#: Smallest and largest diameter read. Bolts end at M27; above it are the fine threads of fork
#: caps and tubes. Chosen, no source.
_SMALLEST_MM, _LARGEST_MM = 5.0, 60.0
#: Finest pitch read: the finest one of M5 in ISO 261.
_FINEST_MM = 0.5

_THREAD = re.compile(
    r"\s*m\s*(?P<diameter>[0-9]+(?:[.,][0-9]+)?)"
    r"\s*(?:[x×*]\s*(?P<pitch>[0-9]+(?:[.,][0-9]+)?)\s*)?(?:mm)?\s*",
    re.IGNORECASE,
)


@dataclass(frozen=True)
class Thread:
    """An ISO metric thread (profile of ISO 68-1), with the diameters of ISO 724.

    Attributes:
        diameter_mm: nominal diameter d.
        pitch_mm: pitch P.
    """

    diameter_mm: float
    pitch_mm: float

    @property
    def pitch_diameter_mm(self) -> float:
        """d2 = d - 3/4 H, with H = P sqrt(3)/2 (ISO 68-1, ISO 724)."""
        return self.diameter_mm - 3 / 4 * self._profile_height_mm

    @property
    def nut_minor_diameter_mm(self) -> float:
        """D1 = d - 5/4 H, the minor diameter of the nut's thread (ISO 724)."""
        return self.diameter_mm - 5 / 4 * self._profile_height_mm

    @property
    def root_diameter_mm(self) -> float:
        """d3 = d - 17/12 H, the minor diameter of the bolt's rounded root (ISO 68-1)."""
        return self.diameter_mm - 17 / 12 * self._profile_height_mm

    @property
    def stress_diameter_mm(self) -> float:
        """Ds = (d2 + d3) / 2, the diameter of the stress area (ISO 898-1)."""
        return (self.pitch_diameter_mm + self.root_diameter_mm) / 2

    @property
    def stress_area_mm2(self) -> float:
        """As = pi/4 ds^2 (ISO 898-1)."""
        return math.pi / 4 * self.stress_diameter_mm**2

    @property
    def is_coarse(self) -> bool:
        """Whether the pitch is the coarse one of ISO 261 for this diameter."""
        return COARSE_PITCH_MM.get(self.diameter_mm) == self.pitch_mm

    @property
    def designation(self) -> str:
        """As it is written: "M8" where the pitch is coarse, else "M8x1"."""
        size = f"M{self.diameter_mm:g}"
        return size if self.is_coarse else f"{size}x{self.pitch_mm:g}"

    @property
    def _profile_height_mm(self) -> float:
        """H, the height of the sharp triangle of 60 degrees."""
        return self.pitch_mm * math.sqrt(3) / 2


def parse_thread(text: str) -> Thread:
    """The thread a text means: "M8x1.25", "M8" (coarse), "M10 x 1,25", "M8×1".

    Raises:
        UnreadableThread: in words: no metric thread, no coarse pitch to take for granted, a
            diameter outside 5 to 60 mm, or a pitch no bolt of that diameter has.
    """
    found = _THREAD.fullmatch(text)
    if found is None:
        raise UnreadableThread(
            "",
            say("“{text}” is not a metric thread", text=text.strip()[:40]),
            say("write it as “M8x1.25” or “M8”"),
        )
    diameter_mm = _number(found["diameter"])
    if not _SMALLEST_MM <= diameter_mm <= _LARGEST_MM:
        raise UnreadableThread(
            "",
            say(
                "{size} is outside {smallest} to {largest}",
                size=_size(diameter_mm),
                smallest=_size(_SMALLEST_MM),
                largest=_size(_LARGEST_MM),
            ),
            say("give the diameter over the bolt's thread in millimetres"),
        )
    if found["pitch"] is None:
        return Thread(diameter_mm, _coarse_pitch_mm(diameter_mm))
    pitch_mm = _number(found["pitch"])
    coarsest_mm = _coarsest_pitch_mm(diameter_mm)
    if not _FINEST_MM <= pitch_mm <= coarsest_mm:
        raise UnreadableThread(
            "",
            say(
                "{size} with a pitch of {pitch}",
                size=_size(diameter_mm),
                pitch=f"{written(pitch_mm)} mm",
            ),
            say(
                "its pitch lies between {finest} and {coarsest} mm: "
                "was the bolt's length taken for the pitch?",
                finest=written(_FINEST_MM),
                coarsest=written(coarsest_mm),
            ),
        )
    return Thread(diameter_mm, pitch_mm)


def _number(digits: str) -> float:
    return float(digits.replace(",", "."))


def _size(diameter_mm: float) -> str:
    return f"M{written(diameter_mm)}"


def _coarse_pitch_mm(diameter_mm: float) -> float:
    pitch_mm = COARSE_PITCH_MM.get(diameter_mm)
    if pitch_mm is None:
        raise UnreadableThread(
            "",
            say("{size} has no coarse pitch known here", size=_size(diameter_mm)),
            say("write the pitch as well, as “{example}”", example=f"{_size(diameter_mm)}x1"),
        )
    return pitch_mm


def _coarsest_pitch_mm(diameter_mm: float) -> float:
    """The coarse pitch of the next listed diameter that is no smaller; at most that of M27."""
    for listed_mm, pitch_mm in COARSE_PITCH_MM.items():
        if listed_mm >= diameter_mm:
            return pitch_mm
    return max(COARSE_PITCH_MM.values())
