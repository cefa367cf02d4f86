// Words one slip of the finger away: a letter missing, doubled, wrong, or two letters swapped.

import { addTo } from '../../../ground/add-to.ts'

const shortest = 6

/** Finds the word of a list that a typed one is one slip from. Words under six letters are left alone. */
export class NearWords {
  readonly #byLoss = new Map<string, string[]>()
  readonly #ordinary: ReadonlySet<string>

  /** `ordinary`: words that are meant as they stand, near as they are to one of the list. */
  constructor(words: Iterable<string>, ordinary: ReadonlySet<string>) {
    this.#ordinary = ordinary
    for (const word of words) {
      if (word.length < shortest) continue
      for (const loss of lossesOf(word)) addTo(this.#byLoss, loss, word)
    }
  }

  /** All words of the list that `typed` may stand for. */
  of(typed: string): readonly string[] {
    if (typed.length < shortest - 1 || typed.length > 20 || this.#ordinary.has(typed)) return []
    const found = new Set<string>()
    for (const loss of lossesOf(typed)) {
      for (const word of this.#byLoss.get(loss) ?? []) if (oneSlip(typed, word)) found.add(word)
    }
    return [...found]
  }
}

/** The word itself and every form of it that lacks one letter; the first letter stays. */
function lossesOf(word: string): Set<string> {
  const losses = new Set([word])
  for (let i = 1; i < word.length; i += 1) losses.add(word.slice(0, i) + word.slice(i + 1))
  return losses
}

/** Whether two words differ by one letter lost, added, changed or swapped with its neighbour. */
function oneSlip(a: string, b: string): boolean {
  if (a === b || Math.abs(a.length - b.length) > 1) return false
  let from = 0
  while (from < a.length && from < b.length && a[from] === b[from]) from += 1
  let endA = a.length
  let endB = b.length
  while (endA > from && endB > from && a[endA - 1] === b[endB - 1]) {
    endA -= 1
    endB -= 1
  }
  const restA = a.slice(from, endA)
  const restB = b.slice(from, endB)
  if (restA.length <= 1 && restB.length <= 1) return true
  return restA.length === 2 && restB.length === 2 && restA[0] === restB[1] && restA[1] === restB[0]
}
