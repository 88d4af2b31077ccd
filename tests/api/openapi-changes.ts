import type { OpenAPIV3_1 } from 'openapi-types'

type Document = OpenAPIV3_1.Document
type Schema = Readonly<Record<string, unknown>>

/** What a caller of the old document could do and can no longer by the new one, as far as the two documents tell. */
export function breakingChanges(old: Document, next: Document): readonly string[] {
  const found: string[] = []
  for (const [path, methods] of Object.entries(old.paths ?? {})) {
    for (const [method, operation] of Object.entries(methods ?? {}) as [string, OpenAPIV3_1.OperationObject][]) {
      const now = (next.paths?.[path] as Record<string, OpenAPIV3_1.OperationObject> | undefined)?.[method]
      if (now) found.push(...ofOperation(`${method} ${path}`, operation, now))
      else found.push(`${method} ${path} is gone`)
    }
  }
  const sent = schemasReached(next, 'requestBody')
  const answered = schemasReached(next, 'responses')
  for (const [name, schema] of Object.entries(old.components?.schemas ?? {})) {
    const now = next.components?.schemas?.[name] as Schema | undefined
    if (!now) found.push(`schema ${name} is gone`)
    else found.push(...ofSchema(name, schema as Schema, now, { sent: sent.has(name), answered: answered.has(name) }))
  }
  return found
}

function ofOperation(name: string, old: OpenAPIV3_1.OperationObject, now: OpenAPIV3_1.OperationObject): readonly string[] {
  const parametersOf = ({ parameters = [] }: OpenAPIV3_1.OperationObject) => new Map((parameters as OpenAPIV3_1.ParameterObject[]).map((one) => [`${one.in} ${one.name}`, one]))
  const [before, after] = [parametersOf(old), parametersOf(now)]
  return [
    ...[...before.keys()].filter((key) => !after.has(key)).map((key) => `${name}: ${key} is gone`),
    ...[...after].filter(([key, { required }]) => required === true && before.get(key)?.required !== true).map(([key]) => `${name}: ${key} is required`),
    ...Object.keys(old.responses ?? {}).filter((status) => !(status in (now.responses ?? {}))).map((status) => `${name}: response ${status} is gone`),
  ]
}

function ofSchema(name: string, old: Schema, now: Schema, { sent, answered }: { readonly sent: boolean; readonly answered: boolean }): readonly string[] {
  const members = (schema: Schema) => Object.keys((schema['properties'] ?? {}))
  const required = (schema: Schema) => (schema['required'] ?? []) as readonly string[]
  const choices = (schema: Schema) => (schema['enum'] ?? []) as readonly string[]
  return [
    ...members(old).filter((member) => !members(now).includes(member)).map((member) => `${name}/${member} is gone`),
    ...(sent ? required(now).filter((member) => !required(old).includes(member)).map((member) => `${name}/${member} is required of what is sent`) : []),
    ...(answered ? required(old).filter((member) => !required(now).includes(member)).map((member) => `${name}/${member} is no longer always answered`) : []),
    ...choices(old).filter((choice) => !choices(now).includes(choice)).map((choice) => `${name}: "${choice}" is gone`),
    ...(old['type'] !== undefined && JSON.stringify(old['type']) !== JSON.stringify(now['type']) ? [`${name} is of another type`] : []),
  ]
}

/** The named schemas that some parts of the operations of a document reach. */
export function schemasReached({ paths = {}, components = {} }: Document, ...parts: readonly ('parameters' | 'requestBody' | 'responses')[]): ReadonlySet<string> {
  const names = new Set<string>()
  const look = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return
    const name = /^#\/components\/schemas\/(.+)$/.exec((node as { $ref?: string }).$ref ?? '')?.[1]
    if (name !== undefined && !names.has(name)) {
      names.add(name)
      look(components.schemas?.[name])
    }
    Object.values(node).forEach(look)
  }
  for (const methods of Object.values(paths)) for (const operation of Object.values(methods ?? {}) as OpenAPIV3_1.OperationObject[]) look(parts.map((part) => operation[part]))
  return names
}
