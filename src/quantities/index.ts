import { barrierCourses, barrierLapLength } from './barrier-courses.ts'
import { barrierLapPositions } from './barrier-lap-positions.ts'
import { barrierRolls, barrierSheetArea } from './barrier-rolls.ts'
import { brickSizes } from './brick-sizes.ts'
import { coursesToHead, rowlocksInSill } from './coursing.ts'
import { coursesToSill, headNearest, openingHeightNearest, sillNearest } from './coursing-heights.ts'
import { widthNearest } from './coursing-widths.ts'
import type { QuantityDefinition } from './define.ts'
import { headCutPattern } from './head-cut-pattern.ts'
import { headFlashingGirth } from './head-flashing-girth.ts'
import { headCutLength, headPanLength } from './head-flashing-pan.ts'
import { headUnits } from './head-units.ts'
import { lintelArching } from './lintel-arching.ts'
import { lintelBearingLengthNeeded, lintelBearingStressAllowed, lintelBearingStressRatio } from './lintel-bearing-check.ts'
import { lintelBearingStress, lintelBearingStressPeak } from './lintel-bearing-stress.ts'
import { lintelBendingMoment, lintelBendingStress, lintelBendingStressRatio, lintelSectionModulusNeeded } from './lintel-bending-stress.ts'
import { lintelDeflection, lintelDeflectionLimit, lintelDeflectionRatio } from './lintel-deflection.ts'
import { lintelEffectiveSpan } from './lintel-effective-span.ts'
import { lintelEndGap, lintelThermalMovement } from './lintel-end-gap.ts'
import { lintelGoverning } from './lintel-governing.ts'
import { lintelImposedLoad } from './lintel-imposed-load.ts'
import { lintelBrickOverhang, lintelHorizontalLeg, lintelThickness } from './lintel-legs.ts'
import { lintelLength } from './lintel-length.ts'
import { lintelLightestAngle, lintelLightestMetricAngle } from './lintel-lightest-angle.ts'
import { lintelBrickLoad, lintelLoad, lintelLoadWithoutArching } from './lintel-load.ts'
import { lintelMomentRatio } from './lintel-moment-ratio.ts'
import { lintelPointLoad } from './lintel-point-load.ts'
import { lintelPrescriptiveSpan } from './lintel-prescriptive-span.ts'
import { lintelReactionLeft, lintelReactionRight, lintelShear } from './lintel-reactions.ts'
import { lintelSelfWeight } from './lintel-self-weight.ts'
import { lintelShearRatio, lintelShearStress } from './lintel-shear-stress.ts'
import { lintelTemporarySupport } from './lintel-temporary-support.ts'
import { lintelSpecificationMoment, lintelSpecificationRatio } from './lintel-specification.ts'
import { movementCornerDistance, movementJointSpacingAllowed, movementJointWidthNeeded } from './movement-joints.ts'
import { movementSealantDepth, movementSealantWidth } from './movement-sealant.ts'
import { movementShelfAngleGap } from './movement-shelf-angle.ts'
import { movementExpansion, movementStrain } from './movement-strain.ts'
import { headCatch, panInflow, stormCatch } from './rain-catch.ts'
import { drivingRain } from './rain-driving.ts'
import { rainOnWall, wallIndex } from './rain-on-wall.ts'
import { overtopTime, panVolume } from './rain-pan.ts'
import { sillFilm, sillRunoff } from './rain-sill.ts'
import { weepBreakthrough, weepCapacity } from './rain-weeps.ts'
import { windHead } from './rain-wind-head.ts'
import { sillDrop, sillRequiredDrop } from './sill-drop.ts'
import { sillFlashingCutLength, sillFlashingLength } from './sill-pan.ts'
import { netArea, wallArea } from './takeoff-area.ts'
import { bricksNet, bricksOrder, bricksPerArea } from './takeoff-bricks.ts'
import { mortarNet, mortarOrder, mortarPerThousand } from './takeoff-mortar.ts'
import { openingDeduction, returnBricks } from './takeoff-opening.ts'
import { backerRod, sealantLength } from './takeoff-sealant.ts'
import { tieSpacingAllowed, tiesAroundOpening } from './ties-around-opening.ts'
import { tieCount, tieFieldGrid, tieLargestArea } from './ties-field-grid.ts'
import { tieSpacingForWind, tieWindLoad, tieWindLoadRatio } from './ties-wind.ts'
import { sillCutPattern, sillFlashingGirth } from './sill-cut-pattern.ts'
import { headSplices, sillSplices } from './splice-layout.ts'
import { wallAroundOpening } from './wall-around-opening.ts'
import { weepComparison } from './weep-comparison.ts'
import { headWeepCount, headWeepCountByCode, headWeepSpacingLimit, sillWeepCount } from './weep-layout.ts'
import { headWeepOpenArea, sillWeepOpenArea } from './weep-open-area.ts'
import { headWeepPositions, sillWeepPositions } from './weep-positions.ts'

