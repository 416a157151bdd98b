"""The fasteners of a front end, with their torques as the owner's manual prints them.

The trap: a torque is never guessed. One that is not known is left out here and shows as
missing everywhere, together with the source it should come from.
"""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated, Literal, Self

from pydantic import Field, model_validator

from aligner.errors import AlignerError
from aligner.language import say
from aligner.sheet.model import Part
from aligner.sheet.quantities import Angle, Distance, OneOf, Ratio, Torque


class Side(StrEnum):
    """The rider's left or right."""

    LEFT = "left"
    RIGHT = "right"

    @property
    def words(self) -> str:
        """As a person reads it where it stands alone."""
        left, right = say("left", meaning="side"), say("right", meaning="side")
        return left if self is Side.LEFT else right


class ThreadCondition(StrEnum):
    """How the manual wants the thread when its torque holds."""

    DRY = "dry"
    OILED = "oiled"
    GREASED = "greased"
    LOCKED = "locked"


class Pattern(StrEnum):
    """In which turn the bolts of one clamp are tightened."""

    ALTERNATING = "alternating"
    CROSSWISE = "crosswise"


class AlsoPrinted(Part):
    """The same torque as the manual prints it in a second unit."""

    nominal: Torque | None = None
    low: Torque | None = None
    high: Torque | None = None


class TorqueSpecification(Part):
    """A torque as the manual prints it: a nominal with or without tolerance, or a range.

    Attributes:
        nominal: the value printed alone.
        tolerance: plus or minus on the nominal, in per cent or as a torque.
        low: lower end of a printed range.
        high: upper end of a printed range.
        also_printed: the same torque in a second unit, where the manual prints one beside it.
        source: where the value comes from ("manual p. 12-7").
    """

    nominal: Torque | None = None
    tolerance: Annotated[Ratio | Torque, OneOf((Ratio, Torque))] | None = None
    low: Torque | None = None
    high: Torque | None = None
    also_printed: AlsoPrinted | None = None
    source: str = ""

    @model_validator(mode="after")
    def _is_one_or_the_other(self) -> Self:
        has_range = self.low is not None or self.high is not None
        if self.nominal is not None and has_range:
            raise AlignerError(
                "", say("both a nominal and a range"), say("give the one the manual prints")
            )
        if self.nominal is None and (self.low is None or self.high is None):
            raise AlignerError(
                "", say("no complete torque"), say("give nominal, or both low and high")
            )
        if self.tolerance is not None and self.nominal is None:
            raise AlignerError(
                "", say("a tolerance on a range"), say("give the tolerance with a nominal")
            )
        if self.low is not None and self.high is not None and self.low.value > self.high.value:
            raise AlignerError(
                "",
                say(
                    "the range runs from {low} down to {high}",
                    low=self.low.said,
                    high=self.high.said,
                ),
                say("put the lower one first"),
            )
        return self

    @property
    def target_nm(self) -> float:
        """The value to aim for, in N·m: the nominal, or the middle of the range."""
        if self.nominal is not None:
            return self.nominal.value
        return (self.low_nm + self.high_nm) / 2

    @property
    def low_nm(self) -> float:
        """The least torque that is right, in N·m; the nominal itself without a tolerance."""
        if self.low is not None:
            return self.low.value
        return self._nominal_nm - self._tolerance_nm

    @property
    def high_nm(self) -> float:
        """The greatest torque that is right, in N·m."""
        if self.high is not None:
            return self.high.value
        return self._nominal_nm + self._tolerance_nm

    @property
    def _nominal_nm(self) -> float:
        return self.nominal.value if self.nominal is not None else 0.0

    @property
    def _tolerance_nm(self) -> float:
        if isinstance(self.tolerance, Ratio):
            return self._nominal_nm * self.tolerance.value / 100
        return self.tolerance.value if self.tolerance is not None else 0.0


class Fastener(Part):
    """One joint of the front end: a nut, a cap, or the bolts of one clamp.

    Attributes:
        name: as the checklist calls it ("left lower clamp"); unique on the sheet.
        kind: a joint kind known to the planner ("lower_clamp").
        side: left or right; left out for what stands in the middle.
        bolts: how many bolts it has.
        thread: as "M8x1.25".
        strength_class: "8.8", or "aluminium" for an aluminium cap or nut.
        torque: as printed; left out where it is not known.
        seating: torque that seats the head bearing before it is backed off (stem nut only).
        back_off: angle it is backed off by afterwards (stem nut only).
        thread_condition: dry, oiled, greased, locked.
        passes: shares of the torque, one a pass; the planner's own where left out.
        pattern: in which turn the bolts go.
        again_after: distance on the road after which it is checked again.
        note: anything the manual says beside it.
    """

    name: str = Field(min_length=1)
    kind: str
    side: Side | None = None
    bolts: int = Field(default=1, ge=1, le=12)
    thread: str | None = None
    strength_class: str | None = None
    torque: TorqueSpecification | None = None
    seating: TorqueSpecification | None = None
    back_off: Angle | None = None
    thread_condition: ThreadCondition | None = None
    passes: tuple[Ratio, ...] = ()
    pattern: Pattern = Pattern.ALTERNATING
    again_after: Distance | None = None
    note: str = ""


class OrderRule(Part):
    """What the maker's manual says of the order, with its reason.

    Attributes:
        kind: "before" (`first` before `then`), "while_slack", "after_hold" or "again_after".
        first: a fastener's name, a joint kind, or an activity.
        then: likewise.
        because: the reason, in a sentence.
        source: where the rule comes from.
    """

    kind: Literal["before", "while_slack", "after_hold", "again_after"] = "before"
    first: str
    then: str
    because: str
    source: str = ""
