import type { FastifyInstance } from 'fastify'

/** Notes every route as it is added, and tells which methods an address answers, so that a wrong method is told from a wrong address. */
export function watchMethods(app: FastifyInstance): (path: string) => readonly string[] {
  const routes: { readonly pattern: RegExp; readonly methods: readonly string[] }[] = []
  app.addHook('onRoute', ({ url, method }) => {
    routes.push({ pattern: patternOf(url), methods: [method].flat().map(String) })
  })
  return (path) => [...new Set(routes.filter(({ pattern }) => pattern.test(path)).flatMap(({ methods }) => methods))].toSorted()
}

function patternOf(url: string): RegExp {
  const literal = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`)
  const segments = url.split('/').map((segment) => (segment.startsWith(':') ? '[^/]+' : segment === '*' ? '.*' : literal(segment)))
  return new RegExp(`^${segments.join('/')}$`)
}
