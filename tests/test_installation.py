"""The data files are found from a checkout and from an installed wheel."""

import subprocess
import sys
import zipfile
from pathlib import Path

from aligner.data_files import demo, resource

ROOT = Path(__file__).parent.parent


def test_a_checkout_finds_its_resources_and_its_demo():
    assert resource("order", "rules.json").is_file()
    assert demo("fellside-left-leg-high.job.json").is_file()


def test_an_installed_wheel_finds_them_too(tmp_path):
    # The wheel is built by the backend itself and unpacked as an installer would.
    subprocess.run(
        [sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", str(tmp_path)],
        cwd=ROOT,
        check=True,
        capture_output=True,
    )
    site = tmp_path / "site"
    with zipfile.ZipFile(next(tmp_path.glob("*.whl"))) as wheel:
        wheel.extractall(site)
    script = (
        f"import sys; sys.path.insert(0, {str(site)!r})\n"
        "from aligner.data_files import demo, resource\n"
        "from aligner.__main__ import main\n"
        "path = demo('fellside-true.job.json')\n"
        "assert 'site' in str(path) and resource('order', 'rules.json').is_file()\n"
        "sys.exit(main(['assess', str(path)]))\n"
    )
    ran = subprocess.run(
        [sys.executable, "-c", script], cwd=tmp_path, capture_output=True, text=True, check=False
    )
    assert ran.returncode == 0, ran.stdout + ran.stderr
