/** Builds something when it is first asked for, and once. Where that fails, whoever asks next tries again. */
export function late<T>(build: () => Promise<T>): () => Promise<T> {
  let built: Promise<T> | undefined
  return () => {
    built ??= build().catch((error: unknown) => {
      built = undefined
      throw error
    })
    return built
  }
}
