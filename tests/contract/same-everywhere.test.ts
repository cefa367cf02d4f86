// Every command's examples, asked by the way in of each surface: the same lines come out, cautions included.

import { beforeAll, describe, expect, it } from 'vitest'
import { commands } from '../../commands/index.ts'
import { byDiscord, byInteractions, byMatrix, byRoom, type Way } from '../support/everywhere.ts'

const questions = [
  // What is kept about somebody is more where their messages are known by an id.
  ...commands.flatMap(({ examples }) => examples).filter(question => !/^(?:export|forget) me/.test(question)),
  'my pack is puffed, can I charge it',
  'it is on fire',
  'current pack: 99S 720 LiHV',
  'how long for my _wr*en_ <b>',
]

const started_ms = Date.now()

/** One after another, a second apart on each: what one question saves, a later one lists. */
async function askedBy(opened: (clock: () => Date) => Promise<Way>): Promise<readonly (readonly string[])[]> {
  const shown: (readonly string[])[] = []
  const way = await opened(() => new Date(started_ms + shown.length * 1000))
  for (const question of questions) shown.push(await way.ask(question))
  await way.close()
  return shown
}

let inRoom: Awaited<ReturnType<typeof askedBy>>
beforeAll(async () => {
  inRoom = await askedBy(byRoom)
})

describe.each([
  ['Discord', byDiscord],
  ['Discord by HTTP', byInteractions],
  ['Matrix', byMatrix],
])('%s', (_, by) => {
  it('answers every example as the room does, line by line', async () => {
    const shown = await askedBy(by)
    for (const [at, question] of questions.entries()) {
      const [here = [], there = []] = [shown[at], inRoom[at]]
      expect(here.slice(0, there.length), question).toEqual(there)
      // What can be tapped.
      expect(here.length - there.length, question).toBeLessThanOrEqual(1)
    }
  })
})
