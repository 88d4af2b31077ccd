import type { Amendment } from '../../src/catalog/amendment.ts'
import type { NewEntry, Project } from '../../src/store/journal.ts'
import type { AdoptedAmendment, Draft, KeptEvaluation, Records, Token } from '../../src/store/records.ts'

export const draft = (id: string, change: Partial<Draft> = {}): Draft => ({
  id, jurisdiction: 'us-xa', document: { amendment: 'us-xa/weeps', says: id }, version: `sha256:${id}`,
  createdAt: '2026-03-01T08:00:00.000Z', changedAt: '2026-03-01T08:00:00.000Z', ...change,
})

export const adoption = (name: string): Omit<AdoptedAmendment, 'sequence'> => ({
  amendment: amendment(`us-xa/${name}`), digest: `sha256:${name}`, adoptedAt: '2026-03-02T09:30:00.000Z', adoptedBy: 'token-1',
})

export const evaluation = (id: string, change: Partial<KeptEvaluation> = {}): KeptEvaluation => ({
  id, jurisdiction: 'us-xa', project: null, evaluatedAt: '2026-03-03T10:00:00.000Z', release: '2026.1.0', catalogDigest: 'sha256:aa', sequence: 0,
  digest: `sha256:${id}`, verdict: 'pass', request: { opening: { width: '48' }, asOf: '2026-03-01' }, answer: { summary: { pass: 31 } }, ...change,
})

export const token = (id: string, change: Partial<Token> = {}): Token => ({
  id, secretHash: `hash of ${id}`, title: `Token ${id}`, scopes: [{ kind: 'evaluate' }, { kind: 'amend', jurisdiction: 'us-xa' }],
  createdAt: '2026-03-01T08:00:00.000Z', expiresAt: null, revokedAt: null, ...change,
})

export const project = (id: string, change: Partial<Project> = {}): Project => ({
  id, title: `House ${id}`, jurisdiction: 'us-xa', asOf: '2026-03-01', edition: null, publication: null, version: `sha256:${id}`,
  createdAt: '2026-03-01T08:00:00.000Z', changedAt: '2026-03-01T08:00:00.000Z', ...change,
})

export const entry = (id: string, change: Partial<NewEntry> = {}): NewEntry => ({ id, opening: 'w-1', kind: 'observation', body: { fact: 'sill.slope', says: id }, digest: `sha256:${id}`, judged: null, ...change })

/** Adopts against whatever is the last sequence, as often as somebody else was faster. */
export async function adoptInTurn(records: Records, name: string, draftId: string | null = null, seen = 0): Promise<AdoptedAmendment> {
  const last = (await records.adoptionsAfter(seen)).at(-1)?.sequence ?? seen
  const answer = await records.adopt(adoption(name), draftId === null ? null : draft(draftId), last)
  if (answer.ok) return answer.adopted
  if (answer.reason !== 'behind') throw new Error(`${name}: ${answer.reason}`)
  return adoptInTurn(records, name, draftId, last)
}

function amendment(id: string): Amendment {
  return {
    amendment: id, jurisdiction: 'us-xa', amends: { publication: 'irc', editions: ['2024'] },
    instrument: { kind: 'ordinance', number: '12 – 24″ → 16″', adopted: '2026-02-01' },
    effectiveFrom: '2026-04-01', effectiveUntil: null, application: 'permitApplicationDate', supersedes: [],
    modifications: [{ modification: 'one', kind: 'repeal', target: { rule: 'weep.spacing' }, old: { revision: 1 }, reason: 'Not needed here.' }],
    examples: [{ name: 'repealed', rule: 'weep.spacing', asOf: '2026-04-01', facts: {}, outcome: 'repealed' }],
  }
}
