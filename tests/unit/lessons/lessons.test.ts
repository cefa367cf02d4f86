// The lessons: every drawn question marks its right answer right and others wrong, and says what it means.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { english } from '../../../src/ground/locale.ts'
import { Problem } from '../../../src/ground/problem.ts'
import { findQuestion, lessons, questionId } from '../../../src/handbook/lessons/index.ts'
import { drawFrom } from '../../../src/handbook/teaching/draw.ts'
import type { DrawnQuestion, Telling } from '../../../src/handbook/teaching/lesson.ts'
import { someHouse } from '../../support/arbitraries.ts'
import { cases, someOf } from '../../support/cases.ts'

const plain: Telling = { house: {}, locale: english('.') }
const draws = someOf(1_000)
const seed = fc.integer({ min: 0, max: 2 ** 31 - 1 })
const someClub = fc.oneof(someHouse, fc.record({ coldest_C: fc.integer({ min: 0, max: 20 }) }))
const someTelling = fc.record({ house: someClub, locale: fc.constantFrom(english('.'), english(',')) })
/** A message holds the question together with the name of its lesson. */
const longestHeadline = 900

const all = lessons.flatMap(lesson =>
  lesson.questions.map(question => [questionId(lesson, question), question] as const),
)
const questionOf = (id: string) => {
  const found = findQuestion(id)
  if (!found) throw new Error(`no question ${id}`)
  return found.question
}

/** What else might be answered: every other letter, or another quantity of the same unit. */
function wrongAnswers({ choices, right }: DrawnQuestion): string[] {
  if (choices) return choices.map((_, at) => 'abcdefgh'[at] as string).filter(letter => letter !== right)
  const [number = ''] = /[\d.]+/.exec(right) ?? []
  return [Number(number) * 1.3 + 0.02, Number(number) * 2 + 0.1].map(other => {
    return right.replace(number, /^\d+$/.test(right) ? String(Math.ceil(other) + 1) : other.toFixed(4))
  })
}

describe.each(all)('%s', (id, question) => {
  it(`marks ${draws} draws, each right answer right and the others wrong, in any house`, () => {
    const asked = new Set<string>()
    fc.assert(
      fc.property(seed, someTelling, (from, telling) => {
        const drawn = question.draw(drawFrom(from), telling)
        asked.add(JSON.stringify([drawn.ask, drawn.choices]))
        expect(drawn.isRight(drawn.right)).toBe(true)
        for (const wrong of wrongAnswers(drawn)) expect(drawn.isRight(wrong), wrong).toBe(false)
        const said = [drawn.ask, drawn.why, drawn.wanted, ...(drawn.choices ?? [])].join(' ')
        expect(said).not.toMatch(/NaN|undefined|Infinity/)
        expect(new Set(drawn.choices).size).toBe(drawn.choices?.length ?? 0)
        expect(drawn.ask.length).toBeLessThan(longestHeadline)
      }),
      { numRuns: draws },
    )
    expect(asked.size).toBeGreaterThan(3)
  })

  it('draws the same from the same seed, and asks for what it can read', () => {
    const one = question.draw(drawFrom(7), plain)
    expect(question.draw(drawFrom(7), plain).ask).toBe(one.ask)
    for (const strange of ['', 'three cows', 'NaN', '1e3', 'z', '-5']) {
      expect(() => one.isRight(strange), `${id}: ${strange}`).toThrow(Problem)
    }
  })
})

