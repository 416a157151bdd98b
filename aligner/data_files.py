"""Where the data files are: beside the package once installed, at the top of a checkout before."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from aligner.language import say

_PACKAGE = Path(__file__).parent


@cache
def _folder(name: str) -> Path:
    installed = _PACKAGE / name
    return installed if installed.is_dir() else _PACKAGE.parent / name


def resource(*parts: str) -> Path:
    """The path of a file in resources/, such as `resource("order", "activities.json")`.

    Raises:
        FileNotFoundError: the installation lacks that file.
    """
    return _existing(_folder("resources").joinpath(*parts))


def demo(name: str) -> Path:
    """The path of a document in demo/.

    Raises:
        FileNotFoundError: the installation lacks that file.
    """
    return _existing(_folder("demo") / name)


def _existing(path: Path) -> Path:
    if not path.exists():
        raise FileNotFoundError(
            say("the installation lacks {file}: install it again", file=path.name)
        )
    return path
