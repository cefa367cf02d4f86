// Which command a sentence means that says none: told by what it holds, such as a pack and a current.

import { spaced } from '../../ground/plain-text.ts'
import { type Phrase, phrasesOf } from './phrases.ts'
import { withRoles } from './roles.ts'
import type { CommandWords, Vocabulary } from './vocabulary.ts'

export interface Fit {
  readonly command: CommandWords
  /** How many kinds of value speak for it. */
  readonly size: number
}

/**
 * The command that most of the sentence's values fit; undefined where none or two fit as well.
 * Throws a Problem for a number that belongs to nothing.
 */
export function commandFitting(text: string, vocabulary: Vocabulary): Fit | undefined {
  const candidates = vocabulary.filter(({ meantBy }) => meantBy !== undefined)
  if (candidates.length === 0) return undefined
  const said = spaced(text)
  const held = withRoles(phrasesOf(text)).map(heldAs)
  const fits = candidates
    .map(command => ({
      command,
      size: Math.max(
        0,
        ...(command.meantBy ?? []).map(set => sizeIn([...held, ...spokenIn(said, command)], set)),
      ),
    }))
    .filter(({ size }) => size > 0)
    .sort((a, b) => b.size - a.size)
  const [best, second] = fits
  return best && best.size !== second?.size ? best : undefined
}

/** A level behind "to" is a goal, storage one of its own; a pack that feeds others is a battery that serves as a source. */
function heldAs({ kind, text, cue, pack }: Phrase): string {
  if (kind === 'level' && (cue === 'to' || cue === 'until' || cue === 'till'))
    return /^storage/i.test(text) ? 'to storage' : 'goal'
  return kind === 'source' && pack ? 'feeding pack' : kind
}

/** The kinds of value that phrases of the sentence stand for. */
const spokenIn = (said: string, { options }: CommandWords): readonly string[] =>
  options
    .filter(({ spoken = {} }) => Object.keys(spoken).some(phrase => said.includes(` ${phrase} `)))
    .map(({ kind }) => kind)

/** How many kinds of the set there are, where all are held; none otherwise. */
const sizeIn = (held: readonly string[], set: readonly string[]): number =>
  set.every(kind => held.includes(kind)) ? set.length : 0
