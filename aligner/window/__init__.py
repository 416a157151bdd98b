"""Everything that needs Qt: stages, drawing, widgets, theme. Nothing here computes.

The trap: once Qt is imported it reads the source of every module imported after it, to see
whether that one uses Qt. So what the window shows is imported before Qt is.
"""

import aligner.assessment
import aligner.storage.document_file  # noqa: F401
