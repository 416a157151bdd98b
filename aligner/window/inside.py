"""A text that begins a sentence elsewhere, put inside one."""

from __future__ import annotations

from aligner.language import spoken


def inside(text: str) -> str:
    """English goes on small there; another language may begin a noun large, so it stays."""
    return text[:1].lower() + text[1:] if spoken() == "en" else text
