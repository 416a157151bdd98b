"""The command: the window, `assess` and `card`, and the exit status that other programs read.

The trap: each way in loads only what it needs. The window must be on the screen at once, and
`assess` must run where there is no Qt. What cannot be used gives one line and status 2.
"""

from __future__ import annotations

import gc
import os
import sys
from pathlib import Path
from typing import TYPE_CHECKING, NoReturn

if TYPE_CHECKING:
    from argparse import ArgumentParser, Namespace

    from aligner.job import Job

WITHIN = 0
ATTENTION = 1
UNUSABLE = 2

_COMMANDS = ("assess", "card")


class _Refused(Exception):  # it carries the line, it is not an error of the program
    """One line for standard error; the command ends with status 2."""


def main(arguments: list[str] | None = None) -> int:
    """Run the command.

    Args:
        arguments: without the program's name; the process's own if left out.

    Returns:
        0 all within limits (or the window was closed, the card written and all within),
        1 something needs attention, 2 unusable document or arguments.
    """
    given = sys.argv[1:] if arguments is None else arguments
    try:
        if given and given[0] in _COMMANDS:
            return _assess(given[1:]) if given[0] == "assess" else _card(given[1:])
        return _window(given)
    except _Refused as refusal:
        from aligner.report.printable import printable

        sys.stderr.write(f"aligner: {printable(str(refusal))}\n")
        return UNUSABLE


def _window(given: list[str]) -> int:
    path, is_demo = _window_arguments(given)
    gc.disable()  # until the window stands: nothing made on the way there is rubbish
    from aligner.window.application import run_window

    try:
        return run_window(path, demo=is_demo)
    finally:
        gc.enable()


def _window_arguments(given: list[str]) -> tuple[Path | None, bool]:
    """What the window is to show; plain cases are read without loading argparse."""
    if not given:
        return None, False
    if len(given) == 1 and given[0] and not given[0].startswith("-"):
        return Path(given[0]), False
    parser = _parser(
        "aligner",
        "Refit a motorcycle's front end: equal legs, square brackets, every clamp in order "
        "and to torque.",
        "Without a window: aligner assess JOB [--json]; aligner card JOB -o CARD.pdf. "
        "A job of the name “assess” or “card” is opened as ./assess or ./card.",
    )
    from aligner import __version__

    parser.add_argument("job", nargs="?", metavar="JOB", help="the job to open")
    parser.add_argument("--demo", action="store_true", help="open the invented demo job")
    parser.add_argument("--version", action="version", version=f"aligner {__version__}")
    found = parser.parse_args(given)
    if found.demo and found.job is not None:
        raise _Refused("both a job and --demo were given; give one of them")
    return _path(found.job) if found.job is not None else None, found.demo


def _assess(given: list[str]) -> int:
    parser = _parser(
        "aligner assess",
        "Corrections, verdicts and the tightening list of a job.",
        "Exit status: 0 all within limits, 1 something needs attention, 2 unusable.",
    )
    parser.add_argument("job", metavar="JOB", help="the job document")
    parser.add_argument("--json", action="store_true", help="print one JSON object")
    _add_language(parser)
    found: Namespace = parser.parse_args(given)
    job = _loaded(_path(found.job))
    application = _speaking(found.language) if found.language != "en" else None
    from aligner.assessment import assess
    from aligner.errors import AlignerError
    from aligner.job.stamps import now_here

    try:
        assessment = assess(job, now_here())
        if found.json:
            from aligner.report.as_json import as_json

            text = as_json(assessment)
        else:
            from aligner.report.summary import summary

            text = summary(assessment)
    except AlignerError as error:
        raise _Refused(f"{found.job}: {error}") from error
    del application  # kept until all is said
    _print(text)
    return WITHIN if assessment.is_all_within else ATTENTION


def _card(given: list[str]) -> int:
    parser = _parser(
        "aligner card",
        "The job card as a PDF document, A4.",
        "Exit status: 0 all within limits, 1 written but something needs attention, 2 unusable.",
    )
    parser.add_argument("job", metavar="JOB", help="the job document")
    parser.add_argument("-o", dest="card", metavar="CARD.pdf", required=True, help="the card")
    _add_language(parser)
    found: Namespace = parser.parse_args(given)
    source, target = _path(found.job), _path(found.card)
    job = _loaded(source)
    if target.exists() and target.samefile(source):
        raise _Refused(f"{target}: the card would replace the job itself; give it another name")
    application = _speaking(found.language)
    from aligner.assessment import assess
    from aligner.errors import AlignerError
    from aligner.job.stamps import now_here
    from aligner.report.card import write_card
    from aligner.storage.failure import SaveFailed

    try:
        is_all_within = assess(job, now_here()).is_all_within
        write_card(job, target, kept_in=source)
    except SaveFailed as error:
        what = f"{error.understood}; {error.wanted}" if error.wanted else error.understood
        raise _Refused(f"{target}: {what}") from error
    except AlignerError as error:
        raise _Refused(f"{source}: {error}") from error
    except OSError as error:
        raise _Refused(f"{target}: {error.strerror or error}; choose another place") from error
    del application  # kept until the card is written
    return WITHIN if is_all_within else ATTENTION


def _add_language(parser: ArgumentParser) -> None:
    from aligner.language import LANGUAGES

    parser.add_argument("--language", choices=LANGUAGES, default="en", help="of the sentences")


def _speaking(language: str) -> object:
    """A Qt application that speaks a language, for as long as it is kept."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from PySide6.QtGui import QGuiApplication

    from aligner.window.language import speak_language

    application = QGuiApplication.instance() or QGuiApplication(["aligner"])
    speak_language(language)
    return application


def _loaded(path: Path) -> Job:
    from aligner.errors import AlignerError
    from aligner.storage.document_file import load_job

    try:
        return load_job(path)[0]
    except AlignerError as error:
        raise _Refused(f"{path}: {error}") from error


def _path(given: str) -> Path:
    if not given:
        raise _Refused("the file's name is empty; name a job document")
    return Path(given)


def _parser(name: str, description: str, after: str) -> ArgumentParser:
    from argparse import ArgumentParser

    class OneLineParser(ArgumentParser):
        """Argparse that refuses in one line rather than with its usage."""

        def error(self, message: str) -> NoReturn:
            raise _Refused(f"{message}; see “{name} --help”")

    return OneLineParser(prog=name, description=description, epilog=after, allow_abbrev=False)


def _print(text: str) -> None:
    """Text to standard output, UTF-8 whatever the locale; a closed pipe is no failure."""
    reconfigure = getattr(sys.stdout, "reconfigure", None)
    if reconfigure is not None:
        reconfigure(encoding="utf-8", errors="backslashreplace")
    try:
        sys.stdout.write(text + "\n")
        sys.stdout.flush()
    except BrokenPipeError:
        # The interpreter flushes once more at its end: let that go nowhere.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    except OSError as error:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        raise _Refused(
            f"standard output: {error.strerror or error}; send it somewhere else"
        ) from error


if __name__ == "__main__":
    sys.exit(main())
