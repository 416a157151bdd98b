"""Pictures of the main screens for the manual; run by hand after a screen has changed.

    python -m tests.pictures [FOLDER] [--language de] [--text 200]

One run draws 1280x720; with QT_SCALE_FACTOR=2 the window is 960x540 points, which is
1920x1080 pixels on a screen set to 200 %.
"""

import os
from argparse import ArgumentParser
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtWidgets import QApplication

from aligner.assessment import Stage
from aligner.drawing.theme import Appearance, scale_to_fit, theme_for
from aligner.window.application import open_demo
from aligner.window.language import speak_language
from aligner.window.main_window import MainWindow


def main():
    """Draw every stage in both themes."""
    parser = ArgumentParser()
    parser.add_argument("folder", nargs="?", type=Path, default=Path("resources/manual"))
    parser.add_argument("--language", default="en")
    parser.add_argument("--text", type=int, default=100, help="size of text, in per cent")
    asked = parser.parse_args()
    folder = asked.folder
    folder.mkdir(parents=True, exist_ok=True)
    application = QApplication([])
    application.setStyle("Fusion")
    speak_language(asked.language)
    is_double = os.environ.get("QT_SCALE_FACTOR") == "2"
    for appearance in (Appearance.LIGHT, Appearance.DARK):
        fit = scale_to_fit(960, 540) if is_double else 1.0
        theme = theme_for(appearance, fit * asked.text / 100)
        application.setPalette(theme.qt_palette())
        window = MainWindow(theme)
        open_demo(window)
        window.resize(*((960, 540) if is_double else (1280, 720)))
        window.show()
        for stage in Stage:
            window.go_to(stage)
            for _ in range(4):
                application.sendPostedEvents()
                application.processEvents()
            size = "-double" if is_double else ""
            window.grab().save(str(folder / f"{stage.value}-{appearance.value}{size}.png"))
        window.hide()


if __name__ == "__main__":
    main()
