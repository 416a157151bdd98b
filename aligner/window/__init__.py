"""Everything that needs Qt: stages, drawing, widgets, theme. Nothing here computes.

The trap: Qt puts its own import in the place of Python's, and that one reads the source of every
module imported after it, to see whether it asks for a feature of Qt's. None here does: so
Python's own is put back, and the window is on the screen a tenth sooner.
"""

import builtins

import PySide6.QtCore  # noqa: F401

builtins.__import__ = getattr(builtins, "__orig_import__", builtins.__import__)
