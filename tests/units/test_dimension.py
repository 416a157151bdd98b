"""The factor of every unit, against pint's own definitions, and at what cost it is had."""

import subprocess
import sys

import pint
import pytest

from aligner.units.dimension import EVERY_DIMENSION
from aligner.units.unit import factor

REGISTRY = pint.UnitRegistry(cache_folder=None)
EVERY_UNIT = [(dimension, unit) for dimension in EVERY_DIMENSION for unit in dimension.units]


@pytest.mark.parametrize(
    ("dimension", "unit"), EVERY_UNIT, ids=[f"{d.name}, {u.symbol}" for d, u in EVERY_UNIT]
)
def test_the_factor_of_every_unit_is_pints(dimension, unit):
    """Pint's definitions are a second source, made apart from this program."""
    own = dimension.units[0].pint_name
    from_pint = REGISTRY.Quantity(1.0, unit.pint_name).to(own).magnitude

    assert factor(dimension, unit.symbol) == pytest.approx(from_pint, rel=1e-14)


def test_a_sheet_in_foreign_units_is_read_without_loading_pint():
    """Pint costs more than the whole of Qt's start."""
    script = (
        "import sys\n"
        "from aligner.units.dimension import EVERY_DIMENSION\n"
        "from aligner.units.unit import factor\n"
        "for dimension in EVERY_DIMENSION:\n"
        "    for unit in dimension.units:\n"
        "        factor(dimension, unit.symbol)\n"
        "sys.exit('pint' in sys.modules)\n"
    )

    assert subprocess.run([sys.executable, "-c", script], check=False).returncode == 0
