// A form app that knows nothing of openings: it shows whatever form it is given, and posts what was filled in.
import Form from '@rjsf/core'
import { customizeValidator } from '@rjsf/validator-ajv8'
import Ajv2020 from 'ajv/dist/2020.js'
import { createElement as h, useState } from 'react'
import { createRoot } from 'react-dom/client'

const validator = customizeValidator({ AjvClass: Ajv2020 })
const query = new URLSearchParams(location.search)
const opening = `/v1/projects/${query.get('project')}/openings/${query.get('opening')}`
const headers = { authorization: `Bearer ${query.get('token')}`, 'content-type': 'application/json' }

const { schema } = await (await fetch(`${opening}/form?holdPoint=${query.get('holdPoint')}`, { headers })).json()
createRoot(document.getElementById('form')).render(h(App))

function App() {
  const [answers, change] = useState({})
  const [told, tell] = useState('')
  const send = async ({ formData }) => tell(wordsOf(await post(formData)))
  return h('main', null,
    h(Form, { schema, validator, formData: answers, onChange: ({ formData }) => change(formData), onSubmit: send, transformErrors, showErrorList: 'top', focusOnFirstError: true, noHtml5Validate: true }),
    h('output', null, told),
  )
}

async function post(answers) {
  const filling = { id: query.get('filling'), at: query.get('at'), by: 'inspector', holdPoint: query.get('holdPoint'), method: 'examine', answers }
  return (await fetch(`${opening}/form-answers`, { method: 'POST', headers, body: JSON.stringify(filling) })).json()
}

function wordsOf({ results = [], title, detail }) {
  if (title) return `${title} ${detail ?? ''}`
  return results.map(({ question, outcome, problems }) => [question, outcome, ...problems.map((problem) => problem.detail)].join(' ')).join('\n')
}

/** A text of the wrong form is told in the words of the form, not by its regular expression. */
function transformErrors(errors) {
  return errors.map((error) => {
    const how = error.name === 'pattern' ? at(error.property)?.['x-howToWrite'] : undefined
    return how ? { ...error, message: how, stack: `${at(error.property).title}: ${how}` } : error
  })
}

function at(property) {
  return property.split('.').filter(Boolean).reduce((inner, name) => inner?.properties?.[name], schema)
}
