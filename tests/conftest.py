"""What every test shares: Qt draws off the screen, and settings stay in a folder of their own."""

import os

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
