// What we note in our own account on the server, so that it outlives the data folder: direct rooms, moved rooms.

import type { MatrixClient } from 'matrix-js-sdk'

/** Direct rooms by person, as every Matrix app notes them. */
const directType = 'm.direct'
/** The community that a room belongs to since an upgrade, by the room's id. */
const movedType = 'chargehand.moved_rooms'
type Direct = Readonly<Record<string, readonly string[]>>
type Moved = Readonly<Record<string, string>>
export const isNotedDirect = (client: MatrixClient, roomId: string): boolean =>
  Object.values(read<Direct>(client, directType)).some(rooms => rooms.includes(roomId))
export const directRoomWith = (client: MatrixClient, person: string): string | undefined =>
  read<Direct>(client, directType)[person]?.at(-1)

export async function noteDirect(client: MatrixClient, person: string, roomId: string): Promise<void> {
  const direct = read<Direct>(client, directType)
  await write(client, directType, { ...direct, [person]: [...(direct[person] ?? []), roomId] })
}

export async function noteNotDirect(client: MatrixClient, roomId: string): Promise<void> {
  if (!isNotedDirect(client, roomId)) return
  const others = Object.entries(read<Direct>(client, directType)).map(
    ([person, rooms]) => [person, rooms.filter(room => room !== roomId)] as const,
  )
  await write(client, directType, Object.fromEntries(others.filter(([, rooms]) => rooms.length > 0)))
}

/** The room whose id stands for the community of `roomId`: itself, or the first before its upgrades. */
export const firstRoomOf = (client: MatrixClient, roomId: string): string =>
  read<Moved>(client, movedType)[roomId] ?? roomId
export const isNotedMove = (client: MatrixClient, roomId: string): boolean =>
  Object.hasOwn(read<Moved>(client, movedType), roomId)

export async function noteMove(client: MatrixClient, from: string, to: string): Promise<void> {
  await write(client, movedType, { ...read<Moved>(client, movedType), [to]: firstRoomOf(client, from) })
}

function read<T extends object>(client: MatrixClient, type: string): T {
  return (client.getAccountData(type as never)?.getContent() ?? {}) as T
}

/** Resolves when the server has sent it back to us, so that the next read finds it. */
async function write(client: MatrixClient, type: string, content: object): Promise<void> {
  await client.setAccountData(type as never, content as never)
}
