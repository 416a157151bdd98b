"""A stable order from links that say what stands before what, and the ring where there is none.

A link joins many to many ("every cap before every top clamp"). The trap: written out pair by
pair it grows with the square of the joints, so each link is a gate that opens once all of its
`first` are done, and the work stays in proportion to the names in the links.
Source of the method: A. B. Kahn, Topological sorting of large networks, Communications of the
ACM 5 (1962), with a heap in place of the list (from memory).
"""

from __future__ import annotations

import heapq
from collections.abc import Collection, Mapping, Sequence, Set
from dataclasses import dataclass
from typing import Generic, TypeVar

T = TypeVar("T")


@dataclass(frozen=True, eq=False)
class Link(Generic[T]):
    """Everything in `first` stands before everything in `then`, because of `rule`."""

    first: frozenset[str]
    then: frozenset[str]
    rule: T


@dataclass(frozen=True)
class Ring(Generic[T]):
    """Places that wait for each other, each before the next and the last before the first.

    Attributes:
        places: each once.
        links: links[i] puts places[i] before places[i + 1].
    """

    places: tuple[str, ...]
    links: tuple[Link[T], ...]


def ordered(ranked: Sequence[str], links: Sequence[Link[T]]) -> list[str]:
    """The places in an order that every link allows, otherwise as near to `ranked` as it goes.

    Of the places that may come next, the one that stands earliest in `ranked` does. Places that
    wait in or behind a ring are left out: the result is shorter than `ranked` then.

    Args:
        ranked: every place once.
        links: between places in `ranked`; an empty end binds nothing.
    """
    rank = {place: number for number, place in enumerate(ranked)}
    waits_for = dict.fromkeys(ranked, 0)
    opens: dict[str, list[int]] = {}
    missing = [len(link.first) for link in links]
    for number, link in enumerate(links):
        if link.first:
            for place in link.first:
                opens.setdefault(place, []).append(number)
            for place in link.then:
                waits_for[place] += 1
    ready = [rank[place] for place in ranked if not waits_for[place]]
    result: list[str] = []
    while ready:
        place = ranked[heapq.heappop(ready)]
        result.append(place)
        for number in opens.get(place, ()):
            missing[number] -= 1
            if not missing[number]:
                for follower in links[number].then:
                    waits_for[follower] -= 1
                    if not waits_for[follower]:
                        heapq.heappush(ready, rank[follower])
    return result


def knotted(
    ranked: Sequence[str], links: Sequence[Link[T]], done: Collection[str]
) -> tuple[list[str], list[Link[T]]]:
    """What is left of the places and links when only those in or behind rings are looked at.

    Args:
        ranked: as given to `ordered`.
        links: as given to `ordered`.
        done: what `ordered` gave.
    """
    stuck = set(ranked).difference(done)
    return [place for place in ranked if place in stuck], _among(stuck, links)


def ring(ranked: Sequence[str], links: Sequence[Link[T]]) -> Ring[T] | None:
    """One ring among places that all wait in or behind one, each of its places once.

    Args:
        ranked: as given by `knotted`.
        links: as given by `knotted`; of several that would do, an earlier one is taken.

    Returns:
        The ring, beginning with its place that stands earliest in `ranked`; None if there is
        nothing.
    """
    if not ranked:
        return None
    rank = {place: number for number, place in enumerate(ranked)}
    holder: dict[str, tuple[str, Link[T]]] = {}
    for link in links:
        nearest = min(link.first, key=rank.__getitem__)
        for place in link.then:
            holder.setdefault(place, (nearest, link))
    walked: dict[str, int] = {}
    place = ranked[0]
    while place not in walked:
        walked[place] = len(walked)
        place = holder[place][0]
    forwards = list(walked)[walked[place] :][::-1]
    start = forwards.index(min(forwards, key=rank.__getitem__))
    around = forwards[start:] + forwards[:start]
    following = around[1:] + around[:1]
    return Ring(tuple(around), tuple(holder[later][1] for later in following))


def way(
    following: Mapping[str, Sequence[Link[T]]], start: Set[str], goal: Set[str]
) -> list[Link[T]] | None:
    """The links of a shortest way from one of `start` to one of `goal`; None where there is none.

    Args:
        following: by place, the links that have it in their `first`.
        start: places to set out from.
        goal: places to come to.
    """
    came_by: dict[Link[T], Link[T] | None] = {}
    seen = set(start)
    reached: list[tuple[str, Link[T] | None]] = [(place, None) for place in sorted(start)]
    for place, last in reached:
        for link in following[place]:
            if link in came_by:
                continue
            came_by[link] = last
            if not goal.isdisjoint(link.then):
                return _walked(link, came_by)
            reached += ((then, link) for then in sorted(link.then - seen))
            seen |= link.then
    return None


def _walked(end: Link[T], came_by: Mapping[Link[T], Link[T] | None]) -> list[Link[T]]:
    links: list[Link[T]] = []
    link: Link[T] | None = end
    while link is not None:
        links.append(link)
        link = came_by[link]
    return links[::-1]


def _among(places: Set[str], links: Sequence[Link[T]]) -> list[Link[T]]:
    """The links as far as they run between some places."""
    found: list[Link[T]] = []
    for link in links:
        first, then = link.first & places, link.then & places
        if first and then:
            found.append(Link(first, then, link.rule))
    return found
