// How like two short texts are: the cosine between their words, their families of words and their pairs of words.

import { addTo } from '../../ground/add-to.ts'
import { contentOf, familiesOfStem, isAmount, isOfForm, stemsOf } from './words.ts'

/** Weights of a text by term. */
type Terms = ReadonlyMap<string, number>

const ofFamily = 0.4
const ofPair = 0.5
/** Packs and amounts stand in nearly every message. */
const ofAmount = 0.3

function termsOf(text: string): Terms {
  const stems = stemsOf(text)
  const terms = new Map<string, number>()
  for (const [index, one] of stems.entries()) {
    terms.set(one, isAmount(one) ? ofAmount : 1)
    for (const family of familiesOfStem(one)) terms.set(family, ofFamily)
    if (index > 0) terms.set(`${stems[index - 1]} ${one}`, ofPair)
  }
  return terms
}

const scaled = (terms: Terms, rarity: (term: string) => number = () => 1): Terms => {
  const weighed = [...terms].map(([term, weight]) => [term, weight * rarity(term)] as const)
  const length = Math.hypot(...weighed.map(([, weight]) => weight)) || 1
  return new Map(weighed.map(([term, weight]) => [term, weight / length]))
}

/** "How long", "why is", "can I": what kind of question it is, whatever it is about. */
const formOf = (terms: Terms): Terms => scaled(new Map([...terms].filter(([term]) => isOfForm(term))))

/** What several texts have in common, as one. */
function together(all: readonly Terms[]): Terms {
  const sum = new Map<string, number>()
  for (const [term, weight] of all.flatMap(terms => [...terms])) sum.set(term, (sum.get(term) ?? 0) + weight)
  return scaled(sum)
}

export interface Likeness {
  /** How like the text is to the nearest phrase of the group, 0 to 1. */
  readonly nearest: number
  /** How much of what the text is about the group speaks of at all, 0 to 1. */
  readonly covered: number
  /** How like the kind of question is to those of the group, 0 to 1. */
  readonly form: number
  /** So many words of the text say what it is about. */
  readonly words: number
}

/** In how many of the groups each term stands. */
export function groupsByTerm(groups: readonly (readonly string[])[]): Map<string, number> {
  const counts = new Map<string, number>()
  for (const phrases of groups) {
    for (const term of new Set(phrases.flatMap(phrase => [...termsOf(phrase).keys()]))) {
      counts.set(term, (counts.get(term) ?? 0) + 1)
    }
  }
  return counts
}

/** For groups of phrases, with how many of them a term stands in: how like a text is to each of them. */
export function likenessTo(
  groups: readonly (readonly string[])[],
  groupsWith: (term: string) => number | undefined,
): (text: string) => (group: number) => Likeness {
  const rarity = (term: string) => {
    const having = groupsWith(term) ?? 0
    return Math.log(1 + (groups.length - having + 0.5) / (having + 0.5))
  }
  // Few groups are ever compared: each is weighed when it first is.
  const weighed = new Map<number, { phrases: number; having: Having; form: Terms }>()
  const weigh = (group: number) => {
    const phrases = groups[group]?.map(termsOf) ?? []
    const having = havingIn(phrases.map(phrase => scaled(phrase, rarity)))
    return { phrases: phrases.length, having, form: together(phrases.map(formOf)) }
  }
  return text => {
    const asked = scaled(termsOf(text), rarity)
    const form = formOf(termsOf(text))
    const about = contentOf(stemsOf(text)).filter(one => !isAmount(one))
    return group => {
      const weights = weighed.get(group) ?? weigh(group)
      weighed.set(group, weights)
      return {
        nearest: nearestOf(weights.phrases, weights.having, asked),
        form: product(form, weights.form),
        words: about.length,
        covered: coverage(about, weights.having, rarity),
      }
    }
  }
}

/** By term, the phrases that it stands in and what it weighs there: so only what is asked is looked at. */
type Having = ReadonlyMap<string, readonly (readonly [phrase: number, weight: number])[]>

function havingIn(phrases: readonly Terms[]): Having {
  const having = new Map<string, (readonly [number, number])[]>()
  for (const [phrase, terms] of phrases.entries())
    for (const [term, weight] of terms) addTo(having, term, [phrase, weight] as const)
  return having
}

function nearestOf(phrases: number, having: Having, asked: Terms): number {
  const sums = new Float64Array(phrases)
  for (const [term, weight] of asked)
    for (const [phrase, there] of having.get(term) ?? []) sums[phrase] = (sums[phrase] ?? 0) + weight * there
  return sums.reduce((most, sum) => Math.max(most, sum), 0)
}

/** A word of the same family counts for half. */
function coverage(about: readonly string[], spoken: Having, rarity: (term: string) => number): number {
  let [whole, covered] = [0, 0]
  for (const one of about) {
    const weight = rarity(one)
    whole += weight
    if (spoken.has(one)) covered += weight
    else if (familiesOfStem(one).some(family => spoken.has(family))) covered += weight / 2
  }
  return whole === 0 ? 0 : covered / whole
}

function product(one: Terms, other: Terms): number {
  let sum = 0
  for (const [term, weight] of one) sum += weight * (other.get(term) ?? 0)
  return sum
}
