/**
 * Signs for outcomes by the paths of their outline and of what stands in it, sixteen units wide. Told apart by their outline, so that they are
 * read on any printer and by anybody's eyes: a ring with a check, a filled square with a cross, a diamond with a question mark, a broken ring, a triangle.
 */
export const shapes = {
  pass: ['M8 1.25a6.75 6.75 0 1 0 0 13.5a6.75 6.75 0 1 0 0-13.5z', 'M4.8 8.3l2.3 2.4 4.2-5'],
  fail: ['M1 1h14v14H1z', 'M4.8 4.8l6.4 6.4M11.2 4.8l-6.4 6.4'],
  notDetermined: ['M8 .9L15.1 8 8 15.1.9 8z', 'M6.1 6.6a1.9 1.9 0 1 1 2.7 1.7c-.5.3-.8.6-.8 1.3M8 10.9v1.1'],
  notApplicable: ['M8 1.25a6.75 6.75 0 1 0 0 13.5a6.75 6.75 0 1 0 0-13.5z', 'M5 8h6'],
  attention: ['M8 1.2L15.2 14.6H.8z', 'M8 5.6v4.6M8 11.6v1.3'],
} as const

export type Shape = keyof typeof shapes