/** Every quantity, in the order in which they are shown. */
export const quantities: readonly QuantityDefinition[] = [
  coursesToHead, openingHeightNearest, widthNearest, coursesToSill, sillNearest, headNearest, headUnits, brickSizes, wallAroundOpening,
  lintelLength, lintelEffectiveSpan, lintelHorizontalLeg, lintelThickness, lintelBrickOverhang,
  lintelArching, lintelBrickLoad, lintelLoadWithoutArching, lintelSelfWeight, lintelImposedLoad, lintelPointLoad, lintelLoad,
  lintelReactionLeft, lintelReactionRight, lintelShear, lintelShearStress, lintelShearRatio,
  lintelBendingMoment, lintelSectionModulusNeeded, lintelBendingStress, lintelBendingStressRatio, lintelMomentRatio,
  lintelSpecificationMoment, lintelSpecificationRatio,
  lintelDeflection, lintelDeflectionLimit, lintelDeflectionRatio,
  lintelBearingStress, lintelBearingStressPeak, lintelBearingStressAllowed, lintelBearingStressRatio, lintelBearingLengthNeeded,
  lintelPrescriptiveSpan, lintelGoverning, lintelLightestAngle, lintelLightestMetricAngle, lintelEndGap, lintelThermalMovement, lintelTemporarySupport,
  headPanLength, headCutLength, headFlashingGirth, headCutPattern, headSplices,
  headWeepSpacingLimit, headWeepCount, headWeepCountByCode, headWeepPositions, headWeepOpenArea, weepComparison,
  sillDrop, sillRequiredDrop, sillFlashingLength, sillFlashingCutLength, sillFlashingGirth, sillCutPattern, sillSplices,
  sillWeepCount, sillWeepPositions, sillWeepOpenArea, rowlocksInSill,
  tiesAroundOpening, tieSpacingAllowed, tieSpacingForWind,
  tieFieldGrid, tieCount, tieLargestArea, tieWindLoad, tieWindLoadRatio,
  barrierCourses, barrierLapLength, barrierLapPositions, barrierSheetArea, barrierRolls,
  bricksPerArea, openingDeduction, returnBricks, wallArea, netArea, bricksNet, bricksOrder, mortarPerThousand, mortarNet, mortarOrder,
  sealantLength, backerRod,
  movementStrain, movementExpansion, movementJointSpacingAllowed, movementJointWidthNeeded, movementCornerDistance,
  movementShelfAngleGap, movementSealantWidth, movementSealantDepth,
  drivingRain, wallIndex, rainOnWall,
  headCatch, stormCatch, panInflow, panVolume, overtopTime, weepBreakthrough, weepCapacity, windHead,
  sillRunoff, sillFilm,
]

/** Those that stand in every evaluation. */
export const everydayQuantities: readonly QuantityDefinition[] = quantities.filter(({ onRequest }) => !onRequest)
