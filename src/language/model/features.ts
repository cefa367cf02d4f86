// What the model weighs in a text: words, pairs of words, parts of words, what they are about, what values there are.

import { longestText, plainText } from '../../ground/plain-text.ts'
import type { Candidate } from '../candidates/index.ts'
import { type Clause, clausesOf, folded } from './clauses.ts'
import { conceptsOf } from './concepts.ts'
import { hashOf, mixed } from './hash.ts'

/** Takes a feature by its hash, and how much it counts; the same one may come several times and counts once. */
export type Emit = (feature: number, weight: number) => void

/** How much a kind of feature counts against the others. */
const weights = { across: 0.4, part: 0.4, concept: 1.3, kind: 1.5, opening: 1.5, ending: 1.3 }

/** What is told beside a question, in words that weigh for themselves. */
const unweighed: ReadonlySet<Candidate['kind']> = new Set(['apart', 'until'])

/** All features of a text. `found` are the values of the same text. Throws nothing. */
export function features(text: string, found: readonly Candidate[], emit: Emit): void {
  const isBeside = ({ kind }: Candidate) => unweighed.has(kind)
  const candidates = found.some(isBeside) ? found.filter(one => !isBeside(one)) : found
  const clauses = clausesOf(text, candidates)
  emit(hashOf('always'), 1)
  wholeFeatures(text, clauses, emit)
  valueFeatures(text, clauses, candidates, emit)
  for (const { words } of clauses) {
    clauseFeatures(words, 'said', emit)
    for (const word of words) partFeatures(word, emit)
  }
  // Where nothing asks, all of it is the question.
  const asking = clauses.filter(({ asks }) => asks)
  for (const { words } of asking.length > 0 ? asking : clauses) clauseFeatures(words, 'asked', emit)
  acrossFeatures(clauses, emit)
}

function wholeFeatures(text: string, clauses: readonly Clause[], emit: Emit): void {
  const words = clauses.flatMap(clause => clause.words).filter(word => word !== '?')
  const [first = '', second] = words
  const [before, last = ''] = [words.at(-2), words.at(-1)]
  const named = (name: string, weight = 1) => emit(hashOf(name), weight)
  named(`words ${Math.min(6, Math.ceil(words.length / 3))}`)
  named(`length ${lengthOf(words.length)}`)
  if (text.includes('?')) named('question mark')
  if (text.includes(':')) named('colon')
  if (/["“”«»]|(?<![a-z])'[a-z]|[a-z]'(?![a-z])/i.test(text)) named('quotes')
  named(`first ${first}`, weights.opening)
  for (const concept of conceptsOf(first)) named(`first of ${concept}`, weights.opening)
  if (second !== undefined) named(`first ${first} ${second}`, weights.opening)
  named(`last ${last}`, weights.ending)
  if (before !== undefined) named(`last ${before} ${last}`, weights.ending)
  if (words.length <= 4) named(`whole ${words.join(' ')}`)
  if (clauses.length < 2) return
  for (const word of clauses[0]?.words ?? [])
    for (const concept of conceptsOf(word)) named(`first clause of ${concept}`)
  for (const word of clauses.at(-1)?.words ?? [])
    for (const concept of conceptsOf(word)) named(`last clause of ${concept}`)
}

function lengthOf(words: number): string {
  if (words < 3) return `${words}`
  if (words < 6) return 'short'
  if (words < 12) return 'middle'
  return words < 25 ? 'long' : 'very long'
}

const ways: ReadonlySet<string> = new Set(['from', 'to'])

/** The kinds of value that are there, in the surest reading and in any, in pairs, and the units as typed. */
function valueFeatures(text: string, clauses: readonly Clause[], candidates: readonly Candidate[], emit: Emit): void {
  const counts = new Map<string, number>()
  for (const { words } of clauses)
    for (const word of words) if (word.startsWith('#')) counts.set(word, (counts.get(word) ?? 0) + 1)
  const kinds = [...counts.keys()].sort()
  kinds.forEach((kind, index) => {
    for (let times = 1; times <= Math.min(3, counts.get(kind) ?? 0); times += 1)
      emit(hashOf(`${times} of ${kind}`), times > 2 ? 1 : weights.kind)
    for (const other of kinds.slice(index + 1)) emit(hashOf(`${kind} with ${other}`), 1)
  })
  for (const { kind, score, text: value, cue } of candidates) {
    if (score < 0.5) continue
    emit(hashOf(`maybe ${kind}`), 1)
    // From where to where tells what is to be done.
    if (kind === 'state' && ways.has(cue ?? ''))
      emit(hashOf(`state ${cue} ${/\d/.test(value) ? '#' : value}`), weights.kind)
  }
  const plain = folded(plainText(text.slice(0, longestText)))
  for (const [, unit] of plain.matchAll(/\d\s?([a-z%°²ωµ]+)/g)) emit(hashOf(`unit ${unit}`), 1)
}

/** What the clauses that ask nothing are about, with what those that ask are about: "to storage, …, how long". */
function acrossFeatures(clauses: readonly Clause[], emit: Emit): void {
  const about = (asking: boolean) =>
    new Set(clauses.filter(({ asks }) => asks === asking).flatMap(({ words }) => words.flatMap(aboutOf)))
  const [said, asked] = [about(false), [...about(true)].map(hashOf)]
  for (const one of said) {
    const hash = mixed(across, hashOf(one))
    for (const other of asked) emit(mixed(hash, other), weights.across)
  }
}

const across = hashOf('across')
const aboutOf = (word: string): readonly string[] => (word.startsWith('#') ? [word] : conceptsOf(word))

/** Words and what they are about, alone and with the next; `role` keeps the asking clauses apart. */
function clauseFeatures(words: readonly string[], role: string, emit: Emit): void {
  const hashes = words.map(hashOf)
  const concepts = words.map(word => conceptsOf(word).map(hashOf))
  const [word, pair, concept] = [`${role} word`, `${role} pair`, `${role} concept`].map(hashOf) as [
    number,
    number,
    number,
  ]
  words.forEach((_, at) => {
    const [here, next] = [hashes[at] ?? 0, hashes[at + 1]]
    emit(mixed(word, here), 1)
    for (const one of concepts[at] ?? []) emit(mixed(concept, one), weights.concept)
    for (const one of concepts[at] ?? [])
      for (const other of concepts[at + 2] ?? []) emit(mixed(mixed(concept, one), ~other), 1)
    if (next === undefined) return
    emit(mixed(mixed(pair, here), next), 1)
    for (const one of concepts[at] ?? []) {
      emit(mixed(mixed(pair, one), next), 1)
      for (const other of concepts[at + 1] ?? []) emit(mixed(mixed(concept, one), other), 1)
    }
    for (const other of concepts[at + 1] ?? []) emit(mixed(mixed(pair, here), ~other), 1)
  })
}

const beginning = hashOf('beginning')
const part = hashOf('part')

/** Three to five letters in a row and the first five: for words nobody wrote before, and for misspelled ones. */
function partFeatures(word: string, emit: Emit): void {
  if (word.startsWith('#') || word.length < 3) return
  if (word.length > 5) emit(mixed(beginning, hashOf(word.slice(0, 5))), 1)
  const bounded = `^${word}$`
  for (let at = 0; at + 3 <= bounded.length; at += 1)
    for (let end = at + 3; end <= Math.min(at + 5, bounded.length); end += 1)
      emit(mixed(part, hashOf(bounded.slice(at, end))), weights.part)
}
