// Noted charges as rows under a line of names, as a spreadsheet keeps them: read back, and written.

import type { State } from '../../src/charging/things/level.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { plainText } from '../../src/ground/plain-text.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { NotedCharge } from '../../src/memory/charge-log.ts'
import { type NoteAsked, noteTakes } from './charge-note.ts'
import { noDays, noPutBack } from './problems.words.ts'

type Column = Exclude<keyof typeof noteTakes, 'name'>

/** What a column is called, and the unit of its bare numbers. */
const columns: Readonly<Record<Column, { readonly names: RegExp; readonly unit: string }>> = {
  'put-back': { names: /^(?:put ?back|charged?|charge in|in|capacity|m?ah)$/, unit: 'mAh' },
  from: { names: /^(?:from|start|before|rest|v)$/, unit: 'V' },
  to: { names: /^(?:to|full|cutoff|end volts)$/, unit: 'V' },
  took: { names: /^(?:took|time|duration|min|minutes)$/, unit: 'min' },
  'to-cutoff': { names: /^to cutoff$/, unit: 'min' },
  current: { names: /^(?:current|rate|set|a)$/, unit: 'A' },
  until: { names: /^(?:until|end|end current|termination)$/, unit: 'A' },
  cells: { names: /^(?:cells|cell volts)$/, unit: 'V' },
  resistance: { names: /^(?:resistance|ir|ri|mω|mohm)$/, unit: 'mΩ' },
  temperature: { names: /^(?:temperature|temp|°?c)$/, unit: '°C' },
  counted: { names: /^(?:counted|used|flown)$/, unit: 'mAh' },
}
const options = Object.keys(columns) as Column[]
const unitWord = /^(.*?)[ ([]*(mAh|Ah|mA|A|mV|V|min|h|s|mΩ|mohm|Ω|°C|C)[)\]]*$/i
const day = String.raw`(?:\d{4}-\d{2}-\d{2}|\d{1,2}\.\d{1,2}\.\d{4})(?!\d)`
const moment = /^(?:(\d{4})-(\d\d)-(\d\d)|(\d{1,2})\.(\d{1,2})\.(\d{4}))(?:[T ]*(\d{1,2}):(\d\d)(?::\d\d)?)?/

export interface ReadRow {
  readonly at: Date
  readonly asked: NoteAsked
}

/**
 * Each row begins with its day, so that it does not matter whether lines came as lines. `check` throws a Problem for
 * what the pack cannot have. Throws one itself where there are no days, or no column tells what was put back.
 */
export function readRows(text: string, name: string, pack: Pack, check: (asked: NoteAsked, at: Date) => void) {
  const [head = '', ...lines] = plainText(text).split(new RegExp(`(?<![\\d.-])(?=${day})`))
  if (lines.length === 0) throw noDays
  const separator = [';', '|', ','].find(one => head.includes(one)) ?? ' '
  const [, ...names] = cellsOf(head, separator)
  const found = names.map(columnOf)
  if (!found.some(column => column?.option === 'put-back')) throw noPutBack
  const rows: ReadRow[] = []
  const left: Readonly<{ row: string; why: Problem }>[] = []
  for (const line of lines) {
    const [when = '', ...cells] = cellsOf(line, separator)
    try {
      const asked = askedOf(found, cells, name, pack)
      const at = momentOf(when)
      check(asked, at)
      rows.push({ at, asked })
    } catch (why) {
      if (!(why instanceof Problem)) throw why
      left.push({ row: line.trim(), why })
    }
  }
  return { rows, left, ignored: names.filter((_, at) => found[at] === undefined) }
}

/** A cell in quotes may hold the separator. */
function cellsOf(line: string, separator: string): readonly string[] {
  const parts = line.trim().split(new RegExp(`\\${separator}(?=(?:[^"]*"[^"]*")*[^"]*$)`))
  return parts.map(part => part.trim().replace(/^"(.*)"$/, '$1'))
}

function columnOf(named: string): { readonly option: Column; readonly unit: string } | undefined {
  const [, before = named, unit] = unitWord.exec(named) ?? []
  const plain = (text: string) =>
    text
      .toLowerCase()
      .replace(/[_\-. ]+/g, ' ')
      .trim()
  const option = [named, before, unit ?? ''].flatMap(
    text => options.find(one => columns[one].names.test(plain(text))) ?? [],
  )[0]
  return option && { option, unit: unit ?? columns[option].unit }
}

function askedOf(
  found: readonly ReturnType<typeof columnOf>[],
  cells: readonly string[],
  name: string,
  pack: Pack,
): NoteAsked {
  const asked: Record<string, unknown> = { name }
  for (const [at, cell] of cells.entries()) {
    const column = found[at]
    if (!column || cell === '') continue
    const text = /^[\d., ]+$/.test(cell) ? `${cell.trim()}${column.unit}` : cell
    asked[column.option] = noteTakes[column.option].kind.read(text, { pack }).value
  }
  if (asked['put-back'] === undefined) throw noPutBack
  return asked as unknown as NoteAsked
}

/** At noon where no time of the day is told. */
function momentOf(text: string): Date {
  const [, year, month, date, day2, month2, year2, hour = '12', minute = '0'] = moment.exec(text) ?? []
  const [years = 0, months = 0, ...rest] = [year ?? year2, month ?? month2, date ?? day2, hour, minute].map(Number)
  const at = new Date(Date.UTC(years, months - 1, ...rest))
  if (at.getUTCMonth() !== months - 1 || at.getUTCDate() !== rest[0]) throw noDays
  return at
}

/** As rows that read back to the same charges. */
export function writeRows(charges: readonly NotedCharge[]): string {
  const head = ['day', ...options.map(option => `${option.replace('-', ' ')} ${columns[option].unit}`)]
  return [head, ...charges.map(cellsOfNote)].map(cells => `${cells.join(';')}\n`).join('')
}

function cellsOfNote({ at, ...note }: NotedCharge): readonly string[] {
  const number = (value: number | undefined, perUnit: number, digits: number) =>
    value === undefined ? '' : String(Number((value * perUnit).toFixed(digits)))
  const stood = (state: State | undefined) =>
    state === undefined
      ? ''
      : state.kind === 'rest'
        ? number(state.perCell_V, 1, 3)
        : state.soc === 0
          ? 'empty'
          : `${number(state.soc, 100, 1)}%`
  const each = (values: readonly number[] | undefined, perUnit: number) =>
    (values ?? []).map(value => number(value, perUnit, 3)).join(' ')
  const cells: Readonly<Record<Column, string>> = {
    'put-back': number(note.charge_Ah, 1000, 1),
    from: stood(note.from),
    to: stood(note.to),
    took: number(note.duration_s, 1 / 60, 2),
    'to-cutoff': number(note.timeToCutoff_s, 1 / 60, 2),
    current: number(note.current_A, 1, 3),
    until: number(note.termination_A, 1, 3),
    cells: each(note.cells_V, 1),
    resistance: each(note.cells_ohm, 1000),
    temperature: number(note.temperature_C, 1, 1),
    counted: number(note.counted_Ah, 1000, 1),
  }
  return [at.toISOString().slice(0, 16), ...options.map(option => cells[option])]
}
