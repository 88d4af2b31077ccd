/** The request that the API reference shows. The same one is run by a test. */
export const evaluationExample = {
  jurisdiction: 'us-xa-101-2400000',
  asOf: '2026-03-01',
  opening: {
    reference: 'W-104',
    basis: 'asBuilt',
    lengthUnit: 'in',
    opening: { kind: 'window', width: '48', height: '60', headShape: 'flat' },
    head: {
      support: { kind: 'looseSteelAngle', section: 'L5x3-1/2x5/16', bearing: ['4', '3 1/2'] },
      flashing: { present: true, extensionPastJamb: ['8', '8'], endDamHeight: ['2', '0'], upstand: '8' },
      weeps: { kind: 'openHeadJoint', spacing: '24', onFlashing: true },
    },
  },
} as const
