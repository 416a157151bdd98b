"""Viscosity and blends: properties and refusals (published values: tests/published)."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from aligner.legs import (
    LegError,
    blend_for_target,
    blend_viscosity_cst,
)

oils = st.floats(2.5, 200)
shares = st.floats(0, 1)


@given(oils, shares)
def test_an_oil_blended_with_itself_stays_what_it_is(cst, share):
    assert blend_viscosity_cst(cst, cst, share) == pytest.approx(cst, rel=1e-12)


@given(oils, oils, shares)
def test_a_blend_lies_between_its_oils_and_does_not_mind_their_order(first, second, share):
    blend = blend_viscosity_cst(first, second, share)
    assert min(first, second) * (1 - 1e-12) <= blend <= max(first, second) * (1 + 1e-12)
    assert blend == pytest.approx(blend_viscosity_cst(second, first, 1 - share), rel=1e-12)


@given(st.floats(3, 30), st.floats(1.2, 5), st.floats(0, 0.9), st.floats(0.01, 0.1))
def test_more_of_the_thicker_oil_makes_a_thicker_blend(thin, factor, share, more):
    here = blend_viscosity_cst(thin * factor, thin, share)
    assert blend_viscosity_cst(thin * factor, thin, share + more) > here


@given(st.floats(3, 30), st.floats(1.2, 5), st.floats(0, 1), st.floats(100, 2000))
def test_the_recipe_makes_the_target_and_fills_the_total(thin, factor, where, total):
    thick = thin * factor
    target = thin + where * (thick - thin)
    recipe = blend_for_target(thin, thick, target, total)
    assert blend_viscosity_cst(thin, thick, recipe.first_share) == pytest.approx(target, rel=1e-9)
    assert recipe.first_ml + recipe.second_ml == pytest.approx(total)
    assert recipe.first_share + recipe.second_share == pytest.approx(1)


def test_the_recipe_is_where_a_root_finder_sees_the_blend_reach_the_target():
    """A second way: D7152's sum written out and solved numerically."""

    def double_logarithm(v):
        return math.log10(math.log10(v + 0.7 + math.exp(-1.47 - 1.84 * v - 0.51 * v * v)))

    def excess(share):
        mixed = share * double_logarithm(15) + (1 - share) * double_logarithm(46)
        return mixed - double_logarithm(22)

    share = brentq(excess, 0, 1, xtol=1e-14)
    recipe = blend_for_target(15, 46, 22, 600)
    assert recipe.first_share == pytest.approx(share, abs=1e-12)
    assert recipe.first_ml == pytest.approx(600 * share)


@pytest.mark.parametrize(
    ("target", "first_ml"), [pytest.param(15, 500, id="thin"), pytest.param(46, 0, id="thick")]
)
def test_a_target_that_is_one_of_the_oils_takes_that_oil_alone(target, first_ml):
    recipe = blend_for_target(15, 46, target, 500)
    assert (recipe.first_ml, recipe.second_ml) == (first_ml, 500 - first_ml)


def test_two_like_oils_are_not_mixed():
    assert blend_for_target(22, 22, 22, 500).first_ml == 500


@pytest.mark.parametrize(
    ("target", "words"),
    [
        pytest.param(60, "60 cSt cannot be mixed.*from 15 to 46 cSt or a thicker oil", id="thick"),
        pytest.param(10, "10 cSt cannot be mixed.*from 15 to 46 cSt or a thinner oil", id="thin"),
        pytest.param(0, "wanted viscosity: 0 cSt", id="none"),
    ],
)
def test_a_target_outside_the_two_oils_is_refused_with_what_would_do(target, words):
    with pytest.raises(LegError, match=words):
        blend_for_target(46, 15, target, 500)


@pytest.mark.parametrize(
    ("ask", "words"),
    [
        pytest.param(lambda: blend_viscosity_cst(15, 46, 1.2), "from 0 to 1", id="share"),
        pytest.param(lambda: blend_viscosity_cst(15, 0.1, 0.5), "second oil: 0.1 cSt", id="water"),
        pytest.param(lambda: blend_for_target(15, 46, 22, 0), "oil wanted in all", id="total"),
        pytest.param(lambda: blend_viscosity_cst(math.inf, 46, 0.5), "inf is not", id="inf"),
    ],
)
def test_what_no_oil_can_be_is_refused_in_words(ask, words):
    with pytest.raises(LegError, match=words):
        ask()
