// The charge log in use: noted by name, judged, used for times, and for the count of a flight controller.

import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import type { Occasion } from '../../../src/assistant/occasion.ts'
import type { Reply } from '../../../src/assistant/reply.ts'
import { type Asking, askingOf, member, moderator, otherMember } from '../../support/ask.ts'
import { commandNamed } from '../../support/commands.ts'
import { endFaultless } from '../../support/end-faultless.ts'

const time = commandNamed('time')
const kitRemove = commandNamed('kit remove')
const kitSave = commandNamed('kit save')
const logCharge = commandNamed('log charge')
const logMeter = commandNamed('log meter')
const logShow = commandNamed('log show')
const logUndo = commandNamed('log undo')

const others = [commandNamed('health'), commandNamed('current'), commandNamed('source'), commandNamed('plan')]
const commands = [kitSave, kitRemove, logCharge, logShow, logMeter, logUndo, time, ...others]
const day_ms = 86_400_000

let asking: Asking
beforeEach(async () => {
  let now_ms = 0
  asking = await askingOf(commands, {
    clock: () => {
      now_ms += day_ms
      return new Date(now_ms)
    },
  })
  now_ms = Date.UTC(2031, 4, 1, 10)
  await done('kit save name: wren pack: 3S 720 LiHV')
})
afterEach(() => endFaultless(asking))

async function done(question: string, by?: Occasion): Promise<Reply> {
  const reply = await asking.ask(question, by)
  expect(reply.problem).toBeUndefined()
  return reply
}
const refused = async (question: string, by?: Occasion) => (await asking.ask(question, by)).problem
const figure = (reply: Reply, key: string) => reply.figures.find(one => one.key === key)?.value
function widthOf(reply: Reply): number {
  const { low = 0, high = 0 } = reply.figures.find(({ key }) => key === 'chargeTime') ?? {}
  return high - low
}
const wim = { scope: 'person', id: member.asker.id } as const
const noted = (owner: typeof wim | { scope: 'community'; id: string } = wim) => asking.memory.log.of(owner, 'wren')

