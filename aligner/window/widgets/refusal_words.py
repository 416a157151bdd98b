"""A refusal as a sentence, for a line of the window."""

from __future__ import annotations

from aligner.errors import AlignerError
from aligner.language import begun


def sentence(error: AlignerError) -> str:
    """A refusal as a sentence; a field's path keeps its own letters."""
    text = str(error)
    return (text if error.where else begun(text)) + "."
