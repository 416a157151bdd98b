"""A torque as a manual prints it, read from one box and written back the same.

The trap: "2-1/2" is two and a half while "21-25" is a range, and a number without its unit is
where lbf·ft is taken for N·m. So a torque without a unit is refused, never completed.
"""

from __future__ import annotations

import re
from typing import Any

from aligner.language import marked, say, with_decimal_sign, written
from aligner.sheet.fasteners import AlsoPrinted, TorqueSpecification
from aligner.sheet.quantities import Ratio, Torque
from aligner.units import UnreadableQuantity, read_quantity
from aligner.units.dimension import TORQUE

#: What a refusal shows as being right.
_EXAMPLES = marked("write it as “23 N·m”, “21 to 25 N·m”, “23 N·m ± 10 %” or “23 N·m (17 lbf·ft)”")

_NUMBER = r"(?:[0-9]+[ \-][0-9]+/[0-9]+|[0-9]+/[0-9]+|[0-9]*[.,]?[0-9]+[.,]?)"
_WORD = r"[^0-9()\[\]±]*?"
_RANGE = re.compile(
    rf"(?P<low>{_NUMBER})\s*(?P<low_unit>{_WORD})\s*(?:-|–|—|−|\.\.\.?|…|\bto\b|\bbis\b)\s*"
    rf"(?P<high>{_NUMBER})\s*(?P<high_unit>[^0-9()\[\]±]*)"
)
_PLUS_MINUS = re.compile(r"\s*(?:±|\+\s*/\s*[-−–]|\+\s*[-−–])\s*")
_UNEVEN = re.compile(r"\+\s*[0-9]")
_IN_BRACKETS = re.compile(r"(?P<first>[^()\[\]]+)[(\[](?P<second>[^()\[\]]+)[)\]]")
_MIXED = re.compile(r"([0-9]+)-([0-9]+/[0-9]+)")
_LONGEST = 120


def printed_torque(text: str, source: str = "") -> TorqueSpecification:
    """The torque that a text means.

    Args:
        text: as printed: "21-25 N·m", "23 ± 2 N·m", "23 N·m ± 10 %", "17 lbf·ft (23 N·m)".
        source: where it is printed.

    Raises:
        UnreadableQuantity: in words: what was understood and what would be right.
    """
    text = " ".join(text.split())
    if not text:
        raise UnreadableQuantity("", say("there is no torque"), say(_EXAMPLES))
    if len(text) > _LONGEST:
        raise UnreadableQuantity("", say("far too long for a torque"), say(_EXAMPLES))
    first, second = _parts(text)
    fields = _main(first)
    if second:
        fields["also_printed"] = AlsoPrinted(**_range_or_nominal(second))
    if source:
        fields["source"] = source
    found = TorqueSpecification(**fields)
    if found.low_nm <= 0:
        raise UnreadableQuantity(
            "",
            say(
                "“{torque}” reaches down to {low}",
                torque=first,
                low=f"{written(found.low_nm)} N·m",
            ),
            say("a torque and its lower end are above zero"),
        )
    return found


def torque_text(torque: TorqueSpecification) -> str:
    """A torque as the manual prints it: "21 to 25 N·m", "23 N·m ± 10 %".

    It is in the language spoken; `printed_torque` reads the same torque back from it.
    """
    words = _range_text(torque.low, torque.high) or _said(torque.nominal)
    if torque.tolerance is not None:
        words += f" ± {torque.tolerance.said}"
    also = torque.also_printed
    if also is not None:
        second = _range_text(also.low, also.high) or _said(also.nominal)
        words += f" ({second})" if second else ""
    return words


def _parts(text: str) -> tuple[str, str]:
    """The torque and what is printed beside it in a second unit, "" if nothing is."""
    found = _IN_BRACKETS.fullmatch(text)
    if found is not None:
        first, second = found["first"].strip(), found["second"].strip()
    elif any(mark in text for mark in "()[]"):
        raise UnreadableQuantity(
            "", say("the brackets in “{text}” do not pair", text=text), say(_EXAMPLES)
        )
    elif " / " in text and "+ / " not in text:
        first, _, second = text.partition(" / ")
    else:
        first, second = text, ""
    if ", " in second or " / " in second or ";" in second:
        raise UnreadableQuantity(
            "",
            say("“{text}” is more than one second torque", text=second),
            say("keep two of them, in two units"),
        )
    return first, second


def _main(text: str) -> dict[str, Any]:
    sides = _PLUS_MINUS.split(text)
    if len(sides) > 2:
        raise UnreadableQuantity("", say("“{text}” has more than one ±", text=text), say(_EXAMPLES))
    if len(sides) == 2:
        return _with_tolerance(sides[0], sides[1])
    if _UNEVEN.search(text[1:]):
        raise UnreadableQuantity(
            "",
            say("“{text}” has an uneven tolerance", text=text),
            say("write it as a range: “22 to 25 N·m”"),
        )
    return _range_or_nominal(text)


def _with_tolerance(nominal: str, tolerance: str) -> dict[str, Any]:
    if _range_of(nominal) is not None:
        raise UnreadableQuantity(
            "", say("a ± on the range “{range}”", range=nominal), say(_EXAMPLES)
        )
    tolerance = tolerance.lstrip("-−– ")
    if not nominal or not tolerance:
        raise UnreadableQuantity("", say("nothing stands on one side of the ±"), say(_EXAMPLES))
    letters = tolerance.replace(" ", "").casefold()
    if any(sign in letters for sign in ("%", "percent", "prozent")):
        return {"nominal": _torque(nominal), "tolerance": Ratio.typed(tolerance)}
    if not _has_unit(tolerance):
        found = _torque(nominal)
        return {"nominal": found, "tolerance": _torque(tolerance, found.unit)}
    spread = _torque(tolerance)
    return {"nominal": _torque(nominal, spread.unit), "tolerance": spread}


def _range_or_nominal(text: str) -> dict[str, Any]:
    found = _range_of(text)
    if found is None:
        return {"nominal": _torque(text)}
    high = _torque(f"{found['high']} {found['high_unit']}")
    low = _torque(f"{found['low']} {found['low_unit']}", high.unit)
    if low.value > high.value:
        raise UnreadableQuantity(
            "",
            say("the range runs from {low} down to {high}", low=low.said, high=high.said),
            say("put the lower one first"),
        )
    return {"low": low, "high": high}


def _range_of(text: str) -> re.Match[str] | None:
    """The two ends of a range; a mixed fraction such as "2-1/2" is none."""
    return _RANGE.fullmatch(_MIXED.sub(r"\1 \2", text.strip()))


def _torque(text: str, unit_if_bare: str | None = None) -> Torque:
    text = _MIXED.sub(r"\1 \2", text.strip())
    if unit_if_bare is None and not _has_unit(text) and any(map(str.isdigit, text)):
        raise UnreadableQuantity("", say("“{text}” has no unit", text=text), say(_EXAMPLES))
    found = read_quantity(text, TORQUE, unit_if_bare=unit_if_bare)
    return Torque(found.text, found.value)


def _has_unit(text: str) -> bool:
    return bool(text.strip().lstrip("0123456789.,/ -"))


def _range_text(low: Torque | None, high: Torque | None) -> str:
    if low is None or high is None:
        return ""
    first = with_decimal_sign(low.number) if low.unit == high.unit else low.said
    return say("{low} to {high}", low=first, high=high.said)


def _said(torque: Torque | None) -> str:
    return torque.said if torque is not None else ""
