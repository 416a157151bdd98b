"""Pictures of the program for its manual; run by hand after a screen has changed.

    python -m tests.pictures                                 those of the manual, every language
    python -m tests.pictures DIR --language de --text 200    to look at

One run draws 1280x720; with QT_SCALE_FACTOR=2 the window is 960x540 points, which is
1920x1080 pixels on a screen set to 200 %.
"""

import os
from argparse import ArgumentParser
from pathlib import Path
from tempfile import TemporaryDirectory

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication

from aligner.assessment import Stage
from aligner.drawing.theme import Appearance, scale_to_fit, theme_for
from aligner.language import LANGUAGES
from aligner.window.application import open_demo
from aligner.window.language import speak_language
from aligner.window.main_window import MainWindow

MANUAL = Path("resources/manual")
IS_DOUBLE = os.environ.get("QT_SCALE_FACTOR") == "2"
SIZE = (960, 540) if IS_DOUBLE else (1280, 720)


def main():
    """Draw every stage, and the pages beside them, in both themes."""
    parser = ArgumentParser()
    parser.add_argument("folder", nargs="?", type=Path)
    parser.add_argument("--language", choices=LANGUAGES, default="en")
    parser.add_argument("--text", type=int, default=100, help="size of text, in per cent")
    asked = parser.parse_args()
    application = QApplication([])
    application.setStyle("Fusion")
    if asked.folder is not None:
        draw(asked.folder, asked.language, asked.text)
        return
    for language in LANGUAGES:
        draw(MANUAL if language == "en" else MANUAL / language, language)


def draw(folder, language, text=100):
    """Draw all of it into a folder."""
    folder.mkdir(parents=True, exist_ok=True)
    speak_language(language)
    for appearance in (Appearance.LIGHT, Appearance.DARK):
        fit = scale_to_fit(*SIZE) if IS_DOUBLE else 1.0
        theme = theme_for(appearance, fit * text / 100)
        QApplication.instance().setPalette(theme.qt_palette())
        with TemporaryDirectory() as kept:
            settings = QSettings(f"{kept}/settings.ini", QSettings.Format.IniFormat)
            settings.setValue("folder", "demo/history")  # as it is called, not where it lies
            window = MainWindow(theme, settings=settings)
            open_demo(window)
            window.resize(*SIZE)
            window.show()
            for name, show in views(window).items():
                show()
                settle()
                size = "-double" if IS_DOUBLE else ""
                window.grab().save(str(folder / f"{name}-{appearance.value}{size}.png"), quality=0)
            window.hide()


def views(window):
    """What is shown in which picture; the names are those of the manual's pages."""

    def wrenches():
        window.go_to(Stage.TIGHTEN)
        window.page(Stage.TIGHTEN).door.wrenches.click()

    def how_it_is_measured():
        window.go_to(Stage.ALIGN)
        window.show_measuring()

    stages = {stage.value: lambda stage=stage: window.go_to(stage) for stage in Stage}
    return stages | {
        "wrenches": wrenches,
        "history": window.show_history,
        "bench": lambda: window.show_bench_of(Stage.TIGHTEN),
        "start": how_it_is_measured,
    }


def settle():
    """Let every part have its size; one may lead to the next."""
    for _ in range(20):
        QApplication.sendPostedEvents()
        QApplication.processEvents()


if __name__ == "__main__":
    main()
