"""The weighted mean and its test of agreement, against scipy, numpy and a published table."""

import math

import numpy as np
import pytest
from hypothesis import example, given
from hypothesis import strategies as st
from scipy import stats  # type: ignore[import-untyped]  # scipy has no types

from aligner.errors import AlignerError
from aligner.geometry import chi_square_survival, weighted_turn

pairs = st.lists(st.tuples(st.floats(-5, 5), st.floats(0.005, 0.5)), min_size=2, max_size=6)


def named(turns: list[float], uncertainties: list[float]) -> list[str]:
    return [f"pair {number}" for number, _ in enumerate(zip(turns, uncertainties, strict=True))]


# 5 % points of chi-square as printed in a table of the distribution (seen).
@pytest.mark.parametrize(
    ("degrees", "critical"),
    [(1, 3.84146), (2, 5.99146), (3, 7.81473), (4, 9.48773), (5, 11.07050)],
)
def test_chi_square_survival_gives_the_printed_five_per_cent_points(
    degrees: int, critical: float
) -> None:
    assert chi_square_survival(critical, degrees) == pytest.approx(0.05, abs=5e-7)


@given(chi_square=st.floats(0, 300), degrees=st.integers(1, 40))
def test_chi_square_survival_is_scipys_into_the_tail(chi_square: float, degrees: int) -> None:
    assert chi_square_survival(chi_square, degrees) == pytest.approx(
        float(stats.chi2.sf(chi_square, degrees)), rel=1e-11
    )


@pytest.mark.parametrize(("chi_square", "degrees"), [(-1.0, 1), (math.nan, 1), (1.0, 0)])
def test_chi_square_survival_refuses_what_cannot_be(chi_square: float, degrees: int) -> None:
    with pytest.raises(AlignerError, match="chi-square"):
        chi_square_survival(chi_square, degrees)


def test_an_endless_chi_square_leaves_no_chance() -> None:
    assert chi_square_survival(math.inf, 3) == 0
    assert chi_square_survival(0.0, 3) == 1


@given(pairs=pairs)
@example(pairs=[(0.0, 0.375), (2.2250738585e-313, 0.5)])
def test_mean_uncertainty_and_chi_square_are_those_of_weighted_least_squares(
    pairs: list[tuple[float, float]],
) -> None:
    turns, uncertainties = [turn for turn, _ in pairs], [u for _, u in pairs]
    # Linear, so that no step of differences is lost beside a turn next to nothing.
    (fitted,), ((variance,),) = np.polyfit(
        np.arange(len(pairs)), turns, 0, w=1 / np.array(uncertainties), cov="unscaled"
    )

    made = weighted_turn(turns, uncertainties, named(turns, uncertainties))

    assert made.turn_deg == pytest.approx(fitted, abs=1e-6)
    assert made.turn_deg == pytest.approx(
        np.average(turns, weights=1 / np.square(uncertainties)), abs=1e-12
    )
    assert made.uncertainty_deg == pytest.approx(math.sqrt(variance), rel=1e-5)
    assert made.residuals_deg == pytest.approx(np.subtract(turns, made.turn_deg), abs=1e-12)
    chi_square = float(np.sum(np.square(made.residuals_deg) / np.square(uncertainties)))
    assert made.chi_square == pytest.approx(chi_square, rel=1e-9)
    assert made.consistency_p == pytest.approx(
        stats.chi2.sf(chi_square, len(pairs) - 1), rel=1e-8, abs=1e-300
    )


@given(pairs=pairs)
def test_normalized_residuals_are_over_the_documented_deviation(
    pairs: list[tuple[float, float]],
) -> None:
    turns, uncertainties = [turn for turn, _ in pairs], [u for _, u in pairs]

    made = weighted_turn(turns, uncertainties, named(turns, uncertainties))

    # A second way: a residual is made of all the turns, and its variance is that of the sum.
    spread = np.diag(np.square(uncertainties))
    shares = (1 / spread.diagonal()) / np.sum(1 / spread.diagonal())
    made_of = np.eye(len(turns)) - np.tile(shares, (len(turns), 1))
    deviations = np.sqrt(np.diag(made_of @ spread @ made_of.T))
    expected = made_of @ np.array(turns) / deviations
    assert made.normalized_residuals == pytest.approx(list(expected), rel=1e-6, abs=1e-9)


