"""The order against networkx, an independent graph library: order, rings, what gives way.

networkx 3: lexicographical_topological_sort, is_directed_acyclic_graph, simple_cycles,
descendants (its documented meaning; the library is run here, nothing is copied from it).
"""

from __future__ import annotations

import networkx as nx
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from aligner.fastening.order import Link, knotted, ordered, ring
from aligner.fastening.precedence import RingOfRules, precedence
from aligner.fastening.rules import Rule

PLACES = [f"place {letter}" for letter in "abcdefghi"]
some_places = st.frozensets(st.sampled_from(PLACES), min_size=1, max_size=4)


@st.composite
def link_lists(draw: st.DrawFn, most: int = 9) -> list[tuple[frozenset[str], frozenset[str]]]:
    found = []
    for _ in range(draw(st.integers(0, most))):
        first = draw(some_places)
        then = draw(some_places) - first
        if then:
            found.append((first, then))
    return found


def as_links(ends, named="rule"):
    return [
        Link(first, then, Rule("before", f"{named} {number}", "", "x"))
        for number, (first, then) in enumerate(ends)
    ]


def as_graph(links):
    graph = nx.DiGraph()
    graph.add_nodes_from(PLACES)
    graph.add_edges_from((a, b) for link in links for a in link.first for b in link.then)
    return graph


def leads_into_no_ring(graph):
    """Every place that neither is in a ring nor waits behind one."""
    in_ring = {
        place
        for component in nx.strongly_connected_components(graph)
        if len(component) > 1
        for place in component
    }
    behind = set().union(*(nx.descendants(graph, place) for place in in_ring))
    return set(graph) - in_ring - behind


@given(link_lists())
def test_the_order_is_the_lexicographical_topological_one(ends):
    links = as_links(ends)
    graph = as_graph(links)
    reached = graph.subgraph(leads_into_no_ring(graph))

    order = ordered(PLACES, links)

    assert order == list(nx.lexicographical_topological_sort(reached, key=PLACES.index))
    assert (len(order) == len(PLACES)) == nx.is_directed_acyclic_graph(graph)


@given(link_lists())
def test_a_ring_is_one_of_the_simple_cycles_and_there_is_one_exactly_when_there_are_any(ends):
    links = as_links(ends)
    graph = as_graph(links)

    found = ring(*knotted(PLACES, links, ordered(PLACES, links)))

    if nx.is_directed_acyclic_graph(graph):
        assert found is None
        return
    assert found is not None
    around = list(zip(found.places, (*found.places[1:], found.places[0]), strict=True))
    assert len(set(found.places)) == len(found.places) >= 2
    assert nx.is_simple_path(graph, list(found.places))
    assert all(graph.has_edge(*pair) for pair in around)
    for (before, after), link in zip(around, found.links, strict=True):
        assert before in link.first
        assert after in link.then


@given(link_lists(5))
def test_small_rings_are_among_all_simple_cycles(ends):
    links = as_links(ends)
    found = ring(*knotted(PLACES, links, ordered(PLACES, links)))
    if found is not None:
        start = found.places.index(min(found.places))
        turned = (*found.places[start:], *found.places[:start])
        cycles = nx.simple_cycles(as_graph(links), length_bound=len(turned))
        rotated = {(*c[c.index(min(c)) :], *c[: c.index(min(c))]) for c in cycles}
        assert turned in rotated


@settings(max_examples=200)
@given(link_lists(6), link_lists(8))
def test_default_rules_give_way_as_a_greedy_choice_from_the_firmest_down_says(own, usual):
    sheet, default = as_links(own, "sheet"), as_links(usual, "default")
    graph = as_graph(sheet)
    if not nx.is_directed_acyclic_graph(graph):
        with pytest.raises(RingOfRules) as refused:
            precedence(PLACES, sheet, default)
        assert set(refused.value.rules) <= {link.rule for link in sheet}
        return
    given_way = {}
    turned = {(b, a) for link in sheet for a in link.first for b in link.then}
    for link in default:
        pairs = {(a, b) for a in link.first for b in link.then}
        trial = graph.copy()
        trial.add_edges_from(pairs - turned)
        acyclic = nx.is_directed_acyclic_graph(trial)
        if acyclic:
            graph = trial
        if not acyclic or pairs & turned:
            given_way[link.rule] = not acyclic or pairs <= turned

    found = precedence(PLACES, sheet, default)

    assert {one.rule: one.wholly for one in found.overridden} == given_way
    assert found.order == tuple(nx.lexicographical_topological_sort(graph, key=PLACES.index))
    if nx.is_directed_acyclic_graph(as_graph(default)):
        assert all(one.by for one in found.overridden)
