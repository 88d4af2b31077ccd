import { GraphQLScalarType, Kind, type ValueNode } from 'graphql'

/** Scalars whose forms the operations check; here they only pass through. */
export const passing: Readonly<Record<string, GraphQLScalarType>> = {
  LengthInput: scalar('LengthInput', 'A length as people write it: "3 7/8 in", "4\'-6 1/2\\"", "98 mm", or an object { value, unit, resolution }. A bare number takes the lengthUnit of the document.'),
  QuantityInput: scalar('QuantityInput', 'An amount with its unit: "15 deg", "3:12", "40 psf".'),
  FactValue: scalar('FactValue', 'A value as it was read: a text with its unit, a number, a choice, true or false, or { value, unit, resolution }.'),
  GivenValue: scalar('GivenValue', 'A value to compute with: a text with its unit, a number, a choice, true or false, or a list [left, right].'),
  FormDocument: scalar('FormDocument', 'A JSON Schema document, 2020-12, as a JSON object.'),
  FormAnswers: scalar('FormAnswers', 'A filled form: the JSON object that a form library made by the form document.'),
  SectionInput: scalar('SectionInput', 'An angle section: "L5x3-1/2x5/16".'),
}

function scalar(name: string, description: string): GraphQLScalarType {
  return new GraphQLScalarType({ name, description, serialize: (value) => value, parseValue: (value) => value, parseLiteral: literalValue })
}

function literalValue(node: ValueNode, variables?: Readonly<Record<string, unknown>> | null): unknown {
  switch (node.kind) {
    case Kind.STRING: case Kind.BOOLEAN: case Kind.ENUM: return node.value
    case Kind.INT: case Kind.FLOAT: return Number(node.value)
    case Kind.NULL: return null
    case Kind.LIST: return node.values.map((value) => literalValue(value, variables))
    case Kind.OBJECT: return Object.fromEntries(node.fields.map(({ name, value }) => [name.value, literalValue(value, variables)]))
    case Kind.VARIABLE: return variables?.[node.name.value]
  }
}
