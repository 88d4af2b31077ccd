import { expect, test } from 'vitest'
import { stableId, uuidOf } from '../../src/exports/stable-id.ts'

// www.example.com in the namespace of DNS names, the example of RFC 9562, appendix A.4; the value as uuid.uuid5 of Python 3.11 gives it
test('a UUID of version 5 is the one of the standard', () => expect(uuidOf('6ba7b810-9dad-11d1-80b4-00c04fd430c8', 'www.example.com')).toBe('2ed6657d-e927-568b-95e1-2665a8aea6a2'))

test('parts are told apart', () => expect(stableId('a', 'b')).not.toBe(stableId('a,b')))
