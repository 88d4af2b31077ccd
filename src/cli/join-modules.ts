import { isAbsolute } from 'node:path'
import { build } from 'rolldown'

/**
 * The packages that every start of the service loads. They and our own code become a few files, since to load hundreds takes
 * longer than to run them. Any other package is loaded from where it is installed, by the first who asks for it.
 */
const joined = ['@fastify/helmet', '@fastify/under-pressure', '@noble/hashes', 'canonicalize', 'close-with-grace', 'csv-parse', 'fastest-levenshtein', 'fastify', 'fresh', 'ipaddr.js', 'kysely', 'negotiator', 'pino', 'structured-headers', 'zod']

await build({
  input: { 'server': 'src/server.ts', 'line-worker': 'src/api/rest/line-worker.ts' },
  platform: 'node',
  external: (id, importer) => isPackage(id) && isOurs(importer) && !joined.some((name) => id === name || id.startsWith(`${name}/`)),
  output: { dir: 'dist/bundle', cleanDir: true, chunkFileNames: '[name].js', sourcemap: true },
})

function isPackage(id: string): boolean {
  return !id.startsWith('.') && !isAbsolute(id)
}

/** What a joined package needs is joined with it. */
function isOurs(importer: string | undefined): boolean {
  return importer?.includes('node_modules') === false
}