describe('the right answer', () => {
  const numbersIn = (text: string) => (text.match(/\d+(?:\.\d+)?/g) ?? []).map(Number)
  const quantity = (text: string) => Number(/[\d.]+/.exec(text)?.[0])

  /** From the numbers that the question shows alone, by the textbook. */
  const textbook: readonly (readonly [string, (numbers: readonly number[], ask: string) => number])[] = [
    ['label/volts', ([cell_V = 0, series = 0]) => cell_V * series],
    ['label/cells', ([series = 0, parallel = 0]) => series * parallel],
    ['c-rate/amps', ([rate_C = 0, mAh = 0]) => (rate_C * mAh) / 1000],
    ['c-rate/rate', ([mAh = 0, amps = 0]) => (amps * 1000) / mAh],
    ['sources/floor', ([series = 0, cell_V = 0]) => series * cell_V],
    ['sources/input', ([amps = 0, , pack_V = 0, share = 0, supply_V = 0]) => (amps * pack_V * 100) / share / supply_V],
    ['storage/volts', ([series = 0, cell_V = 0]) => series * cell_V],
    ['balance/spread', volts => Math.max(...volts) - Math.min(...volts)],
  ]

  it.each(textbook)('%s follows from what the question shows', (id, answer) => {
    fc.assert(
      fc.property(seed, from => {
        const drawn = questionOf(id).draw(drawFrom(from), plain)
        const expected = answer(numbersIn(drawn.ask), drawn.ask)
        const given = quantity(drawn.right)
        const unit = drawn.right.endsWith('mAh') ? 1000 : 1
        expect(Math.abs(given / unit - expected)).toBeLessThanOrEqual(0.006 + 0.01 * expected)
      }),
      cases(300),
    )
  })

  it('is a step that neither the cells nor the wanted rate speak against (common practice: 1C, LiPo)', () => {
    fc.assert(
      fc.property(seed, from => {
        const drawn = questionOf('c-rate/step').draw(drawFrom(from), plain)
        const [, mAh = '0', name] = /S (\d+)mAh (\S+)/.exec(drawn.ask) ?? []
        const chosen = drawn.choices?.['abcdefgh'.indexOf(drawn.right)] ?? ''
        const steps_A = (drawn.choices ?? []).map(quantity).filter(Number.isFinite)
        const most_C = name === 'Li-ion' ? 1 : 2
        const allowed_A = steps_A.filter(step_A => step_A <= (most_C * Number(mAh)) / 1000)
        if (allowed_A.length === 0) {
          expect(chosen).toContain('none')
          return
        }
        const wanted_A = ((name === 'Li-ion' ? 0.5 : 1) * Number(mAh)) / 1000
        const off = Math.min(...allowed_A.map(step_A => Math.abs(step_A - wanted_A)))
        expect(Math.abs(quantity(chosen) - wanted_A)).toBeCloseTo(off, 9)
      }),
      cases(300),
    )
  })

  it('never charges a pack that is hurt, damaged, too cold or too hot', () => {
    const seen = new Map<string, number>()
    fc.assert(
      fc.property(seed, from => {
        const drawn = questionOf('place/fit').draw(drawFrom(from), plain)
        const chosen = drawn.choices?.['abcdefgh'.indexOf(drawn.right)] ?? ''
        seen.set(chosen, (seen.get(chosen) ?? 0) + 1)
        const [, temperature = '', rest = ''] = /cells are at (-?\d+).°C and rest at ([\d.]+)/.exec(drawn.ask) ?? []
        const isHurt = /swollen|punctured|dented|leaking/.test(drawn.ask) || Number(rest) < 2.5
        const isOutside = Number(temperature) < 0 || Number(temperature) > 45
        expect(chosen === 'charge it').toBe(!isHurt && !isOutside)
        expect(chosen.includes('at all')).toBe(isHurt)
      }),
      { numRuns: draws },
    )
    expect(seen.size).toBe(3)
    expect(Math.min(...seen.values())).toBeGreaterThan(draws / 20)
  })
})

describe('every lesson', () => {
  it.each(lessons.map(lesson => [lesson.key, lesson] as const))('%s says what it says in any house', (_, lesson) => {
    fc.assert(
      fc.property(someTelling, telling => {
        const said = [...lesson.teach(telling), lesson.example(telling)]
        expect(said.join(' ')).not.toMatch(/NaN|undefined|Infinity/)
        for (const text of said) expect(text.length).toBeLessThan(longestHeadline)
      }),
      cases(40),
    )
  })

  it('shows the numbers that the house has set', () => {
    const telling = { ...plain, house: { gentleLiIon: true, storagePerCell_V: { LiPo: 3.8 } } }
    const told = lessons.flatMap(lesson => lesson.teach(telling)).join(' ')
    expect(told).toContain('Li-ion at 4.10')
    expect(told).toMatch(/3\.80\sV per cell at rest for LiPo/)
  })

  it('has a key of its own, and so has every question', () => {
    expect(new Set(lessons.map(({ key }) => key)).size).toBe(lessons.length)
    expect(new Set(all.map(([id]) => id)).size).toBe(all.length)
    expect(findQuestion('label/colour')).toBeUndefined()
  })
})

describe('drawing', () => {
  it('stays within its ends and reaches them', () => {
    const draw = drawFrom(1)
    const drawn = Array.from({ length: 1_000 }, () => draw.int(2, 5))
    expect([...new Set(drawn)].sort()).toEqual([2, 3, 4, 5])
  })

  it('shuffles without loss', () => {
    fc.assert(
      fc.property(seed, fc.array(fc.integer()), (from, list) => {
        expect(drawFrom(from).shuffled(list).sort()).toEqual([...list].sort())
      }),
    )
  })
})
