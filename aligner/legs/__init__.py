"""The two fork legs: oil, air, viscosity, sag, springs and wear, as pure functions on floats."""

from aligner.legs.air_spring import (
    ATMOSPHERE_KPA,
    AirColumn,
    AirForcePoint,
    air_column,
    air_force_difference,
    air_force_n,
    air_force_table,
    air_pressure_kpa,
)
from aligner.legs.oil_level import (
    LegBore,
    OilCorrection,
    VolumeComparison,
    oil_area_mm2,
    oil_correction,
    oil_volume_ml,
    suction_tube_depth_mm,
    volume_against_manual,
)
from aligner.legs.refusals import LegError
from aligner.legs.sag import (
    PreloadChange,
    Sag,
    SagReadings,
    TwoRateSpring,
    measured_sag,
    preload_change_by_forces,
    preload_change_mm,
    share_of_travel,
    spring_compression_mm,
    spring_force_n,
)
from aligner.legs.springs import (
    coil_bind_margin_mm,
    preload_mm,
    spacer_length_mm,
)
from aligner.legs.viscosity import (
    W_GRADE_CAUTION,
    Blend,
    blend_for_target,
    blend_viscosity_cst,
)
from aligner.legs.wear import (
    bend_mm,
)

__all__ = [
    "ATMOSPHERE_KPA",
    "W_GRADE_CAUTION",
    "AirColumn",
    "AirForcePoint",
    "Blend",
    "LegBore",
    "LegError",
    "OilCorrection",
    "PreloadChange",
    "Sag",
    "SagReadings",
    "TwoRateSpring",
    "VolumeComparison",
    "air_column",
    "air_force_difference",
    "air_force_n",
    "air_force_table",
    "air_pressure_kpa",
    "bend_mm",
    "blend_for_target",
    "blend_viscosity_cst",
    "coil_bind_margin_mm",
    "measured_sag",
    "oil_area_mm2",
    "oil_correction",
    "oil_volume_ml",
    "preload_change_by_forces",
    "preload_change_mm",
    "preload_mm",
    "share_of_travel",
    "spacer_length_mm",
    "spring_compression_mm",
    "spring_force_n",
    "suction_tube_depth_mm",
    "volume_against_manual",
]
