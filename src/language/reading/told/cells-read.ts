// Volts that were measured on a pack or its cells, as a command can use them.

import { spreads } from '../../../charging/setting/balancing.ts'
import { cellSpread } from '../../../charging/upkeep/cell-spread.ts'
import type { Candidate } from '../../candidates/sentence/candidate.ts'
import type { CommandWords } from '../../sentence/vocabulary.ts'

type Values = readonly Candidate[]

/** "18.1 V on the meter" of a 4S pack: what is measured on it tells where it stands, however odd. */
export function standing(values: Values): Values {
  const told = values.filter(({ pack }) => pack?.series !== undefined)
  const [pack] = told
  if (told.length !== 1 || values.some(({ kind }) => kind === 'state')) return values
  const perCell_V = (text: string) => Number.parseFloat(text) / (pack?.pack?.series ?? 1)
  return values.map(value =>
    value.kind === 'voltage' && value.device !== undefined && mayStand(perCell_V(value.text))
      ? { ...value, kind: 'state', text: `${value.text} pack` }
      : value,
  )
}
/** A cell that is not all but dead, nor volts that are a supply's. */
const mayStand = (perCell_V: number): boolean => perCell_V > 1.5 && perCell_V < 5

/** "One cell 4.05, the other 4.20, on my 2S": the cell is one of those read, and no pack. */
export function besideReadings(values: Values): Values {
  const isRead = values.some(({ kind }) => kind === 'cellVolts')
  const isOneCell = ({ pack, typed }: Candidate) => pack?.series === 1 && /^one\b/i.test(typed) && !pack.capacity_Ah
  return isRead ? values.filter(value => !isOneCell(value)) : values
}

/** As low as these only where a cell is spoken of. */
const ofCell = /^(?:[2-4]\.\d+(?=V(?: per cell)?$)|[01]\.\d+(?=V per cell$))/

const isCountOf = ({ pack, end }: Candidate, { holders, start }: Candidate): boolean =>
  pack?.capacity_Ah === undefined && pack?.series === holders && end < start

const countOf = (holders: Candidate['holders']): number => (typeof holders === 'number' ? holders : 1)

const mostToPlace = 12
/** The number right before a reading, which says of which cell it is. */
const placeOf = ({ start }: Candidate, values: Values): Candidate | undefined =>
  values.find(({ kind, end }) => kind === 'count' && end < start && start - end <= mostToPlace)

/** "One cell is 3.96, the other two 4.05": volts of cells told one by one are the readings of a pack. */
export function withReadings(values: Values, _: CommandWords, series?: number): Values {
  const told = values.filter(({ kind, text }) => kind === 'state' && ofCell.test(text))
  const [first] = told
  const isOfAll = told.every(({ holders }) => holders === 'all')
  const isWay = told.some(({ cue }) => cue === 'from') && told.some(({ cue }) => cue === 'to')
  // "At 3.6 or 4.0": one of them is wondered about, and none was read.
  const isChoice = told.some(({ next = '' }) => /^(?:or|rather|instead|versus|vs)$/.test(next))
  if (!first || told.length < 2 || isOfAll || isWay || isChoice || values.some(({ kind }) => kind === 'cellVolts'))
    return values
  const sum = told.reduce((all, { holders }) => all + countOf(holders), 0)
  const isSome = (value: Candidate) => told.some(level => isCountOf(value, level))
  const most = Math.max(1, ...values.map(value => (isSome(value) ? 1 : (value.pack?.series ?? 1))))
  // "Cell 3 is 3.61, the rest 3.80": it is the third.
  const isPlaced = told.length === 2 && first.holders === undefined && told[1]?.holders === 'rest'
  const place = isPlaced ? placeOf(first, values) : undefined
  const cells = most > 1 ? most : Math.max(series ?? sum, sum, Number(place?.text ?? 0))
  // "Cell two 3.80, three 3.79" counts none; "the others" and "all but one" are as many as the pack has besides.
  const isNamed = told.length === cells
  const timesOf = (holders: Candidate['holders']) =>
    isNamed ? 1 : holders === 'rest' || holders === 'all' ? Math.max(1, cells - sum + 1) : countOf(holders)
  const readings = told.flatMap(({ text, holders }) =>
    Array<string>(timesOf(holders)).fill(ofCell.exec(text)?.[0] ?? ''),
  )
  const at = Number(place?.text ?? 1) - 1
  if (at < cells) readings.splice(at, 0, ...readings.splice(0, 1))
  const row: Candidate = {
    ...first,
    kind: 'cellVolts',
    text: readings.join(' '),
    typed: told.map(({ typed }) => typed).join(' '),
  }
  // "One cell", "two cells at 3.8": some of those read, and no pack.
  const counts = (value: Candidate) =>
    value.kind === 'count'
      ? value === place || told.some(({ holders }) => `${holders}` === value.text) || isNamed
      : value.pack?.series === 1 || isSome(value)
  return values.flatMap(value => (value === first ? [row] : told.includes(value) || counts(value) ? [] : [value]))
}

/** Cells told one by one, and not where one charge begins and ends. */
export function areApart(values: Values): boolean {
  const states = values.filter(({ kind, text, cue }) => kind === 'state' && /per cell$/.test(text) && cue !== 'to')
  const rows = values.filter(({ kind }) => kind === 'cellVolts')
  const cells_V = [...states, ...rows].flatMap(({ text }) => text.match(/\d+(?:\.\d+)?/g)?.map(Number) ?? [])
  return cells_V.length > 1 && cellSpread(cells_V).spread_V >= spreads.value.apart_V
}
