"""What to buy and what to keep an eye on, as rows and as plain text to copy or to print.

The trap: one seal for each leg is two seals. Parts of one name are counted, with where each
goes; a part whose new one is fitted already is not asked for again.
"""

from __future__ import annotations

from dataclasses import dataclass

from aligner.assessment.findings import number_words
from aligner.assessment.inspection import InspectionAssessment, PlaceStanding
from aligner.language import say, spoken
from aligner.units.preferred import Preferred


@dataclass(frozen=True)
class PartRow:
    """One line of the list.

    Attributes:
        count: how many places ask for it.
        part: its name.
        where: "left leg", "both legs"; "" in the middle.
        why: the points with what was measured and noted, in words.
    """

    count: int
    part: str
    where: str
    why: str


def parts_to_replace(inspection: InspectionAssessment, show: Preferred) -> tuple[PartRow, ...]:
    """What is to be replaced and not fitted yet, parts of one name together."""
    return _rows(inspection.open_parts, show)


def parts_to_watch(inspection: InspectionAssessment, show: Preferred) -> tuple[PartRow, ...]:
    """What is to be looked at again at the next job."""
    return _rows(inspection.to_watch, show)


def parts_text(inspection: InspectionAssessment, show: Preferred, bike: str = "") -> str:
    """The list as plain text, ending with a line feed; it says so where nothing is on it."""
    lines = [say("Parts for {bike}", bike=bike) if bike else say("Parts")]
    for heading, empty, rows in (
        (say("To replace"), say("To replace: nothing"), parts_to_replace(inspection, show)),
        (say("To watch"), say("To watch: nothing"), parts_to_watch(inspection, show)),
    ):
        lines += ["", f"{heading}:" if rows else empty]
        lines += [row_text(row) for row in rows]
    return "\n".join(lines) + "\n"


def row_text(row: PartRow) -> str:
    """One row as a line: "2 x oil seal (both legs): left leg: weeping"."""
    where = f" ({row.where})" if row.where else ""
    why = f": {row.why}" if row.why else ""
    return f"{row.count} x {row.part}{where}{why}"


def _rows(places: tuple[PlaceStanding, ...], show: Preferred) -> tuple[PartRow, ...]:
    by_part: dict[str, list[PlaceStanding]] = {}
    for each in places:
        by_part.setdefault(each.point.part, []).append(each)
    return tuple(
        PartRow(
            count=_count(group),
            part=say(part),
            where=_where(group),
            why="; ".join(_why(group, show)),
        )
        for part, group in by_part.items()
    )


def _count(group: list[PlaceStanding]) -> int:
    """One for each leg: a tube that is bent and pitted is still one tube."""
    return len({each.side for each in group})


def _where(group: list[PlaceStanding]) -> str:
    legs = list(dict.fromkeys(each.where for each in group if each.where))
    return say("both legs") if len(legs) == 2 else "".join(legs)


def _why(group: list[PlaceStanding], show: Preferred) -> list[str]:
    """What each place has to say beyond the part's name; the leg is said where there are two."""
    said = []
    for each in group:
        is_the_part = each.point.name.lower() == each.point.part.lower()
        facts = [number_words(each, show), each.found.note]
        about = "" if is_the_part else _within_a_line(say(each.point.name))
        if _count(group) > 1:
            about = f"{about}, {each.where}" if about else each.where
        words = ", ".join(fact for fact in facts if fact)
        if words or not is_the_part:
            said.append(": ".join(part for part in (about, words) if part))
    return said


def _within_a_line(name: str) -> str:
    """A name where no line begins: small in English, as it is in a language of large nouns."""
    return name.lower() if spoken() == "en" else name
