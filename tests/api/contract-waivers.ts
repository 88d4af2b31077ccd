/** What a linter says of the contract that we do not follow, and why not. */
export interface Waiver {
  readonly linter: 'redocly' | 'spectral'
  readonly rule: string
  /** The place in the document, by its JSON Pointer. */
  readonly at: RegExp
  readonly why: string
}

const onlyAnswered = 'Answers are as long as the catalog, the law and the record of a building are; everything that is sent is bounded, and this waiver does not reach there.'
const health = /^\/paths\/~1(livez|readyz)\//

export const waivers: readonly Waiver[] = [
  { linter: 'redocly', rule: 'no-illogical-composition-keywords', at: /\/allOf$/, why: 'Description of a member beside a reference to its schema; OpenAPI 3.0 tools drop what stands directly beside a reference.' },
  { linter: 'spectral', rule: 'oas3-operation-security-defined', at: /\/security\//, why: 'Names the scope that the token needs. OpenAPI 3.1 allows such names with every kind of scheme; the rule is of 3.0, where only OAuth2 has them.' },
  { linter: 'spectral', rule: 'info-contact', at: /^\/info$/, why: 'Whoever runs the service is the contact, and the document is the same for all of them.' },
  { linter: 'spectral', rule: 'owasp:api4:2023-string-limit', at: /^\/components\/(schemas|headers)\//, why: onlyAnswered },
  { linter: 'spectral', rule: 'owasp:api4:2023-array-limit', at: /^\/components\/schemas\//, why: onlyAnswered },
  { linter: 'spectral', rule: 'owasp:api4:2023-string-limit', at: /^\/paths\/.*\/responses\//, why: onlyAnswered },
  { linter: 'spectral', rule: 'owasp:api4:2023-string-restricted', at: /./, why: 'Words of people, texts of law and ids of other systems follow no pattern; what we make ourselves has one.' },
  { linter: 'spectral', rule: 'owasp:api4:2023-integer-format', at: /./, why: 'minimum and maximum say it exactly; int64 would promise numbers that JSON readers round.' },
  { linter: 'spectral', rule: 'owasp:api8:2023-define-cors-origin', at: /./, why: 'For machines and for apps with a server of their own: no browser page of another origin is let in, so there is no such header.' },
  { linter: 'spectral', rule: 'owasp:api4:2023-rate-limit', at: health, why: 'A platform that probes is not counted.' },
  { linter: 'spectral', rule: 'owasp:api4:2023-rate-limit-responses-429', at: health, why: 'A platform that probes is not counted.' },
  { linter: 'spectral', rule: 'owasp:api8:2023-define-error-responses-401', at: health, why: 'A platform that probes has no token, and none is looked at.' },
  { linter: 'spectral', rule: 'owasp:api2:2023-no-credentials-in-url', at: /^\/paths\/~1v1~1tokens~1\{token\}\//, why: 'It is the id of the token, which lets nobody in; the secret is only ever in a header.' },
]
