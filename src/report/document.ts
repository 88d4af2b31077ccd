import { sha256 } from '@noble/hashes/sha2.js'
import { utf8ToBytes } from '@noble/hashes/utils.js'
import { html, trusted, type Part } from './markup.ts'
import { reportStyle } from './style.ts'

/** The sheets that a report is made for; the printer's own where nothing is said. */
export const papers = ['a4', 'letter'] as const
export type Paper = (typeof papers)[number]

export interface Sheet {
  /** In the tab of a browser and at the head of every page. */
  readonly title: string
  readonly paper?: Paper | null
}

/** A whole report: one document that takes nothing from anywhere, runs no script, and says so by a policy of its own. */
export function htmlDocument({ title, paper = null }: Sheet, body: Part): string {
  const style = `${reportStyle}\n@page{${paper === null ? '' : `size:${paper};`}@top-left{content:"${cssText(title)}"}}`
  const policy = `default-src 'none'; style-src 'sha256-${base64(sha256(utf8ToBytes(style)))}'; img-src data:; base-uri 'none'; form-action 'none'`
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<style>${trusted(style)}</style>
<title>${title}</title>
</head>
<body>
${body}
</body>
</html>
`.markup
}

/** The policy by which a report is shown, as it says itself. It stands before any word of a person. */
export function policyOf(report: string): string {
  return (/<meta http-equiv="Content-Security-Policy" content="([^"]*)">/.exec(report)?.[1] ?? "default-src 'none'").replaceAll('&#39;', "'")
}

/** A text within a string of CSS: whatever is not plain is written by its number, so that nothing ends the string. */
function cssText(text: string): string {
  return text.slice(0, mostInMargin).replaceAll(/[^A-Za-z0-9 .,:-]/gu, (character) => `\\${(character.codePointAt(0) ?? 0).toString(16)} `)
}

/** As much fits over the page. */
const mostInMargin = 80

function base64(bytes: Uint8Array): string {
  return btoa(String.fromCharCode(...bytes))
}
