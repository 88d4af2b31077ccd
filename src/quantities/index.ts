import { barrierCourses, barrierLapLength } from './barrier-courses.ts'
import { coursesToHead, rowlocksInSill } from './coursing.ts'
import type { QuantityDefinition } from './define.ts'
import { headFlashingGirth } from './head-flashing-girth.ts'
import { headCutLength, headPanLength } from './head-flashing-pan.ts'
import { lintelArching } from './lintel-arching.ts'
import { lintelBearingStress, lintelBearingStressPeak } from './lintel-bearing-stress.ts'
import { lintelBendingMoment, lintelBendingStress, lintelBendingStressRatio, lintelSectionModulusNeeded } from './lintel-bending-stress.ts'
import { lintelDeflection, lintelDeflectionLimit, lintelDeflectionRatio } from './lintel-deflection.ts'
import { lintelEffectiveSpan } from './lintel-effective-span.ts'
import { lintelBrickOverhang, lintelHorizontalLeg, lintelThickness } from './lintel-legs.ts'
import { lintelLength } from './lintel-length.ts'
import { lintelLightestAngle } from './lintel-lightest-angle.ts'
import { lintelBrickLoad, lintelLoad, lintelLoadWithoutArching } from './lintel-load.ts'
import { movementCornerDistance, movementJointSpacingAllowed, movementJointWidthNeeded } from './movement-joints.ts'
import { movementSealantDepth, movementSealantWidth } from './movement-sealant.ts'
import { movementShelfAngleGap } from './movement-shelf-angle.ts'
import { movementExpansion, movementStrain } from './movement-strain.ts'
import { sillDrop, sillRequiredDrop } from './sill-drop.ts'
import { sillFlashingCutLength, sillFlashingLength } from './sill-pan.ts'
import { tieSpacingAllowed, tiesAroundOpening } from './ties-around-opening.ts'
import { tieCount, tieFieldGrid, tieLargestArea } from './ties-field-grid.ts'
import { tieSpacingForWind, tieWindLoad, tieWindLoadRatio } from './ties-wind.ts'
import { headWeepCount, headWeepCountByCode, headWeepPositions, headWeepSpacingLimit, sillWeepCount } from './weep-layout.ts'

/** Every quantity, in the order in which an evaluation shows them. */
export const quantities: readonly QuantityDefinition[] = [
  coursesToHead,
  lintelLength, lintelEffectiveSpan, lintelHorizontalLeg, lintelThickness, lintelBrickOverhang,
  lintelArching, lintelBrickLoad, lintelLoadWithoutArching, lintelLoad,
  lintelBendingMoment, lintelSectionModulusNeeded, lintelBendingStress, lintelBendingStressRatio,
  lintelDeflection, lintelDeflectionLimit, lintelDeflectionRatio,
  lintelBearingStress, lintelBearingStressPeak, lintelLightestAngle,
  headPanLength, headCutLength, headFlashingGirth,
  headWeepSpacingLimit, headWeepCount, headWeepCountByCode, headWeepPositions,
  sillDrop, sillRequiredDrop, sillFlashingLength, sillFlashingCutLength, sillWeepCount, rowlocksInSill,
  tiesAroundOpening, tieSpacingAllowed, tieSpacingForWind,
  tieFieldGrid, tieCount, tieLargestArea, tieWindLoad, tieWindLoadRatio,
  barrierCourses, barrierLapLength,
  movementStrain, movementExpansion, movementJointSpacingAllowed, movementJointWidthNeeded, movementCornerDistance,
  movementShelfAngleGap, movementSealantWidth, movementSealantDepth,
]
