/** Head joints strictly between two dams, measured from the left dam, which stands in a head joint itself. */
export function headJoints(length: number, pitches: readonly number[]): readonly number[] {
  const joints: number[] = []
  let at = 0
  for (let index = 0; ; index += 1) {
    at += pitches[index % pitches.length] ?? length
    if (at >= length) return joints
    joints.push(at)
  }
}

/**
 * The fewest weeps with one in the first joint inside each dam, and none farther than allowed from the next or from a dam.
 * Taking the farthest joint in reach each time cannot be bettered. Undefined where the joints themselves are too far apart.
 */
export function weepsIn(joints: readonly number[], longest: number): readonly number[] | undefined {
  const last = joints.at(-1)
  let at = joints[0]
  if (last === undefined || at === undefined || at > longest) return undefined
  const weeps = [at]
  while (at < last) {
    const reach: number = at + longest
    const next = joints.findLast((joint) => joint <= reach)
    if (next === undefined || next <= at) return undefined
    weeps.push(next)
    at = next
  }
  return weeps
}
