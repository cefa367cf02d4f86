// Saved names in a question: what they stand for takes their place before the question is read.

import type { Locale } from '../../ground/locale.ts'
import { plainText } from '../../ground/plain-text.ts'
import { attempt } from '../../ground/problem.ts'
import type { Text } from '../../ground/text.ts'
import type { Question } from '../../language/sentence/question.ts'
import type { KitEntry, KitKind, KitMemory } from '../../memory/kit.ts'
import type { Owner } from '../../memory/owner.ts'
import type { Occasion } from '../occasion.ts'
import type { Registry } from '../registry.ts'
import { misfit, standsFor } from './kit.words.ts'
import { isNameShaped, isReserved, longestName, mostNameWords, nameForm } from './kit-name.ts'

/** Which entries can stand where a value of a kind is wanted. A pack can serve as a source. */
const fitting: Readonly<Record<string, readonly KitKind[]>> = {
  pack: ['pack'],
  charger: ['charger'],
  source: ['source', 'pack'],
  packs: ['pack'],
  'session packs': ['pack'],
  'session chargers': ['charger'],
  'session sources': ['source', 'pack'],
  'kit name': ['pack', 'charger', 'source'],
  'pack name': ['pack'],
}
const fittingFor = (valueKind: string | undefined): readonly KitKind[] => fitting[valueKind ?? ''] ?? []

/** The asker's own kit, which hides the community's where both know a name. */
export const ownersFor = ({ asker, community }: Occasion): readonly [Owner, Owner] => [
  { scope: 'person', id: asker.id },
  { scope: 'community', id: community.id },
]

interface Named {
  readonly question: Question
  /** The entries whose names it held. */
  readonly used: readonly KitEntry[]
}

type Find = (texts: readonly string[]) => Promise<readonly KitEntry[]>

const finder =
  (registry: Registry, kit: KitMemory, occasion: Occasion): Find =>
  texts =>
    kit.find(
      ownersFor(occasion),
      [...new Set(texts.flatMap(possibleNames))].filter(name => !isReserved(name, registry.vocabulary)),
    )

/** The question with every saved name among its details replaced. Throws a Problem for a name of another kind. */
export const withSavedNames = (
  question: Question,
  registry: Registry,
  kit: KitMemory,
  occasion: Occasion,
): Promise<Named> => expandOptions(question, registry, finder(registry, kit, occasion))

/** A plain sentence with every saved name in it replaced. */
export async function namesReplaced(
  text: string,
  registry: Registry,
  kit: KitMemory,
  occasion: Occasion,
): Promise<{ readonly text: string; readonly used: readonly KitEntry[] }> {
  return replaceNames(text, await finder(registry, kit, occasion)([text]))
}

/** The read-as line with each name before what it stands for. */
export function withNames(readAs: Text, used: readonly KitEntry[], locale: Locale): Text {
  return used.reduce((line, entry) => {
    const { name, notation } = entry
    return line.includes(notation)
      ? locale.own(line.replace(notation, () => `${name} (${notation})`))
      : standsFor(line, entry, locale)
  }, readAs)
}

/** Saved names for an option's value, as far as it is written. */
export async function namesStartingWith(
  prefix: string,
  valueKind: string,
  most: number,
  kit: KitMemory,
  occasion: Occasion,
): Promise<readonly string[]> {
  const kinds = fittingFor(valueKind)
  if (kinds.length === 0 || prefix.length > longestName) return []
  const entries = await kit.startingWith(ownersFor(occasion), nameForm(prefix), kinds, most)
  return entries.map(({ name }) => name)
}

const namedKinds = Object.keys(fitting).filter(kind => kind !== 'kit name' && kind !== 'pack name')

/** A value that reads as it stands is left alone, so a saved name never changes what notation means. */
async function expandOptions(question: Question, registry: Registry, find: Find): Promise<Named> {
  const command = registry.get(question.command)
  const kindOf = (option: string) => command.takes[option]?.kind
  const strange = Object.entries(question.options).filter(([option, text]) => {
    const kind = kindOf(option)
    return kind && namedKinds.includes(kind.name) && !attempt(() => kind.read(text, {}))
  })
  if (strange.length === 0) return { question, used: [] }
  const entries = await find(strange.map(([, text]) => text))
  const expanded = strange.map(([option, text]) => ({ option, ...replaceNames(text, entries) }))
  for (const { option, used } of expanded) refuseMisfit(option, kindOf(option)?.name ?? '', used)
  const values = Object.fromEntries(expanded.map(({ option, text }) => [option, text]))
  return {
    question: { ...question, options: { ...question.options, ...values } },
    used: expanded.flatMap(({ used }) => used),
  }
}

function refuseMisfit(option: string, valueKind: string, used: readonly KitEntry[]): void {
  const other = used.find(({ kind }) => !fittingFor(valueKind).includes(kind))
  if (other) throw misfit(other, option)
}

/** "6 wrens" are six of the pack named wren, unless "wrens" is a name too. */
const plural = /'?s$/u

/** Runs of words that could be a name, in the form in which names are stored. */
function possibleNames(text: string): readonly string[] {
  const words = wordsOf(nameForm(text))
  const runs = words.flatMap((_, start) =>
    Array.from({ length: mostNameWords }, (_, more) => words.slice(start, start + more + 1).join(' ')),
  )
  return runs.flatMap(run => [run, run.replace(plural, '')]).filter(isNameShaped)
}

/** Without quotes and the punctuation of a sentence. */
const wordsOf = (text: string): readonly string[] =>
  text.split(' ').map(word => word.replace(/^["']+|["',:;.?!]+$/g, ''))

/** Longer names first: "wren two" before "wren". */
function replaceNames(text: string, entries: readonly KitEntry[]): { text: string; used: readonly KitEntry[] } {
  if (entries.length === 0) return { text, used: [] }
  const names = entries.map(({ name }) => name).toSorted((a, b) => b.length - a.length)
  const pattern = new RegExp(`(?<![^ "'])["']?(${names.join('|')})(?:'?s)?["']?(?=[,:;.?!]* |[,:;.?!]*$)`, 'giu')
  const byName = new Map(entries.map(entry => [entry.name, entry]))
  const used = new Set<KitEntry>()
  const replaced = plainText(text)
    .normalize('NFC')
    .replace(pattern, (found, name: string, at: number, whole: string) => {
      const entry = byName.get(name.toLowerCase())
      if (!entry || (entry.kind === 'source' && hasFigures(whole.slice(0, at), whole.slice(at + found.length))))
        return found
      used.add(entry)
      return entry.notation
    })
  return { text: replaced, used: [...used] }
}

/** "180W laptop brick", "brick 19V 3A": a source that is told by its own figures is not the saved one. */
const hasFigures = (before: string, behind: string): boolean =>
  /\d ?(?:v|w|a)(?: [\p{L}-]+){0,2} $/iu.test(before) || /^,? \d[\d.]* ?(?:v|w)(?!\p{L})/iu.test(behind)
