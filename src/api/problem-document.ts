import { z } from 'zod'
import type { Problem } from '../opening/problem.ts'
import { problemTypes, type ProblemCode, type ProblemType } from './problems.ts'

const problemCode = z.enum(Object.keys(problemTypes) as [ProblemCode, ...ProblemCode[]]).meta({ id: 'ProblemCode', description: 'The last part of `type`.' })

/** What the API reference shows. */
const problemExample = {
  type: 'https://wythe.example/problems/invalidInput', title: problemTypes.invalidInput.title, status: problemTypes.invalidInput.status,
  detail: '/opening/opening/width "48" has no unit.', instance: 'urn:request:0192f3c1-5a51-7c8f-8b8e-2f3d0e6a9b10', code: 'invalidInput' as const,
  errors: [{ code: 'unitMissing', pointer: '/opening/opening/width', detail: '"48" has no unit.' }],
}

/** RFC 9457 problem details, with every single error by JSON Pointer. */
export const problemDocument = z
  .strictObject({
    type: z.string().meta({ description: 'Address of a page that explains the code.' }),
    title: z.string(),
    status: z.int().min(400).max(599),
    detail: z.string(),
    instance: z.string().meta({ description: 'The request, as the log knows it.' }),
    code: problemCode,
    errors: z.array(z.strictObject({ code: z.string(), pointer: z.string().meta({ description: 'JSON Pointer (RFC 6901) into what was sent.' }), detail: z.string() }).meta({ id: 'ProblemError' })),
    'violated-policies': z.array(z.string()).optional().meta({ description: 'The quotas that were used up, by their names in RateLimit-Policy.' }),
  })
  .meta({ id: 'Problem', title: 'Problem details (RFC 9457)', examples: [problemExample] })
export type ProblemDocument = z.infer<typeof problemDocument>

interface Circumstances {
  readonly publicUrl: string
  readonly requestId: string
  /** The quotas that were used up. */
  readonly violated?: readonly string[] | undefined
}

export function problemOf(code: ProblemCode, errors: readonly Problem[], { publicUrl, requestId, violated }: Circumstances): ProblemDocument {
  const { status, title, mend, type = `${publicUrl}/problems/${code}` }: ProblemType = problemTypes[code]
  const [only, ...more] = errors
  const detail = only === undefined ? mend : more.length > 0 ? `${errors.length} problems. ${mend}` : [only.pointer, only.detail].filter((text) => text !== '').join(' ')
  return {
    type, title, status, detail, instance: `urn:request:${requestId}`, code,
    errors: errors.map((error) => ({ code: error.code, pointer: error.pointer, detail: error.detail })),
    ...(violated === undefined ? {} : { 'violated-policies': [...violated] }),
  }
}
