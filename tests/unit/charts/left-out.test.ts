// A picture that could not be drawn, as too many were asked for at once, is missed in words, on each chat.

import type { Room } from 'matrix-js-sdk'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { tooMuchAtOnce } from '../../../src/assistant/asking/asking.words.ts'
import { createAssistant } from '../../../src/assistant/running/assistant.ts'
import { createCompose } from '../../../src/discord/messages/compose.ts'
import { createShowPictures } from '../../../src/matrix/messages/pictures.ts'
import { createLog } from '../../../src/program/log.ts'
import { member } from '../../support/ask.ts'
import { openTestMemory } from '../../support/test-memory.ts'

type Memory = Awaited<ReturnType<typeof openTestMemory>>
let memory: Memory
beforeEach(async () => {
  memory = await openTestMemory()
})
afterEach(() => memory.close())

const pictured = 'how long for 3S 720 LiHV at 0.72A from 3.7V per cell'
const missed = 'The picture is left out'
const draw = () => Promise.reject(tooMuchAtOnce)
const assistant = () => createAssistant({ commands, memory, onFault: () => {} })

test('on Discord in the answer', async () => {
  const parts = { assistant: assistant(), questions: memory.questions, draw, log: createLog('silent') }
  const { message, files } = await createCompose(parts).ask(pictured, member, 'brief')
  expect(files).toEqual([])
  expect(message.embeds[0]?.description).toContain(missed)
})

test('on Matrix where it would stand', async () => {
  const sent: string[] = []
  const sender = {
    send: async (_room: string, _type: string, content: object) => {
      sent.push(JSON.stringify(content))
      return '$sent'
    },
  } as never
  const reply = await assistant().answer(pictured, member)
  const show = createShowPictures({ sender, upload: undefined as never, answered: memory.answered, draw })
  const call = { event: '$asked', asker: '@ada:club.test', about: '$asked' }
  const answer = { questionMessage: 'matrix:$asked', answerMessage: 'matrix:$answer', place: 'matrix:!field' }
  const noted = { ...answer, askedBy: 'matrix:@ada:club.test', question: '', answeredAt: new Date() }
  await show(call, { roomId: '!field' } as Room, noted, reply)
  expect(sent.join()).toContain(missed)
})
