import type { NewEvent, Webhook } from '../../src/store/outbox.ts'

export const start = '2026-03-02T09:00:00.000Z'

/** A moment so many seconds after the start. */
export const at = (seconds: number): string => new Date(Date.parse(start) + seconds * 1_000).toISOString()

export const webhook = (id: string, change: Partial<Webhook> = {}): Webhook => ({
  id, target: 'https://receiver.example.com/hook', description: null, eventTypes: ['projectCreated', 'openingRecorded'], projects: null,
  secrets: [{ sealed: 'clear:whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw', until: null }], createdAt: start, createdBy: 'token-1',
  enabledAt: start, disabledAt: null, disabledBecause: null, lastDeliveredAt: null, ...change,
})

export const happening = (id: string, change: Partial<NewEvent> = {}): NewEvent => ({
  id, type: 'projectCreated', project: 'p', source: 'https://wythe.example/v1/projects/p', at: start, text: (sequence) => JSON.stringify({ id, sequence, words: '3½″' }), ...change,
})
