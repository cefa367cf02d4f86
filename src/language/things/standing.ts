// A pack or a source with where it stands: `3S 720 LiHV at 3.7V`, `4S 5000 Li-ion at 80%`, `2S 450 LiPo swollen`.

import type { Danger } from '../../charging/situation/dangers.ts'
import type { Pack } from '../../charging/things/pack.ts'
import type { Source } from '../../charging/things/source.ts'
import { plainText, problemAt } from '../../ground/plain-text.ts'
import { attempt } from '../../ground/problem.ts'
import { readChargeCurrent, writeCurrent } from '../quantities/quantities.ts'
import type { Read } from '../scan/read.ts'
import { readPack, writePack } from './pack.ts'
import { readSource, writeSource } from './source.ts'
import { aPercentage, onlyInPercent } from './source.words.ts'
import { type Level, readState, writeLevel } from './state.ts'

export interface StandingPack {
  readonly pack: Pack
  readonly from?: Level
  /** What it is to be charged with, in A. */
  readonly current_A?: number
  /** What says that it is not fit, as typed, and which dangers it tells of. */
  readonly unsound?: string
  readonly dangers?: readonly Danger[]
}

export interface StandingSource {
  readonly source: Source
  readonly charged?: Level
}

/** `at 1.3A`, `at 1C`: what is to be set, apart from where the pack stands. */
const setTo = / (?:at|@) ?([\d.,]+ ?m?[ac])(?= |$)/iu
const standing = /^(.*\S) (?:at|from|@) ?(\S.*)$/iu
/** Behind a pack of a list they leave that one out; a pack that burns or smokes ends the question instead. */
const unsoundWords: readonly (readonly [RegExp, readonly Danger[]])[] = [
  [/ (swollen|puff(?:ed|y)|bloated|bulging)(?= (?:at|from|@) |$)/iu, ['swollen']],
  [/ (punctured|pierced|dented|crushed|torn|leaking|damaged|burnt|melted)(?= (?:at|from|@) |$)/iu, ['pierced']],
  [/ (wet|soaked|waterlogged)(?= (?:at|from|@) |$)/iu, ['wet']],
  [/ (hot|overheated)(?= (?:at|from|@) |$)/iu, ['hotPack']],
  [/ (overcharged)(?= (?:at|from|@) |$)/iu, ['overfull']],
  [/ (crashed)(?= (?:at|from|@) |$)/iu, ['keptApart', 'crashed']],
]

function unsoundWord(plain: string): { word: string; dangers: readonly Danger[] } | undefined {
  for (const [sign, dangers] of unsoundWords) {
    const word = sign.exec(plain)?.[1]
    if (word !== undefined) return { word, dangers }
  }
  return undefined
}

/**
 * Reads a pack and, behind "at", its state and the current that it is to get; a last word like "swollen" is kept apart. Throws a Problem as
 * `readPack`.
 */
export function readStandingPack(text: string): Read<StandingPack> {
  const plain = plainText(text)
  const unsound = unsoundWord(plain)
  const sound = unsound ? plain.replace(` ${unsound.word}`, '') : plain
  const set = setTo.exec(sound)
  const rest = set ? sound.replace(set[0], '') : sound
  const [, head = rest, state] = standing.exec(rest) ?? []
  const { value: pack, assumed } = readPack(head)
  const from = state === undefined ? undefined : readState(state, pack)
  const current_A = set?.[1] === undefined ? undefined : readChargeCurrent(set[1], pack.capacity_Ah)
  return {
    value: { pack, current_A, from: from?.value, unsound: unsound?.word.toLowerCase(), dangers: unsound?.dangers },
    assumed: [...assumed, ...(from?.assumed ?? [])],
  }
}

export function writeStandingPack({ pack, from, current_A, unsound }: StandingPack): string {
  const set = current_A === undefined ? undefined : `at ${writeCurrent(current_A)}`
  return [writePack(pack), set, from && `at ${writeLevel(from)}`, unsound].filter(Boolean).join(' ')
}

/** Reads a source and, behind "at", how full its battery is. Throws a Problem as `readSource`. */
export function readStandingSource(text: string): Read<StandingSource> {
  const plain = plainText(text)
  const [, head = plain, state] = standing.exec(plain) ?? []
  const stored = state === undefined ? undefined : attemptSource(head)
  if (!stored || state === undefined) {
    const { value: source, assumed } = readSource(plain)
    return { value: { source }, assumed }
  }
  const { value: source, assumed } = stored
  const charged = readState(state, source.kind === 'battery' ? source.pack : undefined)
  if (source.kind !== 'battery' && charged.value.kind !== 'soc')
    throw problemAt(state, onlyInPercent, { expected: aPercentage, example: 'power bank 74Wh at 80%' })
  return { value: { source, charged: charged.value }, assumed: [...assumed, ...charged.assumed] }
}

/** A battery or power bank before an "at"; undefined for what cannot be drained (`20V at 5A`). */
function attemptSource(text: string): Read<Source> | undefined {
  const read = attempt(() => readSource(text))
  return read?.value.kind === 'battery' || read?.value.kind === 'power bank' ? read : undefined
}

export function writeStandingSource({ source, charged }: StandingSource): string {
  return charged ? `${writeSource(source)} at ${writeLevel(charged)}` : writeSource(source)
}
