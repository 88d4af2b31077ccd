import type { Evaluation } from '../evaluation/document.ts'
import type { HoldPoint } from '../opening/hold-points.ts'
import type { EntryKind } from '../record/entry.ts'
import { signOffGround } from '../record/sign-off.ts'
import type { Entry, Project } from '../store/journal.ts'
import type { NewEvent } from '../store/outbox.ts'
import type { AdoptedAmendment } from '../store/records.ts'
import { newEvent } from '../webhooks/event.ts'
import type { RecordDependencies } from './operation.ts'
import type { Outlook } from './opening-outlook.ts'

type Deps = Pick<RecordDependencies, 'newId' | 'publicUrl' | 'traceparent'>

export function projectEvent({ newId, publicUrl, traceparent }: Deps, name: 'projectCreated' | 'projectChanged', { id, jurisdiction, asOf, edition, publication, version, changedAt }: Project): NewEvent {
  const href = `${publicUrl}/v1/projects/${id}`
  return newEvent({ id: newId(), traceparent, name, project: id, source: href, subject: 'project', at: changedAt, data: { project: id, jurisdiction, asOf, edition, publication, version, href } })
}

export function adoptionEvent({ newId, publicUrl, traceparent }: Deps, { amendment, sequence, digest, adoptedAt }: AdoptedAmendment): NewEvent {
  const { amendment: id, jurisdiction, effectiveFrom, effectiveUntil } = amendment
  const source = `${publicUrl}/v1/amendments`
  return newEvent({ id: newId(), traceparent, name: 'amendmentAdopted', source, subject: id, at: adoptedAt, data: { amendment: id, jurisdiction, sequence, digest, effectiveFrom, effectiveUntil, href: `${source}/${id}` } })
}

export function evaluationEvent({ newId, publicUrl, traceparent }: Deps, { id, resolvedAt, evaluatedAt, summary, catalog, digest }: Evaluation): NewEvent {
  const source = `${publicUrl}/v1/evaluations`
  return newEvent({ id: newId(), traceparent, name: 'evaluationKept', source, subject: id, at: evaluatedAt, data: { evaluation: id, jurisdiction: resolvedAt, verdict: summary.verdict, release: catalog.release, digest, href: `${source}/${id}` } })
}

export function pingEvent({ newId, publicUrl, traceparent }: Deps, webhook: string, at: string): NewEvent {
  const href = `${publicUrl}/v1/webhooks/${webhook}`
  return newEvent({ id: newId(), traceparent, name: 'ping', source: href, subject: 'webhook', at, data: { webhook, href } })
}

/** As many changes are listed; a body stays below what receivers usually take. */
const mostChanges = 100

/** What was put on record, opening by opening, and each sign-off among it. */
export function recordEvents(deps: Deps, project: string, outlooks: readonly Outlook[], at: string): readonly NewEvent[] {
  return outlooks.filter(({ recorded }) => recorded.length > 0).flatMap((outlook) => [openingEvent(deps, project, outlook, at), ...outlook.recorded.flatMap((entry) => signOffEvents(deps, project, entry, at))])
}

function openingEvent({ newId, publicUrl, traceparent }: Deps, project: string, { standing, changed, recorded }: Outlook, at: string): NewEvent {
  const { opening, verdict, verdictAsGranted } = standing
  const listed = changed.slice(0, mostChanges).map(({ rule, member, before, after }) => ({ rule, member, before, after }))
  return newEvent({
    id: newId(), traceparent, name: 'openingRecorded', project, ...placeOf(publicUrl, project, opening), at,
    data: {
      project, opening, entries: recorded.map(({ id, kind, sequence }) => ({ id, kind: kind as EntryKind, sequence })), verdict, verdictAsGranted,
      changed: listed, moreChanged: changed.length - listed.length, href: openingHref(publicUrl, project, opening),
    },
  })
}

function signOffEvents({ newId, publicUrl, traceparent }: Deps, project: string, { id, kind, opening, body, judged }: Entry, at: string): readonly NewEvent[] {
  if (kind !== 'signOff') return []
  const { holdPoint, reason } = (body as { readonly signOff: { readonly holdPoint: HoldPoint; readonly reason?: string | null } }).signOff
  const ready = judged === null ? null : signOffGround.parse(judged).ready
  const data = { project, opening, holdPoint, entry: id, ready, withReason: (reason ?? null) !== null, href: openingHref(publicUrl, project, opening) }
  return [newEvent({ id: newId(), traceparent, name: 'holdPointSignedOff', project, ...placeOf(publicUrl, project, opening), at, data })]
}

function placeOf(publicUrl: string, project: string, opening: string) {
  return { source: `${publicUrl}/v1/projects/${project}`, subject: `openings/${opening}` }
}

function openingHref(publicUrl: string, project: string, opening: string): string {
  return `${publicUrl}/v1/projects/${project}/openings/${opening}`
}
