// Examples of every command, by the way in of each surface, in private and where others read along, in plain words and
// option by option: the same lines come out, cautions included, and the same care below them.

import { beforeAll, describe, expect, it } from 'vitest'
import { commands } from '../../commands/index.ts'
import { partOf } from '../support/cases.ts'
import { byDiscord, byInteractions, byMatrix, byMention, byRoom, bySlash, type Way } from '../support/everywhere.ts'

const questions = [
  // What is kept about somebody is more where their messages are known by an id.
  ...commands
    .flatMap(({ examples }) => examples.slice(0, Math.ceil(partOf(examples.length))))
    .filter(question => !/^(?:export|forget) me/.test(question))
    // What somebody's clock shows counts from when a platform got their message, which is no clock of ours.
    .filter(question => !/^remind me .*now: /.test(question)),
  'my pack is puffed, can I charge it',
  'it is on fire',
  'current pack: 99S 720 LiHV',
  'how long for my _wr*en_ <b>',
]

const leastOpened = 8
const started_ms = Date.now()

/** One after another, a second apart on each: what one question saves, a later one lists. */
async function askedBy(opened: (clock: () => Date) => Promise<Way>) {
  const shown: { readonly lines: readonly string[]; readonly care: readonly string[] | undefined }[] = []
  const way = await opened(() => new Date(started_ms + shown.length * 1000))
  for (const question of questions) shown.push({ lines: await way.ask(question), care: await way.care?.() })
  await way.close()
  return shown
}

let inRoom: Awaited<ReturnType<typeof askedBy>>
beforeAll(async () => {
  inRoom = await askedBy(byRoom)
})

/** Whoever is asked in private needs no message elsewhere. */
const told = (line: string): string => line.replace('remind you in a direct message', 'remind you here')

/** Whether what is cared for besides is opened here; on Matrix an edit shows it, which is seen elsewhere. */
describe.each([
  ['Discord', byDiscord, true],
  ['Discord where others read along', byMention, true],
  ['Discord by HTTP', byInteractions, true],
  ['Discord option by option', bySlash, true],
  ['Matrix', byMatrix, false],
])('%s', (_, by, opensCare) => {
  it('answers every example as the room does, line by line', async () => {
    const shown = await askedBy(by)
    for (const [at, question] of questions.entries()) {
      const [here, there] = [shown[at], inRoom[at]] as const
      const [lines = [], wanted = []] = [here?.lines, there?.lines]
      expect(lines.slice(0, wanted.length).map(told), question).toEqual(wanted.map(told))
      // What can be tapped.
      expect(lines.length - wanted.length, question).toBeLessThanOrEqual(1)
      expect(here?.care ?? there?.care, question).toEqual(there?.care)
    }
    expect(shown.filter(({ care }) => care).length > leastOpened).toBe(opensCare)
  })
})
