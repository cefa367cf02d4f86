// What Tab offers in the room.

import { expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { completeLine } from '../../../src/room/complete.ts'
import { roomOccasion } from '../../../src/room/occasion.ts'
import { withDemoAssistant } from '../../support/demo-assistant.ts'

it('is commands first, then details, then values', async () => {
  await withDemoAssistant(async assistant => {
    const offered = (line: string) => completeLine(assistant, roomOccasion(), line)
    expect(await offered('per')).toEqual([['percent '], 'per'])
    expect(await offered('percent ch')).toEqual([['chemistry: '], 'ch'])
    expect(await offered('percent chemistry: LiP')).toEqual([['LiPo '], 'LiP'])
    expect((await offered('percent chemistry: LiPo '))[0]).not.toContain('chemistry: ')
    expect((await offered(''))[0]).toHaveLength(commands.length)
  })
})
