const usualSize = 1_048_576
const [quote, backslash] = [34, 92]
/** The engine has a dozen kinds of texts, and after the fifth looks a method of theirs up anew for each character: this one is known beforehand. */
// eslint-disable-next-line @typescript-eslint/unbound-method -- only called with a text
const { charCodeAt } = String.prototype

/** Room in which a text is put together in UTF-8. It grows as needed and is used again and again. */
export class Utf8 {
  #bytes = new Uint8Array(usualSize)
  #at = 0
  readonly #encoder = new TextEncoder()

  get length(): number {
    return this.#at
  }

  /** Begins anew, and lets go of room that only a long text needed. */
  clear(): void {
    if (this.#bytes.length > usualSize) this.#bytes = new Uint8Array(usualSize)
    this.#at = 0
  }

  /** What was written since, in the room itself: it holds until more is written. */
  since(begin: number): Uint8Array {
    return this.#bytes.subarray(begin, this.#at)
  }

  put(part: Uint8Array): void {
    this.#makeRoom(part.length)
    this.#bytes.set(part, this.#at)
    this.#at += part.length
  }

  putMark(mark: number): void {
    this.#makeRoom(1)
    this.#bytes[this.#at++] = mark
  }

  putAscii(text: string): void {
    this.#makeRoom(text.length)
    for (let index = 0; index < text.length; index += 1) this.#bytes[this.#at++] = text.charCodeAt(index)
  }

  putText(text: string): void {
    this.#makeRoom(text.length * 3)
    this.#at += this.#encoder.encodeInto(text, this.#bytes.subarray(this.#at)).written
  }

  /**
   * Puts a text in quotation marks, character by character, which for short texts is faster than to ask the platform.
   * Answers false, and puts nothing, where JSON writes a character of it otherwise than it stands.
   */
  putQuoted(text: string): boolean {
    const { length } = text
    this.#makeRoom(length * 3 + 2)
    const bytes = this.#bytes
    let end = this.#at
    bytes[end++] = quote
    for (let index = 0; index < length; index += 1) {
      const code = charCodeAt.call(text, index)
      if (code < 0x20 || code === quote || code === backslash || (code >= 0xd800 && code <= 0xdfff)) return false
      if (code < 0x80) bytes[end++] = code
      else if (code < 0x800) {
        bytes[end++] = 0xc0 | (code >> 6)
        bytes[end++] = 0x80 | (code & 0x3f)
      } else {
        bytes[end++] = 0xe0 | (code >> 12)
        bytes[end++] = 0x80 | ((code >> 6) & 0x3f)
        bytes[end++] = 0x80 | (code & 0x3f)
      }
    }
    bytes[end++] = quote
    this.#at = end
    return true
  }

  #makeRoom(more: number): void {
    if (this.#at + more <= this.#bytes.length) return
    const wider = new Uint8Array(Math.max(this.#bytes.length * 2, this.#at + more))
    wider.set(this.since(0))
    this.#bytes = wider
  }
}

