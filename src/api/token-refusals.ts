import { errors } from 'jose'

/** Faults of the token itself; any other is of the provider, and says nothing of the token. */
const ofToken: Readonly<Record<string, string>> = {
  ERR_JWT_EXPIRED: 'The access token has expired.',
  ERR_JWKS_NO_MATCHING_KEY: 'The access token is signed by a key that the identity provider does not have.',
  ERR_JWKS_MULTIPLE_MATCHING_KEYS: 'The access token does not say by which key it is signed.',
  ERR_JWS_SIGNATURE_VERIFICATION_FAILED: 'The signature of the access token is wrong.',
  ERR_JOSE_ALG_NOT_ALLOWED: 'The access token is signed in a way that is not taken here.',
  ERR_JOSE_NOT_SUPPORTED: 'The access token is signed in a way that is not taken here.',
  ERR_JWS_INVALID: 'The access token cannot be read.',
  ERR_JWT_INVALID: 'The access token cannot be read.',
  ERR_JWT_CLAIM_VALIDATION_FAILED: 'A claim of the access token is wrong.',
}

const ofClaim: Readonly<Record<string, string>> = {
  iss: 'The access token is of another issuer.',
  aud: 'The access token was made for another service.',
  nbf: 'The access token is not valid yet.',
}

export function isOfToken(error: unknown): error is errors.JOSEError {
  return error instanceof errors.JOSEError && Object.hasOwn(ofToken, error.code)
}

/** Why a token is refused, in words for whoever sent it. Claims are looked at after the signature, so that this tells nothing to a forger. */
export function refusalOf(error: errors.JOSEError): string {
  if (!(error instanceof errors.JWTClaimValidationFailed)) return ofToken[error.code] ?? 'The access token cannot be used.'
  return error.reason === 'missing' ? `The access token lacks the claim "${error.claim}".` : (ofClaim[error.claim] ?? `The claim "${error.claim}" of the access token is wrong.`)
}
