import {
  GraphQLBoolean, GraphQLEnumType, GraphQLFloat, GraphQLInputObjectType, GraphQLInt, GraphQLList, GraphQLNonNull, GraphQLObjectType, GraphQLString,
  type GraphQLFieldConfig, type GraphQLInputFieldConfig, type GraphQLInputType, type GraphQLNullableType, type GraphQLOutputType, type GraphQLScalarType,
} from 'graphql'
import { z } from 'zod'
import { connectionType, memberOfPage } from './connection.ts'
import { passing } from './scalars.ts'

type Nullable<T> = T & GraphQLNullableType

/**
 * GraphQL types from the zod schemas of the operations, so that nothing is described twice.
 * Objects take the id in their metadata as their name; a list of choices takes its own id, or that of its object and field.
 */
export class TypesFromSchemas {
  readonly #outputs = new Map<string, GraphQLObjectType>()
  readonly #inputs = new Map<string, GraphQLInputObjectType>()
  readonly #enums = new Map<string, GraphQLEnumType>()

  output(schema: z.ZodType, place: string): GraphQLOutputType {
    const { inner, nullable } = bare(schema)
    const type = this.#bareOutput(inner, place)
    return nullable ? type : new GraphQLNonNull(type)
  }

  input(schema: z.ZodType, place: string): GraphQLInputType {
    const { inner, nullable } = bare(schema)
    const type = this.#bareInput(inner, place)
    return nullable ? type : new GraphQLNonNull(type)
  }

  #bareOutput(schema: z.ZodType, place: string): Nullable<GraphQLOutputType> {
    const scalar = scalarOf(schema)
    if (scalar) return scalar
    if (schema instanceof z.ZodArray) return new GraphQLList(this.output(schema.element as z.ZodType, place))
    return schema instanceof z.ZodObject ? this.#object(schema, place) : this.#leaf(schema, place)
  }

  #bareInput(schema: z.ZodType, place: string): Nullable<GraphQLInputType> {
    const scalar = scalarOf(schema)
    if (scalar) return scalar
    if (schema instanceof z.ZodArray) return new GraphQLList(this.input(schema.element as z.ZodType, place))
    if (schema instanceof z.ZodUnion) return this.#oneOrList(schema, place)
    return schema instanceof z.ZodObject ? this.#inputObject(schema, place) : this.#leaf(schema, place)
  }

  /** "One value, or a list": GraphQL takes a single value where a list is expected. */
  #oneOrList(schema: z.ZodUnion, place: string): Nullable<GraphQLInputType> {
    const list = schema.options.find((option) => option instanceof z.ZodArray)
    if (!(list instanceof z.ZodArray)) throw new Error(`${place}: this union has no GraphQL form`)
    return new GraphQLList(this.input(list.element as z.ZodType, place))
  }

  #object(schema: z.ZodObject, place: string): GraphQLObjectType {
    const { id: name, description } = namedMeta(schema, place)
    const known = this.#outputs.get(name)
    if (known) return known
    const member = memberOfPage(schema)
    if (member) return this.#connection(name, member)
    const fields = () => Object.fromEntries(Object.entries(schema.shape).map(([key, child]) => [key, this.#outputField(child as z.ZodType, name, key)]))
    const type = new GraphQLObjectType({ name, description, fields })
    this.#outputs.set(name, type)
    return type
  }

  #connection(page: string, member: z.ZodType): GraphQLObjectType {
    const type = connectionType(page, this.output(member, page))
    this.#outputs.set(page, type)
    return type
  }

  #inputObject(schema: z.ZodObject, place: string): GraphQLInputObjectType {
    const { id: name, description } = namedMeta(schema, place)
    const known = this.#inputs.get(name)
    if (known) return known
    const fields = () => Object.fromEntries(Object.entries(schema.shape).map(([key, child]) => [key, this.inputField(child as z.ZodType, name, key)]))
    const type = new GraphQLInputObjectType({ name, description, fields })
    this.#inputs.set(name, type)
    return type
  }

  #outputField(schema: z.ZodType, parent: string, key: string): GraphQLFieldConfig<unknown, unknown> {
    return { type: this.output(schema, placeOf(parent, key)), description: metaOf(schema)?.description }
  }

  inputField(schema: z.ZodType, parent: string, key: string): GraphQLInputFieldConfig {
    return { type: this.input(schema, placeOf(parent, key)), description: metaOf(schema)?.description }
  }

  #leaf(schema: z.ZodType, place: string) {
    if (schema instanceof z.ZodEnum) return this.#enum(schema, place)
    if (schema instanceof z.ZodBoolean) return GraphQLBoolean
    if (schema instanceof z.ZodNumber) return schema.format === 'safeint' ? GraphQLInt : GraphQLFloat
    if (schema instanceof z.ZodString || schema instanceof z.ZodStringFormat) return GraphQLString
    throw new Error(`${place}: ${schema.type} has no GraphQL form`)
  }

  /** The same choices are one type, whoever asks for them. */
  #enum(schema: z.ZodEnum, place: string): GraphQLEnumType {
    const choices = schema.options.map(String)
    const key = choices.join(' ')
    const known = this.#enums.get(key)
    if (known) return known
    const type = new GraphQLEnumType({ name: metaOf(schema)?.id ?? place, description: metaOf(schema)?.description, values: Object.fromEntries(choices.map((value) => [value, {}])) })
    this.#enums.set(key, type)
    return type
  }
}

export function bare(schema: z.ZodType): { inner: z.ZodType; nullable: boolean } {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodNullable) return { inner: bare(schema.unwrap() as z.ZodType).inner, nullable: true }
  return { inner: schema, nullable: false }
}

/** The scalar of a schema or of the one it was refined from; a title of its own does not make it another form. */
function scalarOf(schema: z.core.$ZodType): GraphQLScalarType | undefined {
  const own = passing[z.globalRegistry.get(schema)?.id ?? '']
  return own ?? (schema._zod.parent && scalarOf(schema._zod.parent))
}

function metaOf(schema: z.ZodType): { id?: string; description?: string } | undefined {
  return z.globalRegistry.get(schema)
}

function namedMeta(schema: z.ZodType, place: string): { id: string; description?: string } {
  const meta = metaOf(schema)
  if (meta?.id === undefined) throw new Error(`${place}: an object of the contract needs an id`)
  return { ...meta, id: meta.id }
}

function placeOf(parent: string, key: string): string {
  return `${parent.replace(/Input$/, '')}${key.charAt(0).toUpperCase()}${key.slice(1)}`
}
