from __future__ import annotations

import random

from hypothesis import given
from hypothesis import strategies as st

from aligner.fastening.order import Link, knotted, ordered, ring, way


def link(first: str, then: str) -> Link[str]:
    """A link between places named by single letters."""
    return Link(frozenset(first), frozenset(then), f"{first}{then}")


def test_without_links_the_given_order_stays():
    assert ordered("abc", []) == list("abc")


def test_a_link_moves_no_more_than_it_must():
    assert ordered("abcd", [link("d", "b")]) == list("acdb")


def test_many_before_many_waits_for_all_of_them():
    assert ordered("abcd", [link("cd", "ab")]) == list("cdab")


def test_a_link_with_an_empty_end_binds_nothing():
    assert ordered("ab", [link("", "a"), link("b", "")]) == list("ab")


def test_what_waits_in_a_ring_or_behind_it_is_left_out():
    links = [link("a", "b"), link("b", "c"), link("c", "b"), link("c", "d")]
    assert ordered("abcde", links) == list("ae")


def test_the_ring_is_named_without_what_leads_to_it_or_waits_behind_it():
    links = [link("a", "b"), link("b", "c"), link("c", "b"), link("c", "d")]
    found = ring(*knotted("abcde", links, ordered("abcde", links)))
    assert found is not None
    assert found.places == ("b", "c")
    assert [one.rule for one in found.links] == ["bc", "cb"]


def test_there_is_no_ring_in_an_order():
    links = [link("a", "b")]
    assert ring(*knotted("ab", links, ordered("ab", links))) is None


def test_a_way_is_as_short_as_it_can_be():
    following = {"a": [link("a", "b"), link("a", "c")], "b": [link("b", "d")], "c": [], "d": []}
    following["d"] = [link("d", "e")]
    found = way(following, {"a"}, {"e"})
    assert found is not None
    assert [one.rule for one in found] == ["ab", "bd", "de"]
    assert way(following, {"c"}, {"a"}) is None


@given(st.lists(st.tuples(st.integers(0, 19), st.integers(0, 19)), max_size=60), st.randoms())
def test_the_order_respects_every_link_and_does_not_depend_on_the_order_of_links(pairs, rng):
    names = [chr(ord("a") + number) for number in range(20)]
    links = [link(names[min(pair)], names[max(pair)]) for pair in pairs if pair[0] != pair[1]]
    ranked = names[::-1]

    order = ordered(ranked, links)
    shuffled = random.Random(rng.random()).sample(links, len(links))

    assert sorted(order) == names
    assert all(
        order.index(before) < order.index(after)
        for one in links
        for before in one.first
        for after in one.then
    )
    assert ordered(ranked, shuffled) == order
