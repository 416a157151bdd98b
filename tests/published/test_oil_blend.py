"""Blends of oils against a published worked figure; the source beside the number.

ASTM D7152 prints worked figures, but none was seen in a public page: what stands here is another
published rule's figure, with the 1 % that the two rules are known to differ by.
"""

import pytest

from aligner.legs import blend_for_target, blend_viscosity_cst


def test_a_published_blend_of_three_oils_by_another_rule_agrees_within_one_per_cent():
    # 46, 100 and 10 cSt as 0.5, 0.3 and 0.2 by volume: 39.23 cSt by the Refutas rule
    # (codingace.net, viscosity mixing rule, example data table; seen (secondary)).
    first_two = blend_viscosity_cst(46.0, 100.0, 0.5 / 0.8)
    assert blend_viscosity_cst(first_two, 10.0, 0.8) == pytest.approx(39.23, rel=0.01)


def test_the_same_blend_asked_for_the_other_way_round_gives_its_shares_back():
    first_two = blend_viscosity_cst(46.0, 100.0, 0.5 / 0.8)
    made = blend_for_target(first_two, 10.0, 39.23, 1000.0)
    assert made.first_ml == pytest.approx(800.0, abs=8.0)
