import { readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { GraphQLError, parse, validate } from 'graphql'
import { digestOfText } from '../../catalog/digest.ts'
import { buildGraphqlSchema } from './schema.ts'

/** The documents of a folder by their digests: each *.graphql file word for word. Throws with every file that is not valid by the schema. */
export async function readDocuments(folder: string): Promise<ReadonlyMap<string, string>> {
  const names = (await readdir(folder)).filter((name) => name.endsWith('.graphql')).toSorted()
  const texts = await Promise.all(names.map(async (name) => ({ name, text: await readFile(join(folder, name), 'utf8') })))
  const schema = buildGraphqlSchema()
  const wrong = texts.flatMap(({ name, text }) => faultsOf(text, schema).map((fault) => `  ${name}: ${fault}`))
  if (wrong.length > 0) throw new Error(`The GraphQL documents in ${folder} cannot be used:\n${wrong.join('\n')}`)
  return new Map(texts.map(({ text }) => [digestOfText(text), text]))
}

function faultsOf(text: string, schema: ReturnType<typeof buildGraphqlSchema>): readonly string[] {
  try {
    return validate(schema, parse(text)).map(({ message }) => message)
  } catch (error) {
    if (error instanceof GraphQLError) return [error.message]
    throw error
  }
}