describe('log charge', () => {
  test('notes all that was said, at the time of the clock', async () => {
    await done(
      'log charge name: wren put-back: 640mAh from: 3.6V took: 50min cells: 4.35 4.34 4.35 resistance: 12 13 12 mΩ temperature: 20°C counted: 600mAh',
    )
    expect(await noted()).toEqual([
      {
        id: expect.any(String),
        owner: wim,
        name: 'wren',
        notation: '3S 720mAh LiHV',
        at: new Date('2031-05-03T10:00:00Z'),
        charge_Ah: 0.64,
        from: { kind: 'rest', perCell_V: 3.6 },
        to: { kind: 'rest', perCell_V: 4.35 },
        duration_s: 3000,
        cells_V: [4.35, 4.34, 4.35],
        cells_ohm: [0.012, 0.013, 0.012],
        temperature_C: 20,
        counted_Ah: 0.6,
      },
    ])
  })

  test('says the capacity by it and the mean current', async () => {
    const reply = await done('log charge name: wren put-back: 690mAh from: empty took: 1h')
    expect(reply.headline).toContain('holds about 690 mAh')
    expect(figure(reply, 'capacity')).toBeCloseTo(0.69, 9)
    expect(figure(reply, 'meanCurrent')).toBeCloseTo(0.69, 9)
    const fast = await done('log charge name: wren put-back: 690mAh took: 10min')
    expect(fast.verdict).toBe('go with care')
    expect(fast.headline).toContain('charged at 4.14 A on average, and 1.44 A is the most')
  })

  test.each([
    ['more than a pack can hold', 'put-back: 950mAh', '950mAh', 'does not go into a sound pack'],
    ['too few cells', 'put-back: 640mAh cells: 4.35 4.34', 'cells', '2 values for 3 cells'],
    ['too many resistances', 'put-back: 640mAh resistance: 1 2 3 4 mΩ', 'resistance', '4 values'],
    ['a count to storage', 'put-back: 240mAh counted: 240mAh to: storage', 'storage', 'Only a charge to full'],
  ])('refuses %s', async (_, details, token, what) => {
    const problem = await refused(`log charge name: wren ${details}`)
    expect(problem?.token).toBe(token)
    expect(problem?.what).toContain(what)
    expect(await noted()).toEqual([])
  })

  test('tells at once of more than the label put back, and notes it', async () => {
    expect((await done('log charge name: wren put-back: 790mAh')).verdict).toBe('go')
    const reply = await done('log charge name: wren put-back: 800mAh')
    expect(reply.verdict).toBe('do not charge')
    expect(reply.headline).toContain('Do not charge it again until you know why')
    expect(reply.headline).toContain('800 mAh')
    expect(await noted()).toHaveLength(2)
    expect((await done('log show name: wren')).verdict).toBe('do not charge')
    await done('log undo name: wren')
    expect((await done('log show name: wren')).verdict).not.toBe('do not charge')
  })

  test('notes no charge of a damaged cell, but says what to do', async () => {
    const reply = await done('log charge name: wren put-back: 640mAh from: 2.1V')
    expect(reply.verdict).toBe('do not charge')
    expect(reply.headline).toContain('Retire it')
    expect(await noted()).toEqual([])
  })

  test('notes no charge above full, but says what is wrong with it', async () => {
    await done('kit save name: owl pack: 3S 720 LiPo')
    const reply = await done('log charge name: owl put-back: 640mAh to: 4.35V per cell')
    expect(reply.verdict).toBe('do not charge')
    expect(await asking.memory.log.of(wim, 'owl')).toEqual([])
  })

  test('judges the cells at the end of the charge', async () => {
    const reply = await done('log charge name: wren put-back: 640mAh cells: 4.35 4.10 4.35')
    expect(reply.verdict).toBe('do not charge')
    expect(reply.headline).toMatch(/apart.*The charge is noted.*"log undo name: wren" takes it back/)
    expect(await noted()).toHaveLength(1)
    const even = await done('log charge name: wren put-back: 640mAh cells: 4.35 4.34 4.35')
    expect(even.followUps.map(({ question }) => question)).toContain(
      'cells pack: 3S 720mAh LiHV volts: 4.35V 4.34V 4.35V when: full',
    )
  })

  test('wants a saved pack', async () => {
    expect((await refused('log charge name: kestrel put-back: 1Ah'))?.what).toContain('no pack saved as "kestrel"')
    await done('kit save name: bench charger: 1/2A')
    expect((await refused('log charge name: bench put-back: 1Ah'))?.what).toContain('saved as a charger')
    expect((await refused('log charge name: 3S put-back: 1Ah'))?.what).toContain('cannot be a name')
  })

  test('wants a clock', async () => {
    const { ask, memory } = await askingOf(commands)
    await ask('kit save name: wren pack: 3S 720 LiHV')
    expect((await ask('log charge name: wren put-back: 640mAh')).problem?.what).toContain('no clock')
    await memory.close()
  })
})

describe('whose log', () => {
  const club = { scope: 'community', id: member.community.id } as const

  test("any member notes a charge of the club's pack, only moderators take one back", async () => {
    await done('kit remove name: wren')
    await done('kit save name: wren pack: 3S 720 LiHV for: club', moderator)
    await done('log charge name: wren put-back: 640mAh')
    await done('log charge name: wren put-back: 650mAh', otherMember)
    expect(await noted(club)).toHaveLength(2)
    expect(JSON.stringify(await noted(club))).not.toContain(member.asker.id)
    expect((await refused('log undo name: wren'))?.what).toContain('Only moderators')
    expect((await done('log undo name: wren', moderator)).headline).toContain('650')
    expect(await noted(club)).toHaveLength(1)
  })

  test('nobody sees or changes the log of another', async () => {
    await done('log charge name: wren put-back: 640mAh')
    expect(await refused('log show name: wren', otherMember)).toBeDefined()
    expect(await refused('log undo name: wren', moderator)).toBeDefined()
    expect((await done('log undo name: wren')).headline).toContain('Taken back')
    expect((await done('log undo name: wren')).headline).toContain('nothing was changed')
  })
})

