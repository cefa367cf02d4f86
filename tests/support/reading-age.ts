// The age at which English is read with ease: Flesch and Kincaid's grade (1975) and the five years before school.

const yearsBeforeSchool = 5

const sentences = (text: string): readonly string[] =>
  text
    .split(/[.?!](?=\s|$)/)
    .map(one => one.trim())
    .filter(Boolean)

/** A number or a unit is read as one short word. */
const words = (text: string): readonly string[] => text.match(/[\p{L}\d][\p{L}\d'.,/°-]*/gu) ?? []

/** Groups of vowels, without a silent e at the end. */
const syllables = (word: string): number => {
  const groups = word
    .toLowerCase()
    .replace(/(?<=[^aeiouyl]|[aeiouy]l)e$|(?<=[^aeiouydt])ed$/, '')
    .match(/[aeiouy]+/g)
  return Math.max(1, groups?.length ?? 0)
}

export function readingAge(texts: readonly string[]): number {
  const all = texts.flatMap(sentences)
  const spoken = all.flatMap(words)
  const grade =
    0.39 * (spoken.length / all.length) +
    11.8 * (spoken.reduce((sum, one) => sum + syllables(one), 0) / spoken.length) -
    15.59
  return grade + yearsBeforeSchool
}
