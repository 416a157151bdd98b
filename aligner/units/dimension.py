"""What can be measured here, in which units, and how each unit may be spelled.

The trap: pint reads `Nm` as a textile unit and knows nothing of `lb ft` as a torque, so no
text a person typed ever reaches it: the spellings stand here, and so do the factors that are
exact by definition.

The factors: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, standard gravity 9.80665 m/s², a US gallon
(128 fl oz) of 231 in³ and an imperial gallon (160 fl oz) of 4.54609 l, all exact (NIST SP 811).
"""

from __future__ import annotations

from aligner.language import marked
from aligner.units.unit import Dimension, Unit

LENGTH = Dimension(
    marked("a length"),
    marked("no such length is found on a motorcycle"),
    "4.2 mm",
    (
        Unit("mm", "millimeter", ("mm", "millimetre", "millimetres", "millimeter", "millimeters")),
        Unit(
            "cm",
            "centimeter",
            ("cm", "centimetre", "centimetres", "centimeter", "centimeters"),
            by_definition=10.0,
        ),
        Unit("m", "meter", ("m", "metre", "metres", "meter", "meters"), by_definition=1000.0),
        Unit("µm", "micrometer", ("µm", "μm", "um", "micron", "microns"), by_definition=0.001),
        Unit("in", "inch", ("in", "inch", "inches", "zoll", '"'), by_definition=25.4),
        Unit("ft", "foot", ("ft", "foot", "feet", "'"), by_definition=304.8),
        Unit("thou", "thou", ("thou", "mil", "mils"), by_definition=0.0254),
    ),
    largest=10_000.0,
    puzzling={},
)

TORQUE = Dimension(
    marked("a torque"),
    marked("no such torque is found on a motorcycle"),
    "23 N·m",
    (
        Unit("N·m", "newton * meter", ("nm", "mn", "newtonmetre", "newtonmetres", "newtonmeter")),
        Unit("N·cm", "newton * centimeter", ("ncm",), by_definition=0.01),
        Unit("daN·m", "decanewton * meter", ("danm", "mdan"), by_definition=10.0),
        Unit(
            "lbf·ft",
            "force_pound * foot",
            ("lbfft", "ftlbf", "lbft", "ftlb", "ftlbs", "lbsft", "footpounds", "poundfeet"),
            by_definition=1.3558179483314004,
        ),
        Unit(
            "lbf·in",
            "force_pound * inch",
            ("lbfin", "inlbf", "lbin", "inlb", "inlbs", "lbsin", "inchpounds", "poundinches"),
            by_definition=0.1129848290276167,
        ),
        Unit(
            "kgf·m",
            "force_kilogram * meter",
            ("kgfm", "mkgf", "kgm", "mkg", "kpm", "mkp"),
            by_definition=9.80665,
        ),
        Unit(
            "kgf·cm",
            "force_kilogram * centimeter",
            ("kgfcm", "cmkgf", "kgcm", "cmkg", "kpcm", "cmkp"),
            by_definition=0.0980665,
        ),
    ),
    largest=2_000.0,
    puzzling={
        "lb": marked("write lbf·ft or lbf·in"),
        "lbs": marked("write lbf·ft or lbf·in"),
        "lbf": marked("write lbf·ft or lbf·in"),
        "pounds": marked("write lbf·ft or lbf·in"),
        "kg": marked("write kgf·m or kgf·cm"),
        "kgf": marked("write kgf·m or kgf·cm"),
        "n": marked("write N·m or N·cm"),
        "mnm": marked("write N·m or N·cm"),
    },
)

ANGLE = Dimension(
    marked("an angle"),
    marked("no such angle is found on a motorcycle"),
    "26.5 deg",
    (
        Unit("deg", "degree", ("deg", "degs", "degree", "degrees", "grad", "°", "º")),
        Unit(
            "turn",
            "turn",
            ("turn", "turns", "rev", "revs", "umdrehung", "umdrehungen"),
            by_definition=360.0,
        ),
        Unit("rad", "radian", ("rad", "radian", "radians"), by_definition=57.29577951308232),
    ),
    largest=3_600.0,
    puzzling={"'": marked("minutes of arc are not read: write degrees with a decimal")},
)

