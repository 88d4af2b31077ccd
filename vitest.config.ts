import { createRequire } from 'node:module'
import { defineConfig } from 'vitest/config'

const require = createRequire(import.meta.url)

export default defineConfig({
  // The bundler would take the package's other build than mercurius does; there must be one.
  resolve: { alias: [{ find: /^graphql$/, replacement: require.resolve('graphql') }] },
  test: { include: ['tests/**/*.test.ts'], testTimeout: 30_000 },
})
