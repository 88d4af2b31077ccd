import { GraphQLError, Kind, type ASTVisitor, type SelectionSetNode, type ValidationContext } from 'graphql'

/** Each field at the top is an operation of its own, so that aliases could ask for thousands in one request. */
const mostAtTheTop = 50

/** Refuses a query that asks for more at the top than one request may. */
export function topFieldsRule(context: ValidationContext): ASTVisitor {
  return {
    OperationDefinition: (operation) => {
      const names = new Set(answerNames(operation.selectionSet, context, new Set()))
      if (names.size <= mostAtTheTop) return
      context.reportError(new GraphQLError(`The query asks for ${names.size} fields at the top; at most ${mostAtTheTop} are answered at once.`, { nodes: operation }))
    },
  }
}

/** The names under which the top fields are answered, those of fragments with them; a fragment counts once. */
function answerNames({ selections }: SelectionSetNode, context: ValidationContext, seen: Set<string>): readonly string[] {
  return selections.flatMap((selection) => {
    if (selection.kind === Kind.FIELD) return [selection.alias?.value ?? selection.name.value]
    if (selection.kind === Kind.INLINE_FRAGMENT) return answerNames(selection.selectionSet, context, seen)
    const name = selection.name.value
    const fragment = seen.has(name) ? undefined : context.getFragment(name)
    return fragment ? answerNames(fragment.selectionSet, context, seen.add(name)) : []
  })
}
