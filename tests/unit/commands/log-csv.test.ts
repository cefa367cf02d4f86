// The log of a pack as rows: looked at before it is noted, never noted twice, and read back as it was handed out.

import { afterEach, beforeEach, expect, test } from 'vitest'
import { type Asking, askingOf, member } from '../../support/ask.ts'
import { commandNamed } from '../../support/commands.ts'
import { endFaultless } from '../../support/end-faultless.ts'

const names = ['kit save', 'log charge', 'log import', 'log export', 'log show', 'time', 'current', 'plan']
let asking: Asking
beforeEach(async () => {
  asking = await askingOf(names.map(commandNamed), { clock: () => new Date(Date.UTC(2031, 5, 1)) })
  for (const name of ['wren', 'lark']) await asking.ask(`kit save name: ${name} pack: 3S 720 LiHV`)
})
afterEach(() => endFaultless(asking))
const noted = (name: string) => asking.memory.log.of({ scope: 'person', id: member.asker.id }, name)
const importing = (rows: string, save = '') => asking.ask(`log import name: wren ${save} rows: ${rows}`)

const comma = 'day;from V;put back mAh;took min;who\n2031-05-03;3,62;640;58;me\n10.05.2031 18:30;3,70;560;52;me'

test('rows are shown first, and noted once somebody says that they are right', async () => {
  const shown = await importing(comma)
  expect(shown.figures.find(({ key }) => key === 'charges')?.value).toBe(2)
  expect(shown.working.join(' ')).toContain('Columns that tell nothing of a charge: who')
  expect(await noted('wren')).toEqual([])
  const [yes] = shown.followUps
  await asking.ask(yes?.question ?? '')
  expect(await noted('wren')).toMatchObject([
    { charge_Ah: 0.64, from: { kind: 'rest', perCell_V: 3.62 }, duration_s: 3480, at: new Date('2031-05-03T12:00Z') },
    { charge_Ah: 0.56, from: { kind: 'rest', perCell_V: 3.7 }, duration_s: 3120, at: new Date('2031-05-10T18:30Z') },
  ])
})

test.each([
  ['commas and units in the names', 'date,put back (mAh),current A,took 2031-05-17,600,0.72,61'],
  ['bars and units in the cells', 'day|charged|set|time 2031-05-17|0.6Ah|720mA|61min'],
  ['a quoted cell that holds the separator', 'day,mAh,A,min 2031-05-17,"600","0,72","61"'],
  ['gaps alone', 'day mAh A min 2031-05-17 600 0.72 61'],
])('%s', async (_, rows) => {
  await importing(rows, 'save: yes')
  expect(await noted('wren')).toMatchObject([{ charge_Ah: 0.6, current_A: 0.72, duration_s: 3660 }])
})

test('what is there already is not noted twice, and what no pack takes not at all', async () => {
  await importing(comma, 'save: yes')
  const again = await importing(
    `${comma}\n2031-05-11;3,7;2560;52;me\n2031-13-12;3,7;500;52;me\n2031-08-12;3,7;500;52;me`,
    'save: yes',
  )
  expect(await noted('wren')).toHaveLength(2)
  expect(again.figures.map(({ value }) => value)).toEqual([0, 3])
  expect(again.headline).toContain('Noted before, and left as they are: 2 charges')
  expect(again.headline).toContain('does not go into a sound pack')
})

test.each(['5', 'day;volts 2031-05-03;3.7', 'rubbish; ; ;'])('%s is no log', async rows => {
  expect((await importing(rows, 'save: yes')).problem).toBeDefined()
  expect(await noted('wren')).toEqual([])
})

test('what is handed out is read back as it was', async () => {
  await asking.ask(
    'log charge name: wren current: 0.72A from: 3.70V to: 4.35V until: 0.07A put-back: 610mAh took: 62min to-cutoff: 47min cells: 4.35 4.34 4.35 resistance: 12 13 12 mΩ temperature: 20°C counted: 560mAh',
  )
  await asking.ask('log charge name: wren put-back: 690mAh from: empty')
  const [file] = (await asking.ask('log export name: wren')).documents
  expect(file).toMatchObject({ mediaType: 'text/csv' })
  await asking.ask(`log import name: lark save: yes rows: ${file?.text}`)
  const plain = (all: Awaited<ReturnType<typeof noted>>) => all.map(({ id: _i, name: _n, ...note }) => note)
  expect(plain(await noted('lark'))).toEqual(plain(await noted('wren')))
})
