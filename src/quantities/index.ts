import { barrierCourses, barrierLapLength } from './barrier-courses.ts'
import { barrierLapPositions } from './barrier-lap-positions.ts'
import { barrierRolls, barrierSheetArea } from './barrier-rolls.ts'
import { coursesToHead, rowlocksInSill } from './coursing.ts'
import type { QuantityDefinition } from './define.ts'
import { headCutPattern } from './head-cut-pattern.ts'
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
import { sillCutPattern, sillFlashingGirth } from './sill-cut-pattern.ts'
import { sillDrop, sillRequiredDrop } from './sill-drop.ts'
import { sillFlashingCutLength, sillFlashingLength } from './sill-pan.ts'
import { headSplices, sillSplices } from './splice-layout.ts'
import { tieSpacingAllowed, tiesAroundOpening } from './ties-around-opening.ts'
import { weepComparison } from './weep-comparison.ts'
import { headWeepCount, headWeepCountByCode, headWeepSpacingLimit, sillWeepCount } from './weep-layout.ts'
import { headWeepOpenArea, sillWeepOpenArea } from './weep-open-area.ts'
import { headWeepPositions, sillWeepPositions } from './weep-positions.ts'

/** Every quantity, in the order in which an evaluation shows them. */
export const quantities: readonly QuantityDefinition[] = [
  coursesToHead,
  lintelLength, lintelEffectiveSpan, lintelHorizontalLeg, lintelThickness, lintelBrickOverhang,
  lintelArching, lintelBrickLoad, lintelLoadWithoutArching, lintelLoad,
  lintelBendingMoment, lintelSectionModulusNeeded, lintelBendingStress, lintelBendingStressRatio,
  lintelDeflection, lintelDeflectionLimit, lintelDeflectionRatio,
  lintelBearingStress, lintelBearingStressPeak, lintelLightestAngle,
  headPanLength, headCutLength, headFlashingGirth, headCutPattern, headSplices,
  headWeepSpacingLimit, headWeepCount, headWeepCountByCode, headWeepPositions, headWeepOpenArea, weepComparison,
  sillDrop, sillRequiredDrop, sillFlashingLength, sillFlashingCutLength, sillFlashingGirth, sillCutPattern, sillSplices, sillWeepCount, sillWeepPositions, sillWeepOpenArea, rowlocksInSill,
  tiesAroundOpening, tieSpacingAllowed,
  barrierCourses, barrierLapLength, barrierLapPositions, barrierSheetArea, barrierRolls,
]