def test_normalized_residuals_scatter_like_a_standard_normal_and_p_evenly() -> None:
    rng = np.random.default_rng(20)
    uncertainties = [0.02, 0.05, 0.11]
    draws = rng.normal(0.7, uncertainties, size=(4000, 3))
    made = [weighted_turn(list(draw), uncertainties, ["a", "b", "c"]) for draw in draws]

    normalized = np.array([one.normalized_residuals for one in made], dtype=float)
    means = np.array([one.turn_deg for one in made])
    chances = np.array([one.consistency_p for one in made], dtype=float)

    assert normalized.std(axis=0) == pytest.approx([1, 1, 1], abs=0.04)
    assert means.std() == pytest.approx(made[0].uncertainty_deg, rel=0.04)
    # Seeded, so this holds or fails for good: p is uniform where the pairs do agree.
    assert stats.kstest(chances, "uniform").pvalue > 0.01


def test_the_pair_that_disagrees_is_named() -> None:
    made = weighted_turn([0.50, 0.52, 1.40], [0.05, 0.05, 0.06], ["stops", "lugs", "tank mounts"])

    assert made.is_contradicted
    assert made.odd_pair == "tank mounts"


def test_pairs_that_agree_name_nobody() -> None:
    made = weighted_turn([0.50, 0.52, 0.47], [0.05, 0.05, 0.06], ["stops", "lugs", "tank mounts"])

    assert not made.is_contradicted
    assert made.consistency_p is not None
    assert made.consistency_p > 0.05
    assert made.odd_pair is None


def test_of_two_pairs_that_disagree_neither_can_be_named() -> None:
    made = weighted_turn([0.5, 1.4], [0.05, 0.2], ["stops", "lugs"])

    assert made.is_contradicted
    assert made.odd_pair is None
    first, second = made.normalized_residuals
    assert first is not None
    assert second is not None
    assert first == pytest.approx(-second)


def test_one_pair_is_its_own_mean_and_agrees_with_nothing() -> None:
    made = weighted_turn([0.5], [0.05], ["stops"])

    assert (made.turn_deg, made.uncertainty_deg) == (0.5, 0.05)
    assert made.consistency_p is None
    assert made.normalized_residuals == (None,)
    assert not made.is_contradicted


def test_a_pair_with_nearly_all_the_weight_keeps_a_meaningful_normalized_residual() -> None:
    made = weighted_turn([0.5, 0.9], [1e-9, 0.1], ["fine", "rough"])

    assert made.normalized_residuals == pytest.approx((-4, 4), rel=1e-6)


@given(pairs=pairs, scale=st.floats(0.1, 10))
def test_mirrored_or_scaled_turns_give_a_mirrored_or_scaled_mean_and_the_same_agreement(
    pairs: list[tuple[float, float]], scale: float
) -> None:
    turns, uncertainties = [turn for turn, _ in pairs], [u for _, u in pairs]
    names = named(turns, uncertainties)
    made = weighted_turn(turns, uncertainties, names)

    mirrored = weighted_turn(
        [-scale * turn for turn in turns], [scale * u for u in uncertainties], names
    )

    assert mirrored.turn_deg == pytest.approx(-scale * made.turn_deg, abs=1e-12)
    assert mirrored.uncertainty_deg == pytest.approx(scale * made.uncertainty_deg)
    assert mirrored.chi_square == pytest.approx(made.chi_square, rel=1e-8, abs=1e-12)


@pytest.mark.parametrize("uncertainty", [0.0, -0.1, math.nan])
def test_a_pair_without_uncertainty_is_refused_by_its_name(uncertainty: float) -> None:
    with pytest.raises(AlignerError) as refusal:
        weighted_turn([0.5, 0.6], [0.05, uncertainty], ["stops", "lugs"])

    assert refusal.value.where == "lugs"


@pytest.mark.parametrize(("turns", "names"), [([], []), ([0.5], ["stops", "lugs"])])
def test_lists_that_do_not_match_are_refused(turns: list[float], names: list[str]) -> None:
    with pytest.raises(AlignerError, match="one of each for every pair"):
        weighted_turn(turns, [0.05] * len(turns), names)
