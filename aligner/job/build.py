"""What went into each leg, and how the springs and the head bearing were set."""

from __future__ import annotations

from aligner.sheet.model import Part


class Build(Part):
    """What is set while the front end is built up."""
