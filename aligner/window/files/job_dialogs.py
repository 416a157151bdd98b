"""The two dialogs in which a file is named; each remembers nothing and proposes a place."""

from __future__ import annotations

import contextlib
from pathlib import Path

from PySide6.QtWidgets import QFileDialog

from aligner.job import Job
from aligner.language import say


def ask_name_to_open(path: Path | None) -> Path | None:
    """The file to open; `None` where the person chose none."""
    from aligner.storage.places import documents_folder

    folder = path.parent if path else documents_folder()
    name, _ = QFileDialog.getOpenFileName(None, say("Open a job"), str(folder), _job_files())
    return Path(name) if name else None


def ask_name_to_save(job: Job, path: Path | None, title: str, ending: str = "") -> Path | None:
    """The file to save to; `None` where the person chose none.

    Args:
        job: for which a place is proposed: one folder a bike, in the documents folder.
        path: of the job's own file, which is proposed again.
        title: of the dialog.
        ending: of another kind of file that is proposed beside the job's (" card.pdf").
    """
    from aligner.storage.places import JOB_ENDING, documents_folder, free_path, job_path

    own = path or free_path(job_path(documents_folder(), job.sheet.name, job.title))
    wanted = ending or JOB_ENDING
    stem = own.name.removesuffix(JOB_ENDING).removesuffix(".json")
    proposed = own.with_name(stem + wanted)
    is_new = not proposed.parent.exists()
    with contextlib.suppress(OSError):
        proposed.parent.mkdir(parents=True, exist_ok=True)
    suffix = Path(wanted).suffix
    kind = _files_of(suffix) if ending else _job_files()
    name, _ = QFileDialog.getSaveFileName(None, title, str(proposed), kind)
    if is_new and not name:
        with contextlib.suppress(OSError):
            proposed.parent.rmdir()
    if not name:
        return None
    chosen = Path(name)
    known = (Path(ending).suffix,) if ending else (JOB_ENDING, ".json")
    if chosen.name.lower().endswith(known):
        return chosen
    return free_path(chosen.with_name(chosen.name + (known[0] if ending else wanted)))


def _job_files() -> str:
    return f"{say('Jobs', meaning='kind of file')} (*.job.json *.json)"


def _files_of(suffix: str) -> str:
    return f"{say('{kind} documents', kind=suffix[1:].upper())} (*{suffix})"
