"""The program starts whatever its settings file holds."""

import sys

import pytest

from tests.window.whole_program import started


@pytest.mark.skipif(sys.platform in ("win32", "darwin"), reason="places as on Linux")
@pytest.mark.parametrize(
    "kept",
    [
        pytest.param("[General]\ngeometry=42\nrecent=7\npage_size=x", id="other kinds of value"),
        pytest.param("[General]\ngeometry=@ByteArray(x)\nrecent=@Invalid()", id="not understood"),
        pytest.param("\x00\x01[[preferences\n=de", id="damaged"),
    ],
)
def test_settings_that_were_edited_or_damaged_do_not_keep_it_from_starting(tmp_path, kept):
    (tmp_path / "Aligner").mkdir()
    (tmp_path / "Aligner" / "Aligner.conf").write_text(kept)

    done = started(XDG_CONFIG_HOME=str(tmp_path), XDG_STATE_HOME=str(tmp_path))

    assert "Traceback" not in done.stderr
    assert done.stdout.strip()
