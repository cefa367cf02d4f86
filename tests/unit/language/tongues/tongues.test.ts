// Other tongues: which it is, what its words mean, and the dangers told in it.

import { describe, expect, it, test } from 'vitest'
import { bestCover, candidatesOf } from '../../../../src/language/candidates/index.ts'
import { dangersIn } from '../../../../src/language/dangers/index.ts'
import { glossed } from '../../../../src/language/tongues/gloss.ts'
import type { Tongue } from '../../../../src/language/tongues/glossaries.ts'
import { type Language, languageOf } from '../../../../src/language/tongues/tongue.ts'
import sentences from './sentences.json' with { type: 'json' }

const shareOf = <T>(all: readonly T[], is: (one: T) => boolean): number => all.filter(is).length / all.length

describe('the tongue of a text', () => {
  it('is told from short questions with packs and numbers in them', () => {
    for (const { tongue, text } of sentences) expect.soft([text, languageOf(text)]).toEqual([text, tongue])
  })

  test.each<readonly [Language, string]>([
    ['other', 'jakim prądem ładować 4S 1500?'],
    ['other', 'a minha bateria está inchada, posso carregar 3S 1300 a 1A'],
    ['other', 'hur lång tid tar det att ladda 3S 2200 med 2A'],
    ['other', 'baterie je nafouklá, můžu ji nabít 3S 1300'],
    ['other', 'каким током заряжать 4S 1500?'],
    ['other', '4S 1500 は何アンペアで充電しますか'],
    ['en', 'how many amps for my 4S 1500 akku'],
    ['en', 'please, the lader shows 4S, what ampere I should put for accu 1500'],
    ['en', 'how long take 3S 2200 with 2 A please, thanks from Germany'],
    ['en', 'merci, and storage?'],
    ['en', 'current for 4S 1500 pls'],
    ['en', '3.8 3.8 3.7 ok?'],
    ['en', ''],
  ])('is %s: %s', (language, text) => expect(languageOf(text)).toBe(language))
})

describe('a gloss', () => {
  test.each<readonly [Tongue, string, readonly string[]]>([
    ['de', 'Wie lange 3 Zellen 1300 mAh mit 1,3 Ampere?', ['3S 1300mAh', '1.3A']],
    ['de', 'in 2 Std von 20 % bis voll', ['2h', '20%', 'full']],
    ['fr', 'une 3 éléments de 2200 mAh à 2,2 A pendant 90 minutes', ['3S 2200mAh', '2.2A', '1h30min']],
    ['es', '4 celdas 1500 mAh a 1,5 amperios, 45 minutos', ['4S 1500mAh', '1.5A', '45min']],
    ['nl', '2 cellen 450 mAh met 0,5 ampère, 3 uur', ['2S 450mAh', '0.5A', '3h']],
    ['it', '6 celle 5000 mAh a 5 ampere per 2 ore', ['6S 5000mAh', '5A', '2h']],
  ])('in %s reads %s', (tongue, text, values) => {
    const read = bestCover(candidatesOf(glossed(text, tongue).text)).map(value => value.text)
    expect(read).toEqual(values)
  })

  it('knows where a part of it comes from', () => {
    const text = "combien d'ampères pour ma 4S 1500 gonflée"
    const { text: english, spanOf } = glossed(text, 'fr')
    const at = english.indexOf('swollen')
    const { start, end } = spanOf(at, at + 'swollen'.length)
    expect(text.slice(start, end)).toBe('gonflée')
    const pack = english.indexOf('4S 1500')
    expect(spanOf(pack, pack + 7)).toEqual({ start: text.indexOf('4S'), end: text.indexOf('4S') + 7 })
  })
})

describe('dangers in other tongues', () => {
  test.each([true, false])('are caught, and ordinary questions left alone (held out: %s)', heldOut => {
    const part = sentences.filter(one => one.heldOut === heldOut)
    const tells = ({ text }: { readonly text: string }) => dangersIn(text).told.length > 0
    expect(
      shareOf(
        part.filter(one => one.tells),
        tells,
      ),
    ).toBeGreaterThanOrEqual(0.95)
    expect(part.filter(one => !one.tells).filter(tells)).toEqual([])
  })

  it('are shown as they were typed', () => {
    const [first] = dangersIn('welcher Strom für den 3S 1300, der Akku ist etwas aufgebläht').told
    expect(first).toMatchObject({ danger: 'swollen' })
    expect(first?.typed).toContain('aufgebläht')
  })
})
