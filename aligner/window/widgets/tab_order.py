"""Where Tab goes, whatever was made last."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import pairwise

from PySide6.QtWidgets import QWidget


def walk_by_tab(stops: Iterable[QWidget]) -> None:
    """Have Tab go from each to the next, as the eye does."""
    for before, after in pairwise(stops):
        QWidget.setTabOrder(before, after)
