"""Has no plugin of pydantic's looked for; import it before the first model is built.

The trap: before it builds its first model, pydantic reads the description of every distribution
that is installed, and imports a mail parser to do so. That costs the start of the window a
twentieth, and a plugin found there would have its hands in every job that is read.
"""

from __future__ import annotations

import sys
from types import ModuleType

_finder = ModuleType("pydantic.plugin._loader")
vars(_finder)["get_plugins"] = tuple  # asked for the plugins, it gives none
sys.modules.setdefault(_finder.__name__, _finder)
