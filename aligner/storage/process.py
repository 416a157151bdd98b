"""Who is at work here: the person, the computer, the running program.

The trap: on Windows, asking whether a process runs by sending it signal 0 interrupts it.
"""

from __future__ import annotations

import os
import sys
from dataclasses import dataclass

from aligner.language import say


@dataclass(frozen=True, slots=True)
class Worker:
    """One running program on one computer.

    Attributes:
        user: the person's login name.
        host: the computer's name.
        process: the program's process number.
    """

    user: str
    host: str
    process: int

    def is_surely_gone(self) -> bool:
        """Whether the program ran on this computer and does not run any more."""
        return self.host == _host() and not _runs(self.process)

    def __str__(self) -> str:
        return say(
            "{user} on {host} (process {process})",
            user=self.user,
            host=self.host,
            process=self.process,
        )


def this_worker() -> Worker:
    """The program that asks."""
    return Worker(_user(), _host(), os.getpid())


def _host() -> str:
    if sys.platform == "win32":
        return os.environ.get("COMPUTERNAME") or "this computer"
    return os.uname().nodename or "this computer"


def _user() -> str:
    names = (os.environ.get(name, "") for name in ("LOGNAME", "USER", "USERNAME"))
    return next((name for name in names if name), "someone")


def _runs(process: int) -> bool:
    if process <= 0:
        return False
    if sys.platform == "win32":
        return _runs_on_windows(process)
    try:
        os.kill(process, 0)
    except (ProcessLookupError, OverflowError):
        return False
    except PermissionError:
        return True  # another person's
    return True


def _runs_on_windows(process: int) -> bool:
    if sys.platform != "win32":
        return True
    import ctypes

    query, still_active, access_denied = 0x1000, 259, 5
    kernel = ctypes.WinDLL("kernel32", use_last_error=True)
    handle = kernel.OpenProcess(query, False, process)
    if not handle:
        return bool(ctypes.get_last_error() == access_denied)
    status = ctypes.c_ulong()
    kernel.GetExitCodeProcess(handle, ctypes.byref(status))
    kernel.CloseHandle(handle)
    return status.value == still_active
