// Going on from an answer on Discord: by a reply where its text comes, else by a button that asks for the words.

import { expect, test, vi } from 'vitest'
import { answersIn, buttonOf, firstLine } from '../support/discord-answers.ts'
import { channelId, mentionOfBot, message, newId, press, slash, submit } from '../support/discord-events.ts'
import { withDiscordRoom } from '../support/with-discord-room.ts'

const { room, answerTo } = withDiscordRoom()

const said = (...of: Parameters<typeof message>) => room().discord.gateway.dispatch('MESSAGE_CREATE', message(...of))
const answers = () => answersIn(room().discord)
/** The answer to a slash command, as it then stands in the channel. */
async function standing(): Promise<string> {
  const { data } = await answerTo(slash('bench', { pack: '1S 300 LiPo' }))
  const answer = { id: newId(), channel: channelId, body: data, files: [], at: 0, pinned: false, edits: 0 }
  room().discord.messages.push(answer)
  return answer.id
}

test('a reply to the answer of a slash command goes on from its question, without a mention', async () => {
  const answer = await standing()
  said('pack: 2S 450 LiPo', { replyTo: answer })
  await vi.waitFor(() => expect(answers().at(-1)).toBe('Set 0.5 A for 2S 450 LiPo.'))
})

test('a reply that mentions nobody comes without its text, so it is left alone', async () => {
  const answer = await standing()
  said('pack: 2S 450 LiPo', { replyTo: answer, pings: false })
  said(`${mentionOfBot} tray list`)
  await vi.waitFor(() => expect(answers().at(-1)).toBe('The tray is empty.'))
  expect(answers()).toHaveLength(2)
  expect(room().discord.requests.filter(request => request.startsWith('GET /channels'))).toEqual([])
})

test('the button under an answer asks for words, and answers them to whoever pressed', async () => {
  const { data } = await answerTo(slash('bench', { pack: '1S 300 LiPo' }))
  const window = await answerTo(press(buttonOf(data, 'Ask more')))
  expect([window.type, window.data.custom_id]).toEqual([9, buttonOf(data, 'Ask more')])
  const further = await answerTo(submit(window.data.custom_id, 'pack: 2S 450 LiPo'))
  expect([further.data.flags, firstLine(further.data)]).toEqual([64, 'Set 0.5 A for 2S 450 LiPo.'])
  const anew = await answerTo(submit(window.data.custom_id, 'tray list'))
  expect(firstLine(anew.data)).toBe('The tray is empty.')
})

test('words that come for an answer that is forgotten are told so', async () => {
  const answer = await answerTo(submit('v1:further:AAAAAAAAAAAAAAAA', 'at 2A'))
  expect(firstLine(answer.data)).toContain('cannot find the question')
})