describe('log show', () => {
  const cycles = async (...put_mAh: number[]) => {
    for (const put of put_mAh) await done(`log charge name: wren put-back: ${put}mAh from: empty`)
  }

  test('says how to begin where nothing is noted', async () => {
    expect((await done('log show wren')).headline).toContain('No charge of wren is noted yet')
  })

  test.each([
    ['healthy', 'go', [700, 705, 700, 698]],
    ['ageing', 'go with care', [700, 705, 700, 610, 612]],
    ['Retire', 'do not charge', [700, 705, 700, 540, 542]],
  ] as const)('%s', async (word, verdict, put_mAh) => {
    await cycles(...put_mAh)
    const reply = await done('log show name: wren')
    expect(reply.headline).toContain(word)
    expect(reply.verdict).toBe(verdict)
    expect(reply.working.join(' ')).toContain('common practice')
    expect(reply.charts).toHaveLength(verdict === 'do not charge' ? 0 : 1)
  })

  test('says what it holds and resists now, and did when it began', async () => {
    for (const reading_mohm of [12, 12, 12, 15, 15])
      await done(`log charge name: wren put-back: 648mAh from: empty resistance: ${reading_mohm}mΩ`)
    const { headline } = await done('health pack: wren')
    expect(headline).toMatch(/It holds about 6\d0 mAh \(6\d0 mAh to 6\d0 mAh\), 9\d % of its label\./)
    expect(headline).toContain('A cell has 15 mΩ at 25 °C, 12 mΩ when the log began.')
  })

  test('names what tells of age', async () => {
    await cycles(700, 705, 700, 540, 542)
    expect((await done('log show name: wren')).headline).toContain('77 % of what it did when the log began')
  })

  test('leaves out the charges of another pack that bore the name', async () => {
    await cycles(700, 705)
    await done('kit save name: wren pack: 3S 850 LiHV')
    expect((await done('log show name: wren')).headline).toContain('No charge of wren')
    await done('kit save name: wren pack: 3S 720 LiHV 12mΩ')
    expect(figure(await done('log show name: wren'), 'charges')).toBe(2)
  })
})

describe('the pace of a log', () => {
  test('tells when the pack will hold too little', async () => {
    for (let i = 0; i < 40; i++) await done(`log charge name: wren put-back: ${720 - 2 * i}mAh from: empty`)
    expect((await done('log show name: wren')).headline).toMatch(
      /less than 80 % of its label from about 2031-\d\d on \(2031-\d\d to 2031-\d\d\)/,
    )
  })
})

describe('log meter', () => {
  test('gives the factor for both ways in which it may work', async () => {
    await done('log charge name: wren put-back: 600mAh counted: 500mAh')
    const reply = await done('log meter name: wren scale: 400')
    expect(reply.headline).toContain('17 % too low')
    expect(figure(reply, 'scaleRaising')).toBeCloseTo(480, 9)
    expect(figure(reply, 'scaleLowering')).toBeCloseTo(400 / 1.2, 9)
    expect((await done('log meter name: wren')).headline).toContain('multiply the factor by 1.2')
  })

  test('needs a flight that was counted, and a plain factor', async () => {
    await done('log charge name: wren put-back: 600mAh')
    expect((await done('log meter name: wren')).headline).toContain('To note one')
    for (const scale of ['1e3', '0', '1,234', 'NaN', '400mV']) {
      expect(await refused(`log meter name: wren scale: ${scale}`), scale).toBeDefined()
    }
  })
})

