import type { Token } from '../store/records.ts'

export function isUsable({ revokedAt, expiresAt }: Pick<Token, 'revokedAt' | 'expiresAt'>, now: Date): boolean {
  return revokedAt === null && (expiresAt === null || Date.parse(expiresAt) > now.getTime())
}
