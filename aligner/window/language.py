"""The language of the texts: chosen by the person, or the desktop's, or English.

The trap: texts are made as widgets are made, so the language is spoken before the first widget
is, and a window that lives on while another is chosen makes its pages and menus anew.
"""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from aligner.data_files import resource
from aligner.language import LANGUAGES, speak, spoken

_installed: list[QTranslator] = []


def language_for(chosen: str, desktop: QLocale | None = None) -> str:
    """The code of the language to speak: the one chosen, or the desktop's if we have it."""
    if chosen != "system":
        return chosen
    wanted = QLocale.languageToCode((desktop or QLocale.system()).language())
    return wanted if wanted in LANGUAGES else "en"


def speak_language(language: str) -> bool:
    """Have every text said in a language, Qt's own buttons too; whether it was another before.

    The numbers follow: "4,2 mm" in German. Where the texts of a language are missing or cannot
    be read, all is said in English, numbers too.
    """
    if language == spoken():
        return False
    translators = [] if language == "en" else _translators(language)
    if not translators:
        language = "en"
        if language == spoken():
            return False
    while _installed:
        QCoreApplication.removeTranslator(_installed.pop())
    for translator in translators:
        QCoreApplication.installTranslator(translator)
        _installed.append(translator)
    if language == "en":
        speak("en")
    else:
        speak(language, _looked_up, QLocale(language).decimalPoint())
    return True


def _translators(language: str) -> list[QTranslator]:
    """What holds the texts of a language, Qt's own first; none where ours cannot be read."""
    try:
        folder = str(resource("languages"))
    except FileNotFoundError:
        return []
    ours, of_qt = QTranslator(), QTranslator()
    if not ours.load(language, folder):
        return []
    qt_texts = QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)
    return [of_qt, ours] if of_qt.load(f"qtbase_{language}", qt_texts) else [ours]


def _looked_up(text: str, meaning: str, count: int) -> str:
    return QCoreApplication.translate("aligner", text, meaning or None, count)
