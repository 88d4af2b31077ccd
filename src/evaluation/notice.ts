/** Carried by every evaluation and report. */
export const notice =
  'This is an aid, not the adopted code text and not an approval. The local code and the authority having jurisdiction prevail. ' +
  'Structural results must be confirmed by a licensed professional. Figures marked "memory" have not been confirmed in a published text.'
