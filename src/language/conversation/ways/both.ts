// "How long for both": the pack that was spoken of, and the one before it or the one that is told now.

import type { Frame } from '../../frames/frame.ts'
import { fitTo } from '../../reading/fit.ts'
import { toldBy } from '../../reading/told/told-pack.ts'
import type { CommandWords } from '../../sentence/vocabulary.ts'
import type { Way } from '../behind/behind.ts'
import { choiceOf } from '../behind/choice-of.ts'
import { packKinds } from '../behind/lend.ts'

export const both: Way = ({ text, values, frame, vocabulary, other }) => {
  const { pack, count } = frame.question.options
  if (pack === undefined || count !== undefined || frame.pending || !/\bboth\b/i.test(text)) return undefined
  const told = values.filter(value => toldBy(value) !== undefined)
  const ofLists = vocabulary.filter(takesList)
  const command = ofLists.find(({ name }) => name === other?.intent) ?? ofLists.find(({ name }) => name === 'plan')
  if (!command || told.length > 1) return undefined
  const beside = told.length === 1 ? fitTo(command, told).options.packs : otherPack(frame.before, pack)
  if (beside === undefined) return undefined
  const kept = { packs: told.length === 1 ? `${pack}; ${beside}` : `${beside}; ${pack}` }
  const own = values.filter(value => value.kind !== 'count' && !told.includes(value))
  return choiceOf(fitTo(command, own, kept), kept)
}

const takesList = ({ options }: CommandWords): boolean =>
  options.some(({ name, kind }) => name === 'packs' && packKinds.has(kind))

function otherPack(frame: Frame | undefined, pack: string): string | undefined {
  const { pack: before } = frame?.question.options ?? {}
  return !frame ? undefined : before !== undefined && before !== pack ? before : otherPack(frame.before, pack)
}
