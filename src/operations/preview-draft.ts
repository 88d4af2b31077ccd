import { z } from 'zod'
import type { Amendment } from '../catalog/amendment.ts'
import type { Catalog } from '../catalog/catalog.ts'
import { datesTouched } from '../catalog/dates-touched.ts'
import { pathTo } from '../catalog/resolve.ts'
import { tallyImpact, type ImpactTally } from '../evaluation/impact.ts'
import { vectorsOf } from '../evaluation/release-vectors.ts'
import { withAmendments } from '../evaluation/with-amendments.ts'
import { describeOpening } from '../opening/describe.ts'
import type { KeptEvaluation } from '../store/records.ts'
import { draftId, ownDraft } from './amendment-drafts.ts'
import { mayRead } from './kept-evaluations.ts'
import { checkDraft } from './draft-check.ts'
import { defineRecordOperation, failure, type RecordDependencies } from './operation.ts'
import { impactView, previewView } from './preview-view.ts'

/** Kept evaluations of one look at the store; small, since each holds a whole answer. */
const portion = 100

export const previewDraft = defineRecordOperation({
  name: 'previewAmendmentDraft',
  cost: { units: 100 },
  summary: 'Preview a draft',
  description: 'What the draft would change: which rules on which dates, and which reference openings and kept evaluations of the jurisdiction would come out otherwise. Changes nothing.',
  input: z.strictObject({
    draft: draftId,
    kept: z.coerce.number().int().min(0).max(100_000).nullish().meta({ description: 'How many kept evaluations to try at most; 1 000 when left out.' }),
    examples: z.coerce.number().int().min(0).max(200).nullish().meta({ description: 'How many changed openings to show; 20 when left out.' }),
  }),
  output: previewView,
  answer: async (deps, { draft: id, kept, examples }) => {
    const found = await ownDraft(deps, id)
    if (!found.ok) return found
    const { document, jurisdiction } = found.value
    const { adoptable, problems, affected } = checkDraft(deps.catalog, document)
    const next = adoptable ? withAmendments(deps.catalog, [document as Amendment]) : undefined
    if (!next?.ok) return failure('amendmentRefused', [...problems, ...affected.map(({ amendment, ...rest }) => ({ ...rest, detail: `${amendment}: ${rest.detail}` }))])
    const dates = datesTouched(next.catalog, [document as Amendment])
    const tally = tallyImpact(deps.catalog, next.catalog, { jurisdiction, dates, publication: (document as Amendment).amends.publication, examples: examples ?? 20 })
    const referenceOpenings = takeReferences(deps.catalog, tally)
    const { taken, more } = await takeKept(deps, tally, jurisdiction, kept ?? 1_000)
    return { ok: true, value: { draft: id, dates: [...dates], ...impactView(tally.report()), referenceOpenings, keptOpenings: taken, moreKept: more } }
  },
})

/** The openings of the catalog's own buildings, as if they stood in this jurisdiction. */
function takeReferences(catalog: Catalog, tally: ImpactTally): number {
  const vectors = vectorsOf(catalog)
  if (!vectors.ok) return 0
  for (const { id, opening, holdPoint } of vectors.value) tally.take({ reference: id, opening, holdPoint })
  return vectors.value.length
}

/** Kept evaluations of the jurisdiction and all within it, a portion at a time, giving way between openings. */
async function takeKept({ records, catalog, giveWay, caller }: RecordDependencies, tally: ImpactTally, jurisdiction: string, most: number): Promise<{ taken: number; more: boolean }> {
  const within = [...catalog.jurisdictions.keys()].filter((one) => pathTo(catalog, one)?.includes(jurisdiction))
  let [taken, after]: [number, string | null] = [0, null]
  while (taken < most) {
    const page = await records.listEvaluations(within, after, Math.min(portion, most - taken))
    for (const evaluation of page.items) {
      takeOne(evaluation, tally, mayRead(caller, evaluation))
      await giveWay()
    }
    taken += page.items.length
    after = page.next
    if (after === null) return { taken, more: false }
  }
  return { taken, more: most > 0 }
}

/** What others kept is counted and shown without the mark that they gave it. */
function takeOne({ id, jurisdiction, request }: KeptEvaluation, tally: ImpactTally, isOwn: boolean): void {
  const { opening, publication, holdPoint } = request as { opening: unknown; publication?: string | null; holdPoint?: KeptHoldPoint }
  const described = describeOpening(opening)
  if (!described.ok) return
  tally.take({ reference: isOwn ? (described.value.reference ?? id) : ofOthers, opening: described.value, jurisdiction: jurisdiction ?? undefined, publication: publication ?? undefined, holdPoint })
}

const ofOthers = 'a kept opening'

type KeptHoldPoint = Parameters<ImpactTally['take']>[0]['holdPoint']
