// What a moderator has to grant us in a room, in words.

import type { Said } from '../../ground/locale.ts'

export type Deed = 'send messages' | 'change the pinned messages'

export const permissionWanted =
  (deed: Deed, room: string, needed: number, mine: number): Said =>
  ({ say, show, own }) => {
    const levels = say`that needs power level ${show.number(needed, 0)}, and mine is ${show.number(mine, 0)}.`
    return deed === 'send messages'
      ? say`I may not send messages in ${own(room)}: ${levels}`
      : say`I may not change the pinned messages in ${own(room)}: ${levels}`
  }
