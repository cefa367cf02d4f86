// A homeserver, the assistant on it and some members, for all tests of a file.

import { type ICreateRoomOpts, Preset } from 'matrix-js-sdk'
import { afterAll } from 'vitest'
import { Member } from './member.ts'
import { type AssistantProcess, assistantProcess } from './process.ts'
import { type Synapse, startSynapse } from './synapse.ts'

export interface Club {
  readonly synapse: Synapse
  readonly assistant: AssistantProcess
  /** The assistant's own id. */
  readonly self: string
}

/** Members by their names; all of it goes behind the last test, or where it cannot be started. */
export async function startClub<Name extends string>(
  names: readonly Name[],
  variables: Record<string, string> = {},
): Promise<Club & Readonly<Record<Name, Member>>> {
  const ends: (() => unknown)[] = []
  const end = async () => {
    for (const one of ends.splice(0).toReversed()) await one()
  }
  afterAll(end)
  try {
    const synapse = await startSynapse()
    ends.push(() => synapse.remove())
    const assistant = await assistantProcess(synapse, 'chargehand', variables)
    ends.push(() => assistant.remove())
    await assistant.start()
    const members = {} as Record<Name, Member>
    for (const name of names) {
      members[name] = await Member.at(synapse, name)
      ends.push(() => members[name].leave())
    }
    return { ...members, synapse, assistant, self: assistant.userId }
  } catch (error) {
    await end()
    throw error
  }
}

/** A room of both with the assistant, which anybody may join. */
export async function roomOf(
  [owner, guest]: readonly [Member, Member],
  self: string,
  options: ICreateRoomOpts & { encrypted?: boolean } = {},
): Promise<string> {
  const room = await owner.roomWith(self, { ...options, invite: [self, guest.id], preset: Preset.PublicChat })
  await guest.client.joinRoom(room)
  return room
}
