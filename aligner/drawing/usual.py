"""Usual proportions, to draw by where the sheet gives no dimension.

The trap: a dimension that is missing or mistyped must still leave a picture. So each is kept
within bounds, and these stand in for those that are not there; no figure is ever taken from them.
"""

from __future__ import annotations

BRACKET_OFFSET_MM = 35.0


def leg_spacing_mm(given: float | None) -> float:
    """Centre to centre of the legs."""
    return kept(given, 200.0, 100.0, 400.0)


def bracket_spacing_mm(given: float | None) -> float:
    """From the lower bracket to the top one."""
    return kept(given, 190.0, 80.0, 400.0)


def tube_mm(given: float | None) -> float:
    """Outside diameter of the tubes in the brackets."""
    return kept(given, 38.0, 22.0, 65.0)


def kept(given: float | None, otherwise: float, low: float, high: float) -> float:
    """A dimension to draw by: kept between bounds, so that a slip still leaves a picture."""
    return min(max(given, low), high) if given is not None else otherwise
