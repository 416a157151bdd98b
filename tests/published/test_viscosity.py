"""Viscosity against published values; each source beside its number."""

import math

import pytest
from scipy.optimize import brentq

from aligner.legs import LegError, blend_viscosity_cst


def on_the_line(at_40, at_100, temperature_c, zero_c=273.15):
    """An oil at another temperature, by the scale of double logarithms that a blend is made on.

    ASTM D341 has them on a straight line over log10(T): so at any T they are those of a blend of
    the oil at 40 °C with itself at 100 °C, by the share of the way between the two.
    """
    low, here, high = (math.log10(t + zero_c) for t in (40, temperature_c, 100))
    return blend_viscosity_cst(at_40, at_100, (high - here) / (high - low))


def test_astm_d341_viscosity_at_80_degrees_of_the_published_sheet():
    # A published calculation sheet (scribd 361017004, "Viscosity vs Temperature Calculator";
    # seen): 32 cSt at 40 °C, 5.4 cSt at 100 °C, T = C + 273.
    assert on_the_line(32, 5.4, 80, zero_c=273) == pytest.approx(8.5, abs=0.05)


@pytest.mark.parametrize(
    ("at_40", "at_100", "at_60"),
    [
        # Table in the README of the open library sherzodr/libvisc (seen): the same
        # Ubbelohde-Walther line with another additive constant than 0.7, hence 1.2 %.
        pytest.param(30, 4.24, 13.1064, id="naphthenic spindle oil"),
        pytest.param(30, 5.23, 14.525, id="paraffinic spindle oil"),
        pytest.param(120, 8, 36.9947, id="medium solvent extract"),
        pytest.param(30, 5.81, 15.2728, id="ester oil"),
        pytest.param(70, 11.1, 32.9198, id="multigrade motor oil"),
        pytest.param(68, 8.6, 28.6455, id="68 cSt oil"),
    ],
)
def test_another_implementation_of_the_walther_line_agrees(at_40, at_100, at_60):
    assert on_the_line(at_40, at_100, 60) == pytest.approx(at_60, rel=0.012)


@pytest.mark.parametrize("cst", [0.5, 0.9, 1.5, 2.0, 5.0, 22.0])
def test_the_standard_s_own_inverse_agrees_within_its_accuracy(cst):
    # ASTM D341: v = (Z-0.7) - exp(-0.7487 - 3.295 q + 0.6119 q^2 - 0.3193 q^3), q = Z - 0.7
    # (formula seen in user guides and several public programs); an approximation near 1 %.
    z = cst + 0.7 + math.exp(-1.47 - 1.84 * cst - 0.51 * cst**2)
    q = z - 0.7
    approximate = q - math.exp(-0.7487 - 3.295 * q + 0.6119 * q**2 - 0.3193 * q**3)
    assert blend_viscosity_cst(cst, cst, 0.5) == pytest.approx(cst, rel=1e-12)
    assert approximate == pytest.approx(cst, rel=0.01)


@pytest.mark.parametrize(
    ("cst", "is_in"), [(0.20, False), (0.21, True), (2e7, True), (2.01e7, False)]
)
def test_the_standard_holds_from_0_21_to_20_000_000_cst(cst, is_in):
    # ASTM D341, scope: kinematic viscosities from 0.21 to 2e7 cSt (from memory).
    if is_in:
        assert blend_viscosity_cst(cst, cst, 0.5) == pytest.approx(cst, rel=1e-9)
    else:
        with pytest.raises(LegError, match=r"0\.21 to 20,000,000 cSt"):
            blend_viscosity_cst(cst, cst, 0.5)


@pytest.mark.parametrize(("first", "second"), [(0.3, 0.9), (0.5, 5.0), (1.0, 22.0)])
def test_thin_oils_blend_by_the_standard_s_own_equation(first, second):
    # ASTM D341 as above, here by a root finder: Z = v + 0.7 + exp(-1.47 - 1.84 v - 0.51 v^2).
    # ASTM D7152: the double logarithms of both oils are mixed by their shares.
    def z_of(v):
        return v + 0.7 + math.exp(-1.47 - 1.84 * v - 0.51 * v**2)

    def double_logarithm(v):
        return math.log10(math.log10(z_of(v)))

    middle = (double_logarithm(first) + double_logarithm(second)) / 2
    mixed = brentq(lambda v: double_logarithm(v) - middle, first, second, xtol=1e-12)
    assert blend_viscosity_cst(first, second, 0.5) == pytest.approx(mixed, rel=1e-9)


BLENDS = [
    # Computed from the scheme of ASTM D7152; no published example was seen.
    pytest.param(0.5, 15, 46, 25.177, id="15 and 46"),
    pytest.param(0.6, 5, 20, 8.081, id="5 and 20"),
    pytest.param(0.5, 10, 32, 17.026, id="10 and 32"),
    pytest.param(0.5, 32, 32, 32.0, id="an oil with itself"),
]


@pytest.mark.parametrize(("share", "first", "second", "cst"), BLENDS)
def test_astm_d7152_blend(share, first, second, cst):
    assert blend_viscosity_cst(first, second, share) == pytest.approx(cst, abs=0.001)


@pytest.mark.parametrize(("share", "first", "second", "_cst"), BLENDS)
def test_the_refutas_blending_numbers_agree_within_one_per_cent(share, first, second, _cst):
    # VBN = 14.534 ln(ln(v + 0.8)) + 10.975, after Maples, Petroleum Refinery Process Economics,
    # 2nd ed. (seen (secondary): crazyengineers.com, calculator.academy). An independent rule.
    def number(v):
        return 14.534 * math.log(math.log(v + 0.8)) + 10.975

    mixed = share * number(first) + (1 - share) * number(second)
    refutas = math.exp(math.exp((mixed - 10.975) / 14.534)) - 0.8
    assert blend_viscosity_cst(first, second, share) == pytest.approx(refutas, rel=0.01)
