// What a moderator has to grant us in a room, in words.

import { told } from '../../ground/locale.ts'

export type Deed = 'send messages' | 'change the pinned messages'

export const permissionWanted = told(({ say, show, own }, deed: Deed, room: string, needed: number, mine: number) => {
  const levels = say`that needs power level ${show.number(needed, 0)}, and mine is ${show.number(mine, 0)}.`
  return deed === 'send messages'
    ? say`I may not send messages in ${own(room)}: ${levels}`
    : say`I may not change the pinned messages in ${own(room)}: ${levels}`
})
