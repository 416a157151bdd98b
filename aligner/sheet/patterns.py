"""The built-in patterns: a sheet put together from a few plain choices, without one torque.

The trap: a pattern must not look like knowledge of a bike. It brings the joints, the rules
and what is said beside them; every torque and dimension stays missing until it is taken from
the maker's manual. Names, notes and reasons are said in the language spoken when they are
written into a sheet; from then on they are the sheet's own.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from typing import Any

from aligner.data_files import resource
from aligner.errors import AlignerError
from aligner.language import say
from aligner.sheet.dimensions import ForkKind, HandlebarPlace
from aligner.sheet.fasteners import Fastener, OrderRule, Side
from aligner.sheet.model import Part
from aligner.sheet.sheet import Sheet

#: The questions in the order a person is asked them.
ASKED = ("fork", "lower_clamps", "top_clamps", "handlebars", "axle", "brake", "stem")
#: The same files, and what nobody is asked, in the order the fasteners stand on a sheet.
_LISTED = ("stem", "lower_clamps", "caps", "top_clamps", "handlebars", "fork", "axle", "brake")

Choices = Mapping[str, str]


class UnknownChoice(AlignerError):
    """A pattern is asked for that does not exist."""


class PatternFastener(Part):
    """A fastener of a pattern; one row stands for both sides where `sides` names them.

    Attributes:
        name: with {side} where it comes on both.
        kind: a joint kind known to the planner.
        sides: one fastener is made for each.
        side: of a single fastener that is not in the middle.
        bolts: how many it has.
        note: what is minded with it, never a value.
    """

    name: str
    kind: str
    sides: tuple[Side, ...] = ()
    side: Side | None = None
    bolts: int = 1
    note: str = ""

    def fasteners(self) -> tuple[Fastener, ...]:
        """As they stand on a sheet, every torque missing, in the language spoken."""
        sides: tuple[Side | None, ...] = self.sides or (self.side,)
        return tuple(
            Fastener(
                name=say(self.name, side=side.words if side else ""),
                kind=self.kind,
                side=side,
                bolts=self.bolts,
                note=say(self.note),
            )
            for side in sides
        )


class ForkChoice(Part):
    """What a choice says of the fork itself."""

    kind: ForkKind | None = None
    handlebars: HandlebarPlace | None = None


class Option(Part):
    """One answer to a question.

    Attributes:
        name: in documents and code.
        title: on the screen.
        about: how to know it, "" where the title says it all.
        set: what it says of the fork.
        fasteners: what it brings.
        rules: of the order, each with its reason and source.
    """

    name: str
    title: str
    about: str
    set: ForkChoice = ForkChoice()
    fasteners: tuple[PatternFastener, ...]
    rules: tuple[OrderRule, ...]

    @property
    def kinds(self) -> frozenset[str]:
        """The joint kinds it brings."""
        return frozenset(each.kind for each in self.fasteners)


class Question(Part):
    """One question of the start card, from a file of resources/patterns/.

    Attributes:
        about: for whoever edits the file.
        question: its name, which is the file's.
        ask: on the screen.
        options: the answers; the first is taken where nothing is chosen.
    """

    about: str
    question: str
    ask: str
    options: tuple[Option, ...]

    def option(self, name: str) -> Option:
        """The answer of that name.

        Raises:
            UnknownChoice: there is none.
        """
        for each in self.options:
            if each.name == name:
                return each
        names = ", ".join(each.name for each in self.options)
        raise UnknownChoice(
            self.question,
            say("“{name}” is no choice", name=name),
            say("take one of {names}", names=names),
        )


@cache
def question(name: str) -> Question:
    """A question by its name."""
    return Question.model_validate_json(resource("patterns", f"{name}.json").read_bytes())


def questions() -> tuple[Question, ...]:
    """Every question a person is asked, in order."""
    return tuple(question(name) for name in ASKED)


def composed(choices: Choices, onto: Sheet | None = None) -> Sheet:
    """The sheet of a pattern.

    Args:
        choices: an option's name by the question's; the first option where one is left out.
        onto: a sheet whose name, dimensions and limits are kept; its fasteners and rules
            are replaced.

    Raises:
        UnknownChoice: a choice that does not exist.
    """
    sheet = onto or Sheet()
    chosen = [_chosen(name, choices) for name in _LISTED]
    fasteners = tuple(
        made for option in chosen for each in option.fasteners for made in each.fasteners()
    )
    kinds = {fastener.kind for fastener in fasteners}
    rules = tuple(
        rule.with_changes(because=say(rule.because), source=say(rule.source))
        for option in chosen
        for rule in option.rules
        if rule.first in kinds and rule.then in kinds
    )
    fork: dict[str, Any] = {}
    for option in chosen:
        fork |= {name: getattr(option.set, name) for name in option.set.model_fields_set}
    return sheet.with_changes(
        fork=sheet.fork.with_changes(**fork), fasteners=fasteners, rules=rules
    )


def kinds_of_patterns() -> frozenset[str]:
    """Every joint kind that some choice brings."""
    options = [option for name in _LISTED for option in question(name).options]
    return frozenset().union(*(option.kinds for option in options))


def rules_of_patterns() -> frozenset[tuple[str, str, str]]:
    """Kind, first and then of every rule that some choice brings."""
    options = [option for name in _LISTED for option in question(name).options]
    return frozenset((rule.kind, rule.first, rule.then) for each in options for rule in each.rules)


def choices_like(sheet: Sheet) -> dict[str, str]:
    """The choices a sheet comes nearest to, by its fork and by the fasteners on it."""
    found = {
        "fork": sheet.fork.kind.value,
        "handlebars": sheet.fork.handlebars.value,
    }
    on_sheet = {(fastener.kind, fastener.side): fastener.bolts for fastener in sheet.fasteners}
    for name in ASKED:
        if name not in found:
            options = question(name).options
            likeness = [_likeness(option, options, on_sheet) for option in options]
            found[name] = options[likeness.index(max(likeness))].name
    return found


def _chosen(name: str, choices: Choices) -> Option:
    asked = question(name)
    return asked.option(choices[name]) if name in choices else asked.options[0]


def _likeness(
    option: Option, options: tuple[Option, ...], on_sheet: Mapping[tuple[str, Side | None], int]
) -> tuple[int, int]:
    """How many of an option's fasteners the sheet has, less those it would add; then bolts."""
    made = [each for row in option.fasteners for each in row.fasteners()]
    spoken_of = frozenset().union(*(each.kinds for each in options))
    wanted = {(each.kind, each.side): each.bolts for each in made}
    there = {place: bolts for place, bolts in on_sheet.items() if place[0] in spoken_of}
    apart = len(wanted.keys() ^ there.keys())
    bolts_apart = sum(
        abs(bolts - there[place]) for place, bolts in wanted.items() if place in there
    )
    return -apart, -bolts_apart
