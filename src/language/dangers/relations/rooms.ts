// Rooms in which somebody charges: children's own, and those where people sleep.

import type { Judged, Relation, Told } from './relation.ts'

const charges = /^(?:charg\w*|recharg\w*|plugged|trickle)$/
const childrens = /^(?:nursery|playroom|cot|crib|kindergarten)$/
const rooms = /^(?:bed)?rooms?$/
const sleeps = /^(?:bedrooms?|dorm|dormitory|bunkroom)$/
const places = /^(?:in|inside|beside|by|at|near|next|to|under|into)$/
const owners = /^(?:kids|childs|childrens|sons|daughters|boys|girls|babys|toddlers|grandsons|grandkids|little|ones)$/
const mostBefore = 4

/** Where one of these rooms is told behind a word of place, in a clause that charges and denies nothing. */
function roomIn(told: Told, isRoom: (at: number) => boolean): number | undefined {
  const { words, denies } = told.marked
  const at = words.findIndex(
    (_, at) => isRoom(at) && words.slice(Math.max(0, at - mostBefore), at).some(({ w }) => places.test(w)),
  )
  if (at < 0) return undefined
  let [from, to] = [at, at + 1]
  while (from > 0 && words[from]?.cut === 0) from -= 1
  while (to < words.length && words[to]?.cut === 0) to += 1
  const isCharged = words.slice(from, to).some(({ w }) => charges.test(w))
  return isCharged && !denies.slice(from, to).includes(true) ? at : undefined
}

/** "Charging in the kids' bedroom". */
export const childrensRoom: Relation = told => {
  const { words } = told.marked
  const isOfChild = (at: number) => [1, 2].some(back => owners.test(words[at - back]?.w ?? ''))
  const at = roomIn(told, at => {
    const { w } = words[at] ?? { w: '' }
    return childrens.test(w) || (rooms.test(w) && isOfChild(at))
  })
  return at === undefined ? undefined : ({ danger: 'children', from: at, to: at + 1 } satisfies Judged)
}

/** "Charging in the bedroom": whether somebody is awake there is open. */
export const isWhereOneSleeps = (told: Told): boolean =>
  roomIn(told, at => sleeps.test(told.marked.words[at]?.w ?? '')) !== undefined
