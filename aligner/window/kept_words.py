"""Where the open job is kept, in words: below the stage list, and in the window's title."""

from __future__ import annotations

from aligner.language import say
from aligner.window.open_job import OpenJob


def kept_words(open_job: OpenJob) -> str:
    """Whether the job is saved, and in which file."""
    if open_job.has_unsaved_edits:
        return say("edits not saved")
    if open_job.only_read:
        return say("open to read")
    if open_job.path is None:
        return say("not saved in a file yet")
    return say("saved in {file}", file=open_job.path.name)


def title_words(open_job: OpenJob) -> str:
    """The window's title, with Qt's place for the mark of unsaved edits."""
    name = open_job.path.name if open_job.path else say("new job")
    only_read = f" ({say('to read')})" if open_job.only_read else ""
    name = name.replace("[*]", "[*][*]")  # Qt's way to write these letters themselves
    return f"{name}[*]{only_read} - Aligner"
