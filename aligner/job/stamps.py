"""The time as the log keeps it: to the second, with the offset from UTC."""

from __future__ import annotations

from datetime import datetime


def now_here() -> datetime:
    """The time now on this machine, with its offset from UTC."""
    return datetime.now().astimezone()
