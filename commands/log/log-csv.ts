// The log of a saved pack as rows: read in once it was looked at, and handed out.

import { randomUUID } from 'node:crypto'
import { optional, required, service } from '../../src/assistant/command.ts'
import { packNameKind } from '../../src/assistant/kit/kit-name.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { plainText } from '../../src/ground/plain-text.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import { textKind } from '../../src/language/kinds/text-kinds.ts'
import { noteOf } from './charge-note.ts'
import { refuseSlips } from './charge-slips.ts'
import { mostNoted } from './log-charge.ts'
import { readRows, writeRows } from './log-rows.ts'
import { loggedPack } from './logged-pack.ts'
import { noClock, yetToCome } from './problems.words.ts'

/** It takes all that follows, as long as a question may be. */
const rowsKind = { ...textKind, read: (text: string) => ({ value: plainText(text), assumed: [] }) }

/** Of a day only the noon is told, and clocks are apart. */
const day_ms = 86_400_000

export const logImport = service({
  name: 'log import',
  takes: { name: required(packNameKind), save: optional(choiceKind('answer', ['yes'])), rows: required(rowsKind) },
  examples: [
    'log import name: wren rows: day;from V;put back mAh;took min 2026-05-03;3,62;640;58 2026-05-10;3,70;560;52',
    'log import name: wren save: yes rows: day,put back mAh,current A,took 2026-05-17,600,0.72,61',
  ],
  changes: true,
  notStanding: true,
  /** Nothing is noted before somebody has looked at it; what is there already is not noted twice. */
  run: async ({ name, save, rows: text }, context) => {
    const { house, memory, now } = context
    if (!now) throw noClock
    const { entry, pack, charges } = await loggedPack(name, context)
    const read = readRows(text, name, pack, (asked, at) => {
      if (at.getTime() > now.getTime() + day_ms) throw yetToCome
      refuseSlips(asked, pack, house)
    })
    const known = new Set(charges.map(({ at, charge_Ah }) => `${at.getTime()} ${charge_Ah}`))
    const fresh = read.rows.filter(({ at, asked }) => !known.has(`${at.getTime()} ${asked['put-back']}`))
    const { owner, notation } = entry
    for (const { at, asked } of save ? fresh.toSorted((a, b) => a.at.getTime() - b.at.getTime()) : []) {
      const note = { ...noteOf(asked, pack, house), counted_Ah: asked.counted }
      await memory.log.add({ ...note, id: randomUUID(), owner, name: entry.name, notation, at }, mostNoted)
    }
    return { ...read, fresh, isSaved: save !== undefined }
  },
  figures: ({ fresh, left }) => [figure.count('charges', fresh.length), figure.count('leftOut', left.length)],
})

export const logExport = service({
  name: 'log export',
  takes: { name: required(packNameKind) },
  examples: ['log export name: wren'],
  notStanding: true,
  run: async ({ name }, context) => ({ charges: (await loggedPack(name, context)).charges }),
  figures: ({ charges }) => [figure.count('charges', charges.length)],
  documents: ({ charges }) =>
    charges.length > 0 ? [{ name: 'log.csv', mediaType: 'text/csv' as const, text: writeRows(charges) }] : [],
})
