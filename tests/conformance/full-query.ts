import { getNamedType, isObjectType, type GraphQLOutputType, type GraphQLSchema } from 'graphql'

/** A query for one field of the schema with every argument as a variable and every field below it selected. */
export function fullQuery(schema: GraphQLSchema, name: string): string {
  const query = schema.getQueryType()?.getFields()[name]
  const field = query ?? schema.getMutationType()?.getFields()[name]
  if (!field) throw new Error(`the schema has no ${name}`)
  const variables = field.args.map((argument) => `$${argument.name}: ${argument.type.toString()}`).join(', ')
  const passed = field.args.map((argument) => `${argument.name}: $${argument.name}`).join(', ')
  return `${query ? 'query' : 'mutation'}${inBrackets(variables)} { ${name}${inBrackets(passed)} ${selectionOf(field.type)} }`
}

function selectionOf(type: GraphQLOutputType): string {
  const named = getNamedType(type)
  if (!isObjectType(named)) return ''
  const fields = Object.values(named.getFields()).map((field) => `${field.name} ${selectionOf(field.type)}`)
  return `{ ${fields.join(' ')} }`
}

function inBrackets(text: string): string {
  return text === '' ? '' : `(${text})`
}
