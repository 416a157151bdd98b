"""What every part of a document has in common: it is a value, and it knows its own fields."""

from __future__ import annotations

from typing import Any, Self

from pydantic import BaseModel, ConfigDict


class Part(BaseModel):
    """A part of a document: immutable, and refusing a field it does not know."""

    model_config = ConfigDict(frozen=True, extra="forbid", strict=True, defer_build=True)

    def with_changes(self, **changes: Any) -> Self:
        """The same part with some fields other than they were, checked like a new one.

        Raises:
            pydantic.ValidationError: a change does not fit its field.
        """
        unchanged = {name: getattr(self, name) for name in self.model_fields_set}
        return type(self).model_validate({**unchanged, **changes})

    def __deepcopy__(self, memo: dict[int, Any] | None = None) -> Self:
        """The part itself: it is a value, and defaults need not be copied for every job."""
        return self
