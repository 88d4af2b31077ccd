/** Choices whose words do not follow from how they are written. */
const ownWords: Readonly<Record<string, string>> = {
  no15Felt: 'No. 15 felt', epdm: 'EPDM', pvc: 'PVC', leadCoatedCopper: 'Lead-coated copper', selfAdheredMembrane: 'Self-adhered membrane',
  hotDipGalvanized: 'Hot-dip galvanized', millGalvanized: 'Mill galvanized', adjustableTwoPiece: 'Adjustable, two pieces', overFlashing: 'Laps over the flashing', behindFlashing: 'Runs behind the flashing',
  tapedToFace: 'Taped to the face of the flashing', cutFlush: 'Cut flush', pastFace: 'Past the face of the brick', flushWithFace: 'Flush with the face', shortOfFace: 'Stops short of the face',
  class12_5: 'Class 12 1/2', class25: 'Class 25', class35: 'Class 35', class50: 'Class 50', class100_50: 'Class 100/50', ringShankNail: 'Ring-shank nail',
  oneOrTwoFamily: 'One- or two-family dwelling', thirdRunning: 'One-third running', orientedStrandBoard: 'Oriented strand board (OSB)', foamPlastic: 'Foam plastic', openHeadJoint: 'Open head joint',
  twoStoryGable: 'Two stories, gable', threeStoryGable: 'Three stories, gable', multistoryTop: 'Multistory, top', multistoryBelow: 'Multistory, below the top', twoStoryEaves: 'Two stories, under eaves',
  threeStoryEaves: 'Three stories, under eaves', twoStoryFlatRoofTop: 'Two stories, flat roof, top', twoStoryFlatRoofBelow: 'Two stories, flat roof, below the top',
}

/** A choice in plain words: "looseSteelAngle" is "Loose steel angle". */
export function choiceWords(choice: string): string {
  const own = Object.hasOwn(ownWords, choice) ? ownWords[choice] : undefined
  if (own !== undefined) return own
  const spaced = choice.replace(/(?<=[a-z])(?=[A-Z])/g, ' ').toLowerCase()
  return /^[A-F]\d?$/.test(choice) ? choice : spaced.charAt(0).toUpperCase() + spaced.slice(1)
}

/** The choice that somebody chose, by its words or as it is written in a description; undefined where it is none of these. */
export function choiceIn(choices: readonly string[], answer: unknown): string | undefined {
  return choices.find((choice) => answer === choice || answer === choiceWords(choice))
}

/** What is true or false in a description is yes or no in a form. */
export const yesNo = ['Yes', 'No'] as const

export function flagIn(answer: unknown): boolean | undefined {
  if (typeof answer === 'boolean') return answer
  const said = typeof answer === 'string' ? answer.toLowerCase() : ''
  return said === 'yes' ? true : said === 'no' ? false : undefined
}
