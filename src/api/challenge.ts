interface Challenge {
  readonly error?: 'invalid_token' | 'insufficient_scope'
  readonly scope?: string | undefined
}

/** What the WWW-Authenticate header asks for (RFC 6750, section 3). Nothing is said of an error where no token was sent. */
export function challenge({ error, scope }: Challenge = {}): Readonly<Record<string, string>> {
  const parameters = { realm: 'wythe', ...(error === undefined ? {} : { error }), ...(scope === undefined ? {} : { scope }) }
  return { 'www-authenticate': `Bearer ${Object.entries(parameters).map(([name, value]) => `${name}="${value}"`).join(', ')}` }
}
