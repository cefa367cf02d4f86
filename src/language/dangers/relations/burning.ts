// What is said to burn or smoke: whether one burns now, is only feared, or was a part of the model and no pack.

import { clauseAt, type Told } from './relation.ts'

/** "Put the fire out with water?": one may burn now. */
export function isFireFought({ marked: { words } }: Told): boolean {
  const isFire = words.some(
    ({ w }, at) =>
      w === 'fire' && /^(?:the|this|that|a)$/.test(words[at - 1]?.w ?? '') && !fireThings.test(words[at + 1]?.w ?? ''),
  )
  return isFire && words.some(({ w }) => fights.test(w))
}
const fireThings = /^(?:extinguishers?|blankets?|service|brigade|engine|place|buckets?|bags?|safe|proof|alarms?)$/
const fights = /^(?:water|out|extinguish\w*|smother|sand|small)$/

/** Whether it burns somewhere, and everywhere `is` that; `from` is where the clause of `at` begins. */
function isEveryFire(told: Told, is: (at: number, from: number) => boolean): boolean {
  const burning = told.marked.words.flatMap((_, at) => (told.is(at, 'fire') || told.is(at, 'smell') ? [at] : []))
  return burning.length > 0 && burning.every(at => is(at, clauseAt(told, at)[0]))
}

const mayBe = /^(?:will|can|could|would|may|might|does|do)$/
const mostToFire = 6
/** "Will it explode if", "can a LiPo catch fire": it is asked whether one may, and none is seen. */
export function isFireAsked(told: Told): boolean {
  const { words } = told.marked
  return isEveryFire(told, (at, from) => {
    const asks = words.slice(Math.max(from, at - mostToFire), at).findIndex(({ w }) => mayBe.test(w))
    const first = Math.max(from, at - mostToFire) + asks
    // "It might burn": said, and not asked.
    return asks >= 0 && (first === from || /^(?:and|so|but|or)$/.test(words[first - 1]?.w ?? ''))
  })
}

const parts = /^(?:esc|escs|motors?|servos?|receiver|regulator|bec|vtx|camera|controller)$/
const wasSo = /^(?:smoked|burned|burnt|fried|melted|blew|popped|smelled|smelt)$/

/** "My esc smoked yesterday": it is over, and was no pack. */
export function isPartBurnt(told: Told): boolean {
  const { words } = told.marked
  return isEveryFire(told, (at, from) => {
    const before = words.slice(from, at)
    return (
      wasSo.test(words[at]?.w ?? '') && before.some(({ w }) => parts.test(w)) && !before.some(({ w }) => packs.test(w))
    )
  })
}
const packs = /^(?:packs?|lipos?|batter(?:y|ies)|cells?|it|its|s|mah|charger)$/

/** "Which one do I burn my fingers on": one asks where they might, and has not. */
export function isBurnAsked(told: Told): boolean {
  const { words } = told.marked
  const hurt = words.flatMap((_, at) => (told.is(at, 'injured') ? [at] : []))
  const isAsked = (at: number) => {
    const asks = words.slice(Math.max(0, at - 3), at).findLast(({ w }) => mayBe.test(w))
    return words[at]?.w === 'burn' && asks !== undefined
  }
  return hurt.length > 0 && hurt.every(isAsked)
}
