// A place in a text that moves forward as patterns match there.

import { shortened } from '../../ground/plain-text.ts'

export class Scanner {
  readonly text: string
  at: number

  /** `text` must be plain text (see text.ts). */
  constructor(text: string, at = 0) {
    this.text = text
    this.at = at
  }

  get done(): boolean {
    return this.at >= this.text.length
  }

  /** Moves past `pattern`, which must be sticky, where it matches here. */
  take(pattern: RegExp): RegExpExecArray | undefined {
    pattern.lastIndex = this.at
    const match = pattern.exec(this.text)
    if (!match) return undefined
    this.at = pattern.lastIndex
    return match
  }

  /** Runs `attempt`; where it gives undefined or throws the scanner is back where it was. */
  attempt<T>(attempt: () => T | undefined): T | undefined {
    const start = this.at
    let result: T | undefined
    try {
      result = attempt()
    } finally {
      if (result === undefined) this.at = start
    }
    return result
  }

  skipGap(): void {
    this.take(/[ ,;/]+/y)
  }

  /** The word that starts here, for quoting. */
  word(from = this.at): string {
    const end = this.text.indexOf(' ', from)
    return shortened(this.text.slice(from, end < 0 ? undefined : end).replace(/[,;]+$/, ''))
  }
}
