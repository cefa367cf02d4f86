// Whatever is typed gets a whole reply, in time, on every surface; and a refusal is one again when its question is asked.

import { expect, it } from 'vitest'
import { commands } from '../../commands/index.ts'
import { member } from '../support/ask.ts'
import { demoAsking } from '../support/demo-asking.ts'
import { endFaultless } from '../support/end-faultless.ts'
import { textsOf } from '../support/rendered-text.ts'
import { tryDoor } from './door.ts'
import { someText } from './grammar.ts'

/** Of the processor, on the slowest of texts: a pattern that runs wild takes minutes. */
const most_ms = 4000

it('text', async () => {
  const asking = await demoAsking(commands, { clock: () => new Date('2031-05-04T10:00:00Z') })
  let asked = 0
  await tryDoor('text', someText, async text => {
    asked += 1
    const here = {
      ...member,
      asker: { ...member.asker, id: `room:${asked}` },
      place: { id: `room:${asked}`, direct: true },
    }
    const since = process.cpuUsage()
    const reply = await asking.assistant.answer(text, here)
    expect(process.cpuUsage(since).user / 1000).toBeLessThan(most_ms)
    expect(asking.faults).toEqual([])
    expect(reply.fault).toBeUndefined()
    expect(reply.headline).not.toBe('')
    expect(reply.figures.filter(({ value }) => !Number.isFinite(value))).toEqual([])
    const said = Object.values(textsOf(reply)).join('\n')
    for (const word of ['undefined', 'NaN', '[object']) if (!text.includes(word)) expect(said).not.toContain(word)
    // A refusal stays one when its canonical text is asked, as buttons and follow-ups do.
    if (reply.verdict !== 'do not charge' || reply.question === undefined || reply.problem) return
    const there = { ...here, place: { id: `again:${asked}`, direct: true } }
    const again = await asking.assistant.answer(reply.question, there)
    expect(again.verdict, `${text}\n${reply.question}`).toBe('do not charge')
  })
  await endFaultless(asking)
})
