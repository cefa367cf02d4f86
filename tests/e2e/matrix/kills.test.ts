// The assistant is killed again and again while somebody in an encrypted room has it change something: all of it is done
// once, and answered once.

import { setTimeout as pause } from 'node:timers/promises'
import { expect, test } from 'vitest'
import { openMemory } from '../../../src/memory/opening/open.ts'
import { startClub } from '../../support/matrix/club.ts'

const kills = Number(process.env.INBOX_KILLS ?? 20)
const eachRound = 3
/** From the question to its answer takes about so long. */
const longestAsking_ms = 900

const { assistant, ada } = await startClub(['ada'])
const room = await ada.roomWith(assistant.userId, { encrypted: true })

test('killed while it is asked, it does all once and answers it once', { timeout: 1_800_000 }, async () => {
  const asked: string[] = []
  const say = async (words: string) => {
    const id = await ada.say(room, `!charge ${words}`)
    asked.push(id)
    return id
  }
  await ada.answer(room, await say('kit save name: wren pack: 3S 720 LiHV'), assistant.userId)
  const putBack = Array.from({ length: kills * eachRound }, (_, at) => 300 + at)
  for (let round = 0; round < kills; round += 1) {
    const now: string[] = []
    for (const mAh of putBack.slice(round * eachRound, (round + 1) * eachRound))
      now.push(await say(`log charge name: wren put-back: ${mAh}mAh`))
    await pause(Math.random() * longestAsking_ms)
    await assistant.kill()
    await assistant.start()
    for (const id of now) await ada.answer(room, id, assistant.userId)
  }
  await ada.answer(room, await say('kit list'), assistant.userId)
  const answers = asked.map(id => ada.answersTo(room, id, assistant.userId).length)
  await assistant.stop()
  const memory = await openMemory({ dataFolder: assistant.folder })
  const owner = { scope: 'person', id: `matrix:${ada.client.getUserId()}` } as const
  const noted = (await memory.log.of(owner, 'wren')).map(({ charge_Ah }) => Math.round(charge_Ah * 1000))
  await memory.close()
  const times = putBack.map(mAh => noted.filter(one => one === mAh).length)
  const [doubled, lost] = [times.filter(one => one > 1).length, times.filter(one => one === 0).length]
  process.stdout.write(
    `killed ${kills} times on Matrix: ${putBack.length} changes asked, ${doubled} doubled, ${lost} lost, ${answers.filter(one => one > 1).length} answered twice\n`,
  )
  expect({ doubled, lost, answers }).toEqual({ doubled: 0, lost: 0, answers: asked.map(() => 1) })
})
