"""Photographs as they are shown: small, upright, and missing where they cannot be shown."""

import struct

import pytest
import shiboken6
from PySide6.QtCore import QSize, QThreadPool
from PySide6.QtGui import QColor, QImage, QPainter

from aligner.drawing.theme import Theme
from aligner.window.inspect.photograph_picture import picture
from aligner.window.inspect.photograph_strip import Thumbnail
from aligner.window.inspect.photograph_view import PhotographView


def _photograph(path, width, height):
    """Left half dark red, right half blue."""
    image = QImage(width, height, QImage.Format.Format_RGB32)
    image.fill(QColor("#336688"))
    painter = QPainter(image)
    painter.fillRect(0, 0, width // 2, height, QColor("#884422"))
    painter.end()
    assert image.save(str(path), quality=95)
    return path


def _turned(path, orientation):
    """The same JPEG with the orientation its camera noted (Exif 2.3, tag 274)."""
    content = path.read_bytes()
    tiff = b"II*\x00" + struct.pack("<IHHHIHHI", 8, 1, 274, 3, 1, orientation, 0, 0)
    body = b"Exif\x00\x00" + tiff
    marker = b"\xff\xe1" + struct.pack(">H", len(body) + 2) + body
    path.write_bytes(content[:2] + marker + content[2:])
    return path


def _is_red(colour):
    return colour.red() > colour.blue()


@pytest.mark.parametrize(
    ("size", "shown"),
    [
        pytest.param((4000, 3000), QSize(120, 90), id="a telephone's"),
        pytest.param((3000, 4000), QSize(68, 90), id="upright"),
        pytest.param((100, 50), QSize(100, 50), id="small stays small"),
    ],
)
@pytest.mark.parametrize("ending", ["jpg", "png"])
def test_a_photograph_is_read_in_the_size_it_is_shown_at(tmp_path, size, shown, ending):
    image = picture(_photograph(tmp_path / f"a.{ending}", *size), 120, 90)
    assert abs(image.width() - shown.width()) <= 1
    assert abs(image.height() - shown.height()) <= 1


@pytest.mark.parametrize(
    ("orientation", "is_upright", "is_red_first"),
    [
        pytest.param(1, False, True, id="as taken"),
        pytest.param(3, False, False, id="upside down"),
        pytest.param(6, True, True, id="turned right"),
        pytest.param(8, True, False, id="turned left"),
    ],
)
def test_it_stands_upright_whichever_way_the_camera_was_held(
    tmp_path, orientation, is_upright, is_red_first
):
    file = _turned(_photograph(tmp_path / "a.jpg", 400, 300), orientation)
    image = picture(file, 120, 120)
    assert (image.height() > image.width()) is is_upright
    assert _is_red(image.pixelColor(4, 4)) is is_red_first
    assert max(image.width(), image.height()) == 120


def test_a_file_that_is_replaced_is_shown_anew(tmp_path):
    file = _photograph(tmp_path / "a.png", 40, 30)
    assert picture(file, 120, 90).width() == 40
    _photograph(file, 20, 30)
    assert picture(file, 120, 90).width() == 20


@pytest.mark.parametrize("content", [b"", b"not a picture", b"\xff\xd8\xff\xe0cut short"])
def test_what_cannot_be_shown_is_no_picture(tmp_path, content):
    file = tmp_path / "a.jpg"
    file.write_bytes(content)
    assert picture(file, 120, 90) is None
    assert picture(tmp_path / "gone.jpg", 120, 90) is None
    assert picture(None, 120, 90) is None


def test_a_thumbnail_is_read_beside_the_window_and_then_stands_there(qtbot, tmp_path):
    file = _photograph(tmp_path / "a.jpg", 400, 300)
    small = Thumbnail(Theme(), "photographs/a.jpg", 1, file)
    qtbot.addWidget(small)
    with qtbot.waitSignal(small.shown):
        small.show()
    shown = small.grab().toImage()
    assert _is_red(shown.pixelColor(shown.width() // 4, shown.height() // 2))
    assert not _is_red(shown.pixelColor(3 * shown.width() // 4, shown.height() // 2))


def test_a_thumbnail_taken_away_while_it_is_read_disturbs_nobody(qtbot, tmp_path):
    file = _photograph(tmp_path / "a.png", 2000, 1500)
    small = Thumbnail(Theme(), "photographs/a.png", 1, file)
    small.grab()  # asks for it
    shiboken6.delete(small)
    assert QThreadPool.globalInstance().waitForDone(5000)


def test_a_missing_photograph_says_so_small_and_large(qtbot, tmp_path):
    small = Thumbnail(Theme(), "photographs/a.jpg", 1, tmp_path / "gone.jpg")
    large = PhotographView(Theme())
    for widget in (small, large):
        qtbot.addWidget(widget)
    assert small.accessibleName() == "photograph 1, file missing: a.jpg"
    with qtbot.waitSignal(small.shown):
        small.show()
    plain = small.grab().toImage()
    middle = [plain.pixelColor(x, plain.height() // 2) for x in range(plain.width())]
    assert len({colour.name() for colour in middle}) > 3  # the word stands there
    large.resize(400, 300)
    large.show_photographs([("photographs/a.jpg", None)], "photographs/a.jpg")
    assert large.accessibleName() == "photograph a.jpg"
    assert not large.grab().isNull()
