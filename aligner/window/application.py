"""Starting the window."""

from __future__ import annotations

import gc
import sys
from pathlib import Path

from PySide6.QtCore import QByteArray, QSettings, QTimer
from PySide6.QtWidgets import QApplication

from aligner.data_files import demo as demo_document
from aligner.drawing.theme import scale_to_fit, theme_for
from aligner.storage.places import recovery_folder
from aligner.window.language import language_for, speak_language
from aligner.window.main_window import MainWindow
from aligner.window.preferences import preferences_in


def run_window(path: Path | None, *, demo: bool = False) -> int:
    """Open the window, on a job's file or on the demo job, and stay until it is closed.

    Returns:
        The exit status of the event loop, 0 when the window was closed.
    """
    # The style as an argument: asked for later, it is made twice, and as a Python object too.
    application = QApplication([*sys.argv[:1], "-style", "Fusion"])
    application.setApplicationName("Aligner")
    application.setOrganizationName("Aligner")
    settings = QSettings()
    screen = application.primaryScreen().availableGeometry()
    chosen = preferences_in(settings)
    speak_language(language_for(chosen.language))
    fit = scale_to_fit(screen.width(), screen.height())
    theme = theme_for(chosen.appearance, fit * chosen.text_size / 100)
    application.setPalette(theme.qt_palette())
    window = MainWindow(
        theme, chosen.units, settings=settings, recovery=recovery_folder(), preferences=chosen
    )
    geometry = settings.value("geometry")
    if isinstance(geometry, QByteArray):  # an edited settings file may hold anything
        window.restoreGeometry(geometry)
    if path is not None:
        window.open_path(path)
    elif demo:
        open_demo(window)
    window.show()
    QTimer.singleShot(0, window.offer_recovery)  # the window is painted first
    QTimer.singleShot(0, _collect_from_here)
    return application.exec()


def _collect_from_here() -> None:
    """Have rubbish collected from here on, among what is made from here on."""
    gc.freeze()
    gc.enable()


def open_demo(window: MainWindow) -> None:
    """Show the demo job as a new one, so that saving it never changes the installed file."""
    from aligner.storage.document_file import load_job

    job, _ = load_job(demo_document("fellside-left-leg-high.job.json"))
    window.show_job(job)
