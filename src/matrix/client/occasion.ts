// Who asks in a Matrix room, and where: the facts of an event as the assistant knows them.

import type { MatrixClient, Room } from 'matrix-js-sdk'
import type { Occasion } from '../../assistant/occasion.ts'
import { directCommunityOf } from '../../memory/owner.ts'
import { firstRoomOf } from './account-data.ts'
import { isDirect, moderates, spaceOf } from './room-facts.ts'

/** Room, event and user ids, made unique across surfaces. */
export const idOf = (matrixId: string): string => `matrix:${matrixId}`
export const matrixIdOf = (id: string): string => id.replace(/^matrix:/, '')

export function occasionOf(client: MatrixClient, room: Room, sender: string): Occasion {
  const asker = { id: idOf(sender), name: room.getMember(sender)?.name ?? sender }
  const place = { id: idOf(room.roomId), direct: isDirect(client, room) }
  if (place.direct) {
    const community = { id: directCommunityOf(asker.id) }
    return { surface: 'matrix', asker: { ...asker, moderates: true }, community, place }
  }
  const home = spaceOf(client, room) ?? room
  return {
    surface: 'matrix',
    asker: { ...asker, moderates: moderates(home, sender) },
    community: { id: idOf(firstRoomOf(client, home.roomId)), name: home.name },
    place,
  }
}
