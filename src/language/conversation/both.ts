// "How long for both": the pack that was spoken of and the one before it.

import type { Frame } from '../frames/frame.ts'
import { fitTo } from '../reading/fit.ts'
import { toldBy } from '../reading/told/told-pack.ts'
import type { CommandWords } from '../sentence/vocabulary.ts'
import type { Way } from './behind.ts'
import { choiceOf } from './choice-of.ts'
import { packKinds } from './lend.ts'

export const both: Way = ({ text, values, frame, vocabulary, other }) => {
  const { pack, count } = frame.question.options
  const before = pack === undefined || count !== undefined ? undefined : otherPack(frame.before, pack)
  const isOfOthers = values.some(value => toldBy(value) !== undefined)
  if (before === undefined || frame.pending || isOfOthers || !/\bboth\b/i.test(text)) return undefined
  const ofLists = vocabulary.filter(takesList)
  const command = ofLists.find(({ name }) => name === other?.intent) ?? ofLists.find(({ name }) => name === 'plan')
  const kept = { packs: `${before}; ${pack}` }
  const own = values.filter(({ kind }) => kind !== 'count')
  return command && choiceOf(fitTo(command, own, kept), kept)
}

const takesList = ({ options }: CommandWords): boolean =>
  options.some(({ name, kind }) => name === 'packs' && packKinds.has(kind))

function otherPack(frame: Frame | undefined, pack: string): string | undefined {
  const { pack: before } = frame?.question.options ?? {}
  return !frame ? undefined : before !== undefined && before !== pack ? before : otherPack(frame.before, pack)
}
