import type { FailureCode } from '../operations/operation.ts'

export interface ProblemType {
  readonly status: number
  readonly title: string
  readonly mend: string
  /** Where the type is registered, if it is not our own. */
  readonly type?: string
}

/** The one table of problem codes: what each means over HTTP, and how to mend it. Each has a page at /problems/{code}. */
export const problemTypes = {
  invalidInput: { status: 422, title: 'The input cannot be used as it is', mend: 'Read "errors": each names a place by JSON Pointer, what is wrong there and what would be right. All are told at once.' },
  placeMissing: { status: 422, title: 'The place is missing', mend: 'Give "jurisdiction", or a published "edition".' },
  unknownJurisdiction: { status: 422, title: 'The jurisdiction is not known', mend: 'List the known ones with GET /v1/jurisdictions.' },
  unknownEdition: { status: 422, title: 'The edition is not known', mend: 'List the known ones with GET /v1/publications.' },
  severalCodesAdopted: { status: 422, title: 'Several codes are adopted there', mend: 'Say which one governs the building with "publication".' },
  catalogFault: { status: 500, title: 'The catalog cannot be resolved for this place', mend: 'The catalog has to be mended; the request is not at fault.' },
  notFound: { status: 404, title: 'Not found', mend: 'Check the id or the address.' },
  unauthenticated: { status: 401, title: 'A token is needed', mend: 'Send "Authorization: Bearer …" with a token that has the scope.' },
  forbidden: { status: 403, title: 'The token may not do this', mend: 'Ask whoever runs the service for a token with the scope.' },
  idTaken: { status: 409, title: 'The id is taken', mend: 'What is on record is never changed: send it under a new id.' },
  versionMissing: { status: 428, title: 'The version is missing', mend: 'Read the draft, and send its ETag in If-Match.' },
  versionStale: { status: 412, title: 'Changed since it was read', mend: 'Read the draft again and decide anew.' },
  recordBusy: { status: 409, title: 'Others were faster on the same record', mend: 'Nothing of it was taken. Send the same again: what is on record already is there once.' },
  amendmentRefused: { status: 422, title: 'The amendment cannot be adopted as it is', mend: 'Read "errors": each names a place in the amendment and what stands in its way.' },
  alreadyAdopted: { status: 409, title: 'An amendment of this id is adopted', mend: 'What is adopted is never changed; adopt a later amendment that supersedes it.' },
  catalogGone: { status: 409, title: 'The catalog of that time is not here', mend: 'Evaluate by a release that is here, or by the current catalog.' },
  webhookDisabled: { status: 409, title: 'The webhook is disabled', mend: 'See to the receiver, then enable the webhook again.' },
  keyReused: { status: 422, title: 'The Idempotency-Key was used for another request', mend: 'Make a new key for each new request; send the same request to have the same answer again.' },
  stillRunning: { status: 409, title: 'The same request is still being worked on', mend: 'Send it again after a moment: its answer will be the one of the first.' },
  quotaExceeded: { status: 429, title: 'More was asked for than the quota allows', mend: 'Wait as many seconds as Retry-After says, or ask for less at once.', type: 'https://iana.org/assignments/http-problem-types#quota-exceeded' },
  malformed: { status: 400, title: 'The request cannot be read', mend: 'Send well-formed JSON.' },
  methodNotAllowed: { status: 405, title: 'The method is not supported here', mend: 'The Allow header names the methods that are.' },
  notAcceptable: { status: 406, title: 'No media type that the caller accepts', mend: 'Leave out the Accept header, or name a type that is answered.' },
  unsupportedMediaType: { status: 415, title: 'The media type is not supported', mend: 'Send application/json.' },
  tooLarge: { status: 413, title: 'The request is too large', mend: 'Send less at a time: one opening, or a part of a sheet.' },
  addressTooLong: { status: 414, title: 'The address is too long', mend: 'Shorten the query; GraphQL takes a long document in the body of a POST.' },
  headersTooLarge: { status: 431, title: 'The headers are too many or too large', mend: 'Send fewer and shorter headers.' },
  tooSlow: { status: 408, title: 'The request took too long to arrive', mend: 'Send it again over a faster line, or in parts.' },
  unavailable: { status: 503, title: 'The service is busy or stopping', mend: 'Try again after a moment.' },
  identityProviderSilent: { status: 503, title: 'The access token cannot be checked now', mend: 'The keys of the identity provider cannot be had. Try again after a moment; the token may be good.' },
  internal: { status: 500, title: 'The service failed', mend: 'The failure is logged under the id in "instance". It was not taken for a pass.' },
} as const satisfies Record<string, ProblemType>

export type ProblemCode = keyof typeof problemTypes

/** Every failure of an operation has its row. */
export const codeOfFailure: Readonly<Record<FailureCode, ProblemCode>> = {
  invalidInput: 'invalidInput', idTaken: 'idTaken', placeMissing: 'placeMissing', unknownJurisdiction: 'unknownJurisdiction', unknownEdition: 'unknownEdition',
  severalCodesAdopted: 'severalCodesAdopted', catalogFault: 'catalogFault', notFound: 'notFound', unauthenticated: 'unauthenticated', forbidden: 'forbidden', versionMissing: 'versionMissing',
  versionStale: 'versionStale', recordBusy: 'recordBusy', amendmentRefused: 'amendmentRefused', alreadyAdopted: 'alreadyAdopted', catalogGone: 'catalogGone', webhookDisabled: 'webhookDisabled',
}
