// A thread that answers as the real one does, and ends in the middle of lines that ask for it.
import answerLines from '../../dist/bundle/line-worker.js'

export default function answer(work) {
  if (work.lines.some(({ text }) => text?.includes('"break down"'))) process.exit(3)
  return answerLines(work)
}
