import { element } from './element.js'
import { idOf } from './fields.js'

/** Takes away what was said before. */
export function clearErrors() {
  for (const field of document.querySelectorAll('[aria-invalid]')) field.removeAttribute('aria-invalid')
  for (const place of document.querySelectorAll('.error')) place.replaceChildren()
}

/** Says each error at its field, and answers those that have none. */
export function showErrors(errors) {
  clearErrors()
  return errors.filter(({ pointer, detail }) => {
    const fields = fieldsAt(pointer)
    for (const field of fields) {
      field.setAttribute('aria-invalid', 'true')
      document.getElementById(`${field.id}-error`)?.replaceChildren(element('span', {}, detail))
      field.closest('details')?.setAttribute('open', '')
    }
    return fields.length === 0
  })
}

function fieldsAt(pointer) {
  const direct = document.querySelector(`[data-pointer="${CSS.escape(pointer)}"]`)
  if (direct) return [direct]
  const steps = pointer.replace(/^\/opening\//, '').split('/')
  const end = { 0: 'left', 1: 'right' }[steps.at(-1)]
  const id = idOf((end === undefined ? steps : steps.slice(0, -1)).join('.'))
  const ids = end === undefined ? [id, `${id}-left`, `${id}-right`] : [`${id}-${end}`]
  return ids.map((one) => document.getElementById(one)).filter((field) => field !== null)
}
