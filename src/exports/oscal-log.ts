import type { ExportedBuilding, ExportedOpening } from './exported-building.ts'
import { nameOf, timeOf } from './judged.ts'
import { ids } from './oscal-words.ts'
import { line } from './plain-text.ts'
import { stableId } from './stable-id.ts'
import { remedyText, signOffText, verificationText, waiverText } from './words.ts'

interface Logged {
  readonly entry: string
  readonly at: string
  readonly by: string
  readonly note: string | null
  readonly title: string
  readonly text: string
}

/** Sign-offs, waivers, remedies, looks after mending and corrections as the log of the assessment. */
export function logOf({ project, openings }: ExportedBuilding): object {
  const entries = openings.flatMap((opening) =>
    loggedIn(opening).map(({ entry, at, by, note, title, text }) => ({
      uuid: stableId('log', entry), title: line(`${nameOf(opening)}: ${title}`), description: text, start: timeOf(opening, { entry, at }), 'logged-by': [{ 'party-uuid': ids.party(project.id, by) }],
      ...(note === null || note === '' ? {} : { remarks: note }),
    })),
  )
  return entries.length === 0 ? {} : { 'assessment-log': { entries } }
}

function loggedIn({ record: { signOffs, waivers, remedies, verifications, corrections } }: ExportedOpening): readonly Logged[] {
  return [
    ...signOffs.map((one) => ({ ...one, title: 'hold point signed off', text: signOffText(one) })),
    ...waivers.map((one) => ({ ...one, title: one.held.kind, text: waiverText(one) })),
    ...remedies.map((one) => ({ ...one, title: 'remedy chosen', text: remedyText(one) })),
    ...verifications.map((one) => ({ ...one, title: 'looked at after mending', text: verificationText(one) })),
    ...corrections.map((one) => ({ ...one, title: 'entry taken out of account', text: `Entry ${one.held.entry}: ${one.held.reason}` })),
  ]
}
