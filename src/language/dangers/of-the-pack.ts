// Whether a danger is told of the pack itself, so plainly that no likelihood need be asked.

import { emergencies, dangers as rows } from '../../charging/situation/dangers.ts'
import { wordSet } from '../../ground/word-set.ts'
import type { Evidence } from './engine/evidence.ts'
import type { Marked } from './engine/matcher.ts'

const packWords = wordSet('lipo lihv life pack packs battery batteries cell akku')
const ofOne = wordSet('my a an the this that our his her one these own')
const parts = wordSet('in into on of from')
const mostBetween = 6
const links = wordSet('is are has got looks feels a bit very all now little gone went')

/** "My puffed 4S", "my pack is puffed": a word for what lasts, right beside the pack itself, needs no second opinion. */
export function isOfThePack({ danger, tells }: Evidence, { words }: Marked): boolean {
  const isPack = (at: number) =>
    packWords.has(words[at]?.w ?? '') || (words[at]?.value !== undefined && words[at + 1]?.w === 's')
  const isOne = (at: number) => ofOne.has(words[at]?.w ?? '')
  const isSaidOf = (from: number) => {
    let at = from
    while (at > from - 4 && words[at]?.cut === 0 && links.has(words[at - 1]?.w ?? '')) at -= 1
    return at < from && words[at]?.cut === 0 && packWords.has(words[at - 1]?.w ?? '') && isOne(at - 2)
  }
  // "A dent of 3 mm in my 4S"; but "smoke from a 3S" may be wanted.
  const isIn = (at: number) => parts.has(words[at]?.w ?? '') && isOne(at + 1) && isPack(at + 2)
  const isInOne = (from: number) => {
    let at = from
    while (at < from + mostBetween && words[at + 1]?.cut === 0 && !isIn(at)) at += 1
    return isIn(at)
  }
  const holds = ({ from, to }: { readonly from: number; readonly to: number }) =>
    isOne(from - 1)
      ? isPack(to) || (packWords.has(words[from]?.w ?? '') && to - from <= 4)
      : isSaidOf(from) || (!emergencies.includes(danger) && isInOne(from))
  // "LiPo swollen and on fire": whatever else is said of it.
  const isBurning = ({ from, to }: { readonly from: number; readonly to: number }) => {
    const isOn = words.slice(from, to).some(({ w }, n) => w === 'fire' && words[from + n - 1]?.w === 'on')
    let at = from
    while (at > 0 && (words[at]?.cut ?? 2) < 2 && !packWords.has(words[at - 1]?.w ?? '')) at -= 1
    return isOn && packWords.has(words[at - 1]?.w ?? '')
  }
  if (danger === 'fire' && tells.some(isBurning)) return true
  return rows[danger].stays === 'lasts' && tells.some(holds)
}
