import type { UnreadEntry } from '../record/entry.ts'
import type { RecordedEntry } from '../record/opening-record.ts'
import { evidenceOf, type Evidence } from './evidence.ts'
import type { ExportedBuilding, ExportedOpening } from './exported-building.ts'
import { nameOf } from './judged.ts'
import { ids, ifAny, propertiesOf } from './oscal-words.ts'
import { instant, line } from './plain-text.ts'
import { stableId } from './stable-id.ts'
import { observationText } from './words.ts'

/** Everything that was seen, told or tried out; what a later reading or a correction has overruled is marked as history. */
export function observationsOf(building: ExportedBuilding): readonly object[] {
  return building.openings.flatMap((opening) => {
    const governing = new Set(opening.record.facts.map(({ governs }) => governs.entry))
    return opening.entries.flatMap((entry) => (entry.kind === 'observation' ? [observationOf(building, opening, entry, governing.has(entry.id))] : []))
  })
}

function observationOf({ project }: ExportedBuilding, opening: ExportedOpening, { id, body, receivedAt, sequence }: RecordedEntry, governs: boolean): object {
  const { observation, at, by, note } = body as UnreadEntry
  if (!observation) throw new Error(`entry ${id} is an observation without one`)
  const correction = opening.record.corrections.find(({ held }) => held.entry === id)
  const remarks = [...(note ? [note] : []), ...(correction ? [`Taken out of account: ${correction.held.reason}`] : [])].join('\n\n')
  return {
    uuid: ids.observation(id),
    description: observationText(observation),
    props: propertiesOf({ entry: id, sequence, fact: observation.fact, end: observation.member ?? null, 'hold-point': observation.holdPoint }),
    methods: [observation.method.toUpperCase()],
    ...(governs ? {} : { types: ['historic'] }),
    origins: [{ actors: [{ type: 'party', 'actor-uuid': ids.party(project.id, by) }] }],
    subjects: [{ 'subject-uuid': ids.opening(project.id, opening.opening), type: 'inventory-item', title: line(nameOf(opening)) }],
    ...ifAny('relevant-evidence', evidenceOf(opening, id).map((one) => ({ href: `#${resourceId(one)}`, description: 'A picture or a paper that is kept elsewhere, pinned by its SHA-256.', props: propertiesOf({ 'taken-at': one.takenAt }) })).map(withoutEmpty)),
    collected: instant(at, receivedAt),
    ...(remarks === '' ? {} : { remarks }),
  }
}

/** All evidence of a building, each address and hash once. */
export function resourcesOf({ openings }: ExportedBuilding): readonly object[] {
  const all = openings.flatMap((opening) => opening.entries.flatMap(({ id }) => evidenceOf(opening, id)))
  const once = new Map(all.map((one) => [resourceId(one), one]))
  return [...once].map(([uuid, { uri, sha256, entry }]) => ({ uuid, title: `Evidence of entry ${entry}`, rlinks: [{ href: uri, hashes: [{ algorithm: 'SHA-256', value: sha256 }] }] }))
}

export function resourceId({ uri, sha256 }: Evidence): string {
  return stableId('evidence', uri, sha256)
}

function withoutEmpty({ props, ...rest }: { readonly href: string; readonly description: string; readonly props: readonly object[] }): object {
  return { ...rest, ...ifAny('props', props) }
}