describe('the time of a pack with a log', () => {
  const ask = 'time pack: wren current: 1A from: 3.7V per cell'

  test('goes by its own charges, says so and how the band narrowed, and asked again answers alike', async () => {
    const before = await done(ask)
    await done('log charge name: wren put-back: 600mAh from: empty current: 1A took: 44min resistance: 12mΩ')
    const after = await done(ask)
    expect(after.assumed).toContainEqual(expect.stringMatching(/^from 1 charge of wren: it holds about 6\d0 mAh$/))
    expect(after.question).toBe('time pack: 3S 720mAh LiHV current: 1A from: 3.7V per cell log: wren')
    expect(figure(after, 'chargeTime')).toBeLessThan(figure(before, 'chargeTime') ?? 0)
    expect(widthOf(after)).toBeLessThan(0.7 * widthOf(before))
    expect(after.working.join(' ')).toContain('narrowed by its own charges: by the label alone it would be')
    const asked = await done(after.question ?? '')
    expect(asked.figures).toEqual(after.figures)
  })

  test('is taken for the current, a source and a plan too', async () => {
    for (let i = 0; i < 3; i++)
      await done('log charge name: wren put-back: 500mAh from: empty current: 0.72A took: 58min')
    const goIn = async (question: string) => figure(await done(question), 'chargeIn')
    expect(await goIn('time pack: wren from: empty')).toBeLessThan((await goIn('time pack: 3S 720 LiHV')) ?? 0)
    for (const question of ['current pack: wren', 'source source: 4S 5000 Li-ion pack: wren', 'plan packs: wren']) {
      const { assumed, question: again } = await done(question)
      expect(assumed, question).toContainEqual(
        expect.stringMatching(/^from 3 charges of wren: it holds about 5\d0 mAh$/),
      )
      expect(again).toContain('log: wren')
    }
  })

  test('keeps to what the question says itself', async () => {
    await done('log charge name: wren put-back: 600mAh from: empty resistance: 12mΩ')
    const { question, assumed } = await done(`${ask} capacity: 700mAh resistance: 9mΩ`)
    expect(question).toContain('resistance: 9mΩ capacity: 700mAh')
    expect(question).not.toContain('log:')
    expect(assumed).toEqual([])
  })

  test('of two packs with one label takes neither, as the question does not tell them apart', async () => {
    await done('kit save name: lark pack: 3S 720 LiHV')
    await done('log charge name: wren put-back: 600mAh from: empty')
    await done('log charge name: lark put-back: 700mAh from: empty')
    expect((await done('plan packs: wren; lark')).question).not.toContain('log:')
  })

  test('leaves a charge aside that does not go with the others, asks about it, and is not led astray', async () => {
    for (let i = 0; i < 3; i++)
      await done('log charge name: wren put-back: 690mAh from: empty current: 0.72A took: 75min')
    const before = await done(ask)
    const odd = await done('log charge name: wren put-back: 350mAh from: empty current: 0.72A took: 40min')
    expect(odd.headline).toContain('does not go with its other charges')
    const after = await done(ask)
    expect(after.figures).toEqual(before.figures)
    expect(after.assumed.join(' ')).toMatch(/left aside of the log of wren: 2031-\d\d-\d\d, /)
    await done('log undo name: wren')
    expect((await done(ask)).assumed.join(' ')).not.toContain('left aside')
  })

  test('warns of a pack that its log says to retire', async () => {
    await done('log charge name: wren put-back: 400mAh from: empty')
    expect((await done(ask)).assumed.join()).toContain('says to retire it')
  })

  test('is as ever for a pack that is not named, and in plain words for one that is', async () => {
    await done('log charge name: wren put-back: 600mAh from: empty')
    expect((await done('time pack: 3S 720 LiHV current: 1A')).question).not.toContain('capacity')
    expect((await done('how long for my wren at 1A')).question).toContain('log: wren')
  })
})

describe('a charge that cannot have been', () => {
  test.each([
    ['put-back: 690mAh from: 3.6V current: 0.5A took: 30min', /gives no more than 250 mAh in that time/],
    [
      'put-back: 610mAh from: 3.7V current: 0.72A took: 50min to-cutoff: 62min',
      /begins to fall before the charge ends/,
    ],
    ['put-back: 610mAh from: 4.1V to: 3.85V', /does not end below where it began/],
    ['put-back: 937mAh from: 3.6V', /do not charge the pack again before you know why/],
  ])('%s is not noted, and it is said why', async (told, why) => {
    const problem = await refused(`log charge name: wren ${told}`)
    expect(problem?.what).toMatch(why)
    expect(await noted()).toEqual([])
  })

  test('up to 130 % of the label it is noted', async () => {
    await done('log charge name: wren put-back: 936mAh from: 3.6V')
    expect(await noted()).toHaveLength(1)
  })
})

describe('the age of a pack that is named', () => {
  const asks = ['how healthy is wren', 'how is wren ageing', 'health pack: wren']

  test.each(asks)('is what its log says: %s', async words => {
    await done('log charge name: wren put-back: 640mAh from: empty')
    expect((await done(words)).question).toBe('log show name: wren')
  })

  test.each(asks)('without a log is asked by its resistance: %s', async words =>
    expect((await refused(words))?.what).toContain('I need the resistance'),
  )

  test('is judged by a reading that is told', async () => {
    await done('log charge name: wren put-back: 640mAh from: empty')
    expect((await done('health pack: wren resistance: 9mΩ')).command).toBe('health')
  })

  test.each(['health pack: wren swollen', 'how healthy is wren, it is swollen'])(
    'is not asked of its log where a danger is told: %s',
    async words => {
      await done('log charge name: wren put-back: 640mAh from: empty')
      expect((await asking.ask(words)).verdict).toBe('do not charge')
    },
  )
})

test('a log says what was noted last, first where it tells no age', async () => {
  await done('log charge name: wren put-back: 610mAh')
  await done('log charge name: wren put-back: 540mAh')
  const { lines } = await done('log show name: wren')
  expect(lines[0]).toMatch(/^Last noted, 2031-05-\d\d: 540 mAh put back\.$/)
  expect(lines[1]).toContain('do not tell its age')
})
