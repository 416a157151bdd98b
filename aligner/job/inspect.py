"""What was found when the parts were looked at and measured."""

from __future__ import annotations

from aligner.sheet.model import Part


class Inspect(Part):
    """The findings of a job."""