RATIO = Dimension(
    marked("a percentage"),
    marked("no such percentage is found on a motorcycle"),
    "10 %",
    (Unit("%", "percent", ("%", "percent", "pct", "prozent")),),
    largest=1_000.0,
    puzzling={},
)

VOLUME = Dimension(
    marked("a volume"),
    marked("no such volume is found on a motorcycle"),
    "260 ml",
    (
        Unit("ml", "milliliter", ("ml", "cc", "cm3", "cm³", "ccm", "millilitre", "millilitres")),
        Unit("l", "liter", ("l", "litre", "litres", "liter", "liters"), by_definition=1000.0),
        Unit(
            "US fl oz", "fluid_ounce", ("usfloz", "flozus", "floz(us)"), by_definition=29.5735295625
        ),
        Unit(
            "imp fl oz",
            "imperial_fluid_ounce",
            ("impfloz", "flozimp", "ukfloz", "floz(imp)"),
            by_definition=28.4130625,
        ),
    ),
    largest=100_000.0,
    puzzling={
        "floz": marked("write US fl oz or imp fl oz"),
        "oz": marked("write US fl oz or imp fl oz"),
        "fluidounces": marked("write US fl oz or imp fl oz"),
    },
)

DISTANCE = Dimension(
    marked("a distance on the road"),
    marked("no such distance on the road is found on a motorcycle"),
    "100 km",
    (
        Unit("km", "kilometer", ("km", "kilometre", "kilometres", "kilometer", "kilometers")),
        Unit("mi", "mile", ("mi", "mile", "miles", "meile", "meilen"), by_definition=1.609344),
    ),
    largest=1_000_000.0,
    puzzling={"m": marked("write km or mi")},
)

FORCE = Dimension(
    marked("a force"),
    marked("no such force is found on a motorcycle"),
    "12 N",
    (
        Unit("N", "newton", ("n", "newton", "newtons")),
        Unit("kgf", "force_kilogram", ("kgf", "kp"), by_definition=9.80665),
        Unit("lbf", "force_pound", ("lbf",), by_definition=4.4482216152605),
    ),
    largest=100_000.0,
    puzzling={
        "kg": marked("a scale that shows kg reads kgf: write kgf"),
        "lb": marked("a scale that shows lb reads lbf: write lbf"),
        "lbs": marked("a scale that shows lb reads lbf: write lbf"),
    },
)

STIFFNESS = Dimension(
    marked("a spring rate"),
    marked("no such spring rate is found on a motorcycle"),
    "7.5 N/mm",
    (
        Unit("N/mm", "newton / millimeter", ("n/mm",)),
        Unit(
            "kgf/mm",
            "force_kilogram / millimeter",
            ("kgf/mm", "kg/mm", "kp/mm"),
            by_definition=9.80665,
        ),
        Unit(
            "lbf/in",
            "force_pound / inch",
            ("lbf/in", "lb/in", "lbs/in"),
            by_definition=0.17512683524647636,
        ),
    ),
    largest=1_000.0,
    puzzling={},
)

PRESSURE = Dimension(
    marked("a pressure"),
    marked("no such pressure is found on a motorcycle"),
    "70 kPa",
    (
        Unit("kPa", "kilopascal", ("kpa",)),
        Unit("bar", "bar", ("bar",), by_definition=100.0),
        Unit("psi", "psi", ("psi", "lbf/in2", "lb/in2"), by_definition=6.894757293168361),
        Unit(
            "kgf/cm²",
            "force_kilogram / centimeter ** 2",
            ("kgf/cm2", "kgf/cm²", "kg/cm2"),
            by_definition=98.0665,
        ),
    ),
    largest=10_000.0,
    puzzling={},
)

VISCOSITY = Dimension(
    marked("a viscosity"),
    marked("no such viscosity is found on a motorcycle"),
    "37 cSt",
    (Unit("cSt", "centistokes", ("cst", "centistokes", "mm2/s", "mm²/s")),),
    largest=10_000.0,
    puzzling={
        "w": marked(
            "an oil's W grade is a name, not a viscosity: take the cSt from the oil's data sheet"
        ),
    },
)

EVERY_DIMENSION = (
    LENGTH,
    TORQUE,
    ANGLE,
    RATIO,
    VOLUME,
    DISTANCE,
    FORCE,
    STIFFNESS,
    PRESSURE,
    VISCOSITY,
)
