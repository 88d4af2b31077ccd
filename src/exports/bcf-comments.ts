import { bodyOf } from './evidence.ts'
import { looksAfterMending, readingsBehind, remediesFor, timeOf, type Judged } from './judged.ts'
import { line } from './plain-text.ts'
import { stableId } from './stable-id.ts'
import { remedyText, signOffText, verificationText, waiverText } from './words.ts'
import { element, type Element } from './xml.ts'

export interface TopicComment {
  readonly author: string
  readonly comment: Element
}

interface Remark {
  readonly entry: string
  readonly at: string
  readonly by: string
  readonly text: string
}

/** What was said about a miss, in the order of its time: notes to the readings, waivers, chosen remedies, looks after mending, sign-offs of its hold point. */
export function commentsOf(judged: Judged): readonly TopicComment[] {
  return remarksOn(judged)
    .map((remark) => ({ ...remark, at: timeOf(judged.at, remark) }))
    .toSorted((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0))
    .map(({ entry, at, by, text }) => {
      const author = line(by)
      return { author, comment: element('Comment', [element('Date', at), element('Author', author), element('Comment', text)], { Guid: stableId(judged.id, entry) }) }
    })
}

function remarksOn(judged: Judged): readonly Remark[] {
  const { at, finding } = judged
  const signed = at.record.signOffs.filter(({ held }) => held.holdPoint === finding.holdPoint)
  const notes = [...new Map(readingsBehind(judged).map((one) => [one.entry, one])).values()].flatMap(({ entry, at: time, by }) => {
    const note = bodyOf(at, entry)?.note ?? ''
    return note.trim() === '' ? [] : [{ entry, at: time, by, text: note }]
  })
  const told = <T extends { readonly entry: string; readonly at: string; readonly by: string; readonly note: string | null }>(all: readonly T[], textOf: (one: T) => string) =>
    all.map((one) => ({ entry: one.entry, at: one.at, by: one.by, text: [textOf(one), ...(one.note === null ? [] : [one.note])].join(' ') }))
  return [...notes, ...told(judged.waivers, waiverText), ...told(remediesFor(judged), remedyText), ...told(looksAfterMending(judged), verificationText), ...told(signed, signOffText)]
}
