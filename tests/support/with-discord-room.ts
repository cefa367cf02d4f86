// A Discord room for each test of a file, with its surface started; nothing that Discord refuses passes unseen.

import { afterEach, beforeEach, expect, vi } from 'vitest'
import type { Interaction } from './discord-events.ts'
import { type DiscordRoom, openDiscordRoom } from './discord-room.ts'

interface InRoom {
  readonly room: () => DiscordRoom
  /** What comes first in answer to it. */
  // biome-ignore lint/suspicious/noExplicitAny: bodies are judged by the payload checks.
  readonly answerTo: (interaction: Interaction) => Promise<any>
}

export function withDiscordRoom(rules: Parameters<typeof openDiscordRoom>[0] = {}): InRoom {
  let room: DiscordRoom
  beforeEach(async () => {
    room = await openDiscordRoom(rules)
    await room.surface().start()
  })
  afterEach(async () => {
    const { refused } = room.discord
    await room.close()
    expect(refused).toEqual([])
  })
  return {
    room: () => room,
    answerTo: async interaction => {
      const asked = room.discord.send(interaction)
      await vi.waitFor(() => expect(asked.told.length).toBeGreaterThan(0), { timeout: 5000, interval: 5 })
      return asked.told[0]?.body
    },
  }
}
