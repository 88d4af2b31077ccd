// Lets `node --import` run the sources of this repository where node does not strip types itself. What was once transpiled is
// kept under node_modules by the digest of its text, since loading the compiler takes longer than all the rest of a start.
import { createHash } from 'node:crypto'
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises'
import { register } from 'node:module'
import { fileURLToPath } from 'node:url'
import { isMainThread } from 'node:worker_threads'

const kept = fileURLToPath(new URL('../../node_modules/.cache/wythe-tests/', import.meta.url))

if (isMainThread) register(import.meta.url)

export async function load(url, context, next) {
  if (!url.endsWith('.ts')) return next(url, context)
  const text = await readFile(fileURLToPath(url), 'utf8')
  const file = `${kept}${createHash('sha256').update(text).digest('hex')}.js`
  const source = await readFile(file, 'utf8').catch(() => transpiled(text, file))
  return { format: 'module', shortCircuit: true, source }
}

async function transpiled(text, file) {
  const { default: ts } = await import('typescript')
  const { outputText } = ts.transpileModule(text, { compilerOptions: { target: ts.ScriptTarget.ES2023, module: ts.ModuleKind.ESNext, verbatimModuleSyntax: true } })
  await keep(outputText, file).catch(() => undefined)
  return outputText
}

async function keep(text, file) {
  await mkdir(kept, { recursive: true })
  await writeFile(`${file}.${process.pid}`, text)
  await rename(`${file}.${process.pid}`, file)
}
