import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'

setFlagsFromString('--expose-gc')
const collect = runInNewContext('gc') as () => void

/** Bytes of the heap that are still held after everything else has been thrown away. */
export function heapInUse(): number {
  collect()
  collect()
  return process.memoryUsage().heapUsed
}
