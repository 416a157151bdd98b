"""What usually stands in the way of a front end: a name to pick, and what to mind with it.

The trap: an entry keeps the reminder it was made with, so that an old job reads the same when this
list is put right. It keeps it in the language it was made in, too: the list itself is English, and
what goes into a job is said at that moment.
"""

from __future__ import annotations

from functools import cache

from pydantic import TypeAdapter

from aligner.data_files import resource
from aligner.language import say
from aligner.sheet.model import Part


class UsualThing(Part):
    """One thing that is usually taken off.

    Attributes:
        name: what it is, in English.
        words: by which a person may call it, in any language of the program, whichever is spoken;
            its reminder is brought by any of them.
        reminder: what to mind with it, and why, in English.
        source: where that comes from.
    """

    name: str
    words: tuple[str, ...] = ()
    reminder: str
    source: str


@cache
def usual_clutter() -> tuple[UsualThing, ...]:
    """The things of resources/strip/clutter.json, in their order."""
    content = resource("strip", "clutter.json").read_bytes()
    return TypeAdapter(tuple[UsualThing, ...]).validate_json(content)


def reminder_for(name: str) -> str:
    """What to mind with a thing of that name, as a job keeps it; "" where it is not a usual one.

    Its whole name goes first, then the longest of the words that stand in what was typed: a
    "nearside caliper" is a caliper, and must not hang by its hose either.
    """
    wanted = " ".join(name.casefold().split())
    for each in usual_clutter():
        if wanted in (each.name.casefold(), say(each.name).casefold()):
            return say(each.reminder)
    found = [
        (len(word), each.reminder)
        for each in usual_clutter()
        for word in each.words
        if word in wanted
    ]
    return say(max(found, key=lambda pair: pair[0])[1]) if found else ""
