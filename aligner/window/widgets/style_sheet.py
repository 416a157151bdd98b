"""The one style sheet, made from the theme and set once on the window."""

from __future__ import annotations

from aligner.data_files import resource
from aligner.drawing.theme import Palette, Theme, TypeSize


def style_sheet(theme: Theme) -> str:
    """The style sheet of a theme."""
    return _STYLE.format(
        down=resource("icons", "down.svg").as_posix(),
        **{name: getattr(theme.palette, name) for name in Palette.__dataclass_fields__},
        **{size.value: theme.points(size) for size in TypeSize},
        **{f"px{pixels}": max(1, theme.px(pixels)) for pixels in (3, 4, 5, 6, 7, 9, 10, 13, 14)},
        **{f"px{pixels}": theme.px(pixels) for pixels in (18, 20, 21, 22, 24)},
    )


_STYLE = """
* {{ font-size: {text}pt; color: {ink}; }}
QMainWindow, QWidget#ground {{ background: {ground}; }}
QWidget#side {{ background: {side}; }}
QFrame#card {{ background: {card}; border: 1px solid {line}; border-radius: 8px; }}
QFrame#card[inHand="true"] {{ border: 2px solid {accent}; }}
QFrame#caution {{ background: {attention_soft}; border: 1px solid {attention};
    border-radius: 6px; }}
QLabel {{ background: transparent; }}
QLabel[typeSize="small"] {{ font-size: {small}pt; color: {quiet}; }}
QLabel[typeSize="quiet"] {{ color: {quiet}; }}
QLabel[typeSize="strong"] {{ font-weight: 600; }}
QLabel[typeSize="value"] {{ font-size: {value}pt; font-weight: 600; }}
QLabel[typeSize="sentence"] {{ font-size: {sentence}pt; font-weight: 700; }}
QLabel[typeSize="huge"] {{ font-size: {huge}pt; font-weight: 700; }}
QLabel[tone="attention"] {{ color: {attention}; }}
QLabel[tone="accent"] {{ color: {accent}; }}
QPushButton {{ background: {card}; border: 1px solid {edge}; border-radius: 6px;
    padding: {px7}px {px14}px; min-height: {px18}px; }}
QPushButton:hover {{ border-color: {accent}; }}
QPushButton:focus {{ border: 2px solid {accent}; padding: {px6}px {px13}px; }}
QPushButton:disabled {{ color: {quiet}; background: {ground}; }}
QPushButton[main="true"] {{ background: {accent}; color: {on_accent}; font-weight: 600;
    border: 1px solid {accent}; padding: {px10}px {px22}px; }}
QPushButton[main="true"]:focus {{ border: 2px solid {ink}; padding: {px9}px {px21}px; }}
QPushButton[main="true"]:disabled {{ background: {ground}; color: {quiet};
    border: 1px solid {line}; }}
QPushButton:checked {{ background: {accent_soft}; border-color: {accent}; }}
QLineEdit, QPlainTextEdit, QComboBox {{ background: {card}; border: 1px solid {edge};
    border-radius: 5px; padding: {px4}px {px6}px; selection-background-color: {accent};
    selection-color: {on_accent}; }}
QLineEdit, QPlainTextEdit {{ placeholder-text-color: {hint}; }}
QLineEdit:focus, QPlainTextEdit:focus, QComboBox:focus {{ border: 2px solid {accent};
    padding: {px3}px {px5}px; }}
QLineEdit[typeSize="sentence"], QPushButton[typeSize="sentence"] {{ font-size: {sentence}pt; }}
QLineEdit[refused="true"] {{ border: 2px dashed {attention}; padding: {px3}px {px5}px; }}
QLineEdit:read-only {{ background: {ground}; color: {quiet}; }}
QComboBox {{ min-height: {px24}px; }}
QComboBox::drop-down {{ border: none; width: {px22}px; }}
QComboBox::down-arrow {{ image: url({down}); width: {px13}px; height: {px13}px; }}
QComboBox QAbstractItemView {{ background: {card}; color: {ink};
    selection-background-color: {accent_soft}; selection-color: {ink}; }}
QCheckBox {{ spacing: 10px; padding: 3px; }}
QCheckBox::indicator {{ width: {px20}px; height: {px20}px; border: 2px solid {quiet};
    border-radius: 4px; background: {card}; }}
QCheckBox::indicator:checked {{ background: {accent}; border-color: {accent}; }}
QCheckBox:focus {{ border: 2px solid {accent}; border-radius: 5px; padding: 1px; }}
QListWidget {{ background: {card}; border: 1px solid {line}; border-radius: 8px;
    padding: 4px; }}
QListWidget:focus {{ border: 2px solid {accent}; padding: 3px; }}
QListWidget::item {{ padding: 3px 6px; }}
QListWidget::item:selected {{ background: {accent_soft}; color: {ink};
    font-weight: 600; }}
QScrollArea {{ background: transparent; border: none; }}
QScrollArea > QWidget > QWidget {{ background: transparent; }}
QMenuBar {{ background: {side}; }}
QMenuBar::item {{ padding: 4px 10px; background: transparent; }}
QMenuBar::item:selected, QMenu::item:selected {{ background: {accent_soft}; }}
QMenu {{ background: {card}; border: 1px solid {line}; }}
QMenu::item {{ padding: 5px 24px; }}
QMenu::item:disabled {{ color: {quiet}; }}
QToolTip {{ background: {card}; color: {ink}; border: 1px solid {line}; }}
QScrollBar:vertical {{ background: transparent; width: 12px; margin: 0; }}
QScrollBar::handle:vertical {{ background: {line}; border-radius: 5px; min-height: 30px;
    margin: 1px 2px; }}
QScrollBar::add-line, QScrollBar::sub-line {{ width: 0; height: 0; }}
QScrollBar::add-page, QScrollBar::sub-page {{ background: transparent; }}
"""
