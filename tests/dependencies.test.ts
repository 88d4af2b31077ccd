import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { readTexts, root } from './read-sources.ts'

interface Locked {
  readonly version: string
  readonly integrity?: string
  readonly license?: string
  readonly dev?: true
}

const { packages } = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as { packages: Readonly<Record<string, Locked>> }
const { dependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { dependencies: Readonly<Record<string, string>> }
const locked = Object.entries(packages).filter(([path]) => path !== '')
const shipped = locked.filter(([, { dev }]) => dev !== true)
const direct = Object.keys(dependencies)

/** Licences that ask for no more than a notice. By their SPDX ids (spdx.org/licenses). */
const permissive = ['MIT', 'ISC', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', '0BSD', 'BlueOak-1.0.0', 'Unlicense', 'CC0-1.0']

describe('what is shipped', () => {
  test('is under a licence that asks for no more than a notice', () => {
    expect(shipped.length).toBeGreaterThan(direct.length)
    expect(shipped.filter(([, { license }]) => !permissive.includes(license ?? '')).map(([path, { license }]) => `${path}: ${license ?? 'none'}`)).toEqual([])
  })

  test('is pinned by version and content', () => {
    expect(locked.filter(([, { version, integrity }]) => version === '' || integrity === undefined).map(([path]) => path)).toEqual([])
  })

  test('is named in the guide for contributors, with its purpose', () => {
    const section = /## Dependencies\n([\s\S]+?)\n## /.exec(readFileSync(join(root, 'DEVELOPERS.md'), 'utf8'))?.[1] ?? ''
    const listed = section.split('\n').filter((line) => line.startsWith('| `')).flatMap((line) => [...(line.split('|')[1] ?? '').matchAll(/`([^`]+)`/g)].map(([, name]) => name ?? ''))
    expect(listed.toSorted()).toEqual(direct.toSorted())
  })

  test('is used', () => {
    const imported = new Set([...readTexts('src', '.ts').values()].flatMap((text) => [...text.matchAll(/from '((?:@[\w-]+\/)?[\w.-]*\w)/g)].map(([, name]) => name)))
    expect(direct.filter((name) => !imported.has(name))).toEqual([])
  })
})
