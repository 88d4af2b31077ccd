import { GraphQLBoolean, GraphQLList, GraphQLNonNull, GraphQLObjectType, GraphQLString, type GraphQLOutputType } from 'graphql'
import { z } from 'zod'
import type { AnyOperation, RecordDependencies } from '../../operations/operation.ts'

const ofText = { type: GraphQLString }
const yesOrNo = { type: new GraphQLNonNull(GraphQLBoolean) }

const pageInfo = new GraphQLObjectType({
  name: 'PageInfo',
  description: 'Where a page lies in its list, as the Relay cursor connections specification has it.',
  fields: {
    hasNextPage: { ...yesOrNo, description: 'Whether more follows `endCursor`.' },
    hasPreviousPage: { ...yesOrNo, description: 'Whether something stands before `startCursor`.' },
    startCursor: { ...ofText, description: 'The cursor of the first edge; null where there is none.' },
    endCursor: { ...ofText, description: 'The cursor of the last edge, to go on `after`; null where there is none.' },
  },
})

/** What one member of a page is; undefined for a schema that is no page. */
export function memberOfPage({ shape }: z.ZodObject): z.ZodType | undefined {
  const items: unknown = shape['items']
  return 'nextCursor' in shape && items instanceof z.ZodArray ? (items.element as z.ZodType) : undefined
}

/** The connection that stands for a page: `RulePage` is a `RuleConnection` of `RuleEdge`. */
export function connectionType(page: string, node: GraphQLOutputType): GraphQLObjectType {
  const name = page.replace(/Page$/, '')
  const edge = new GraphQLObjectType({ name: `${name}Edge`, fields: { node: { type: node }, cursor: { type: new GraphQLNonNull(GraphQLString), description: 'To go on `after` this one.' } } })
  return new GraphQLObjectType({
    name: `${name}Connection`,
    fields: {
      edges: { type: new GraphQLNonNull(new GraphQLList(new GraphQLNonNull(edge))) },
      // It is there once, however many members there are.
      pageInfo: { type: new GraphQLNonNull(pageInfo), extensions: { complexity: () => 0 } },
    },
  })
}

interface Page {
  readonly items: readonly unknown[]
  readonly nextCursor: string | null
}

/** A page as a connection; anything else as it is. */
export function asConnection({ cursorsOf }: AnyOperation, deps: RecordDependencies, asked: unknown, value: unknown): unknown {
  if (!cursorsOf) return value
  const { items, nextCursor } = value as Page
  const cursors = cursorsOf(deps, asked, items)
  const { after } = asked as { readonly after?: string | null }
  return {
    edges: items.map((node, index) => ({ node, cursor: cursors[index] })),
    pageInfo: { hasNextPage: nextCursor !== null, hasPreviousPage: (after ?? null) !== null, startCursor: cursors[0] ?? null, endCursor: cursors.at(-1) ?? null },
  }
}
