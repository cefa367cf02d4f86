// Text for Discord: nothing that a person typed acts as markup, nothing is cut in half.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { unbroken } from '../../../src/assistant/layers/budget.ts'
import { clipped, escapeText, fitting, pieces } from '../../../src/discord/messages/text.ts'
import { english } from '../../../src/ground/locale.ts'
import { anyCharacter } from '../../support/any-character.ts'

/** Text as Discord shows it: a backslash before a punctuation sign is dropped. */
const shown = (escaped: string) => escaped.replace(/\\([^0-9A-Za-z\s])/g, '$1')

describe('escapeText', () => {
  it.each([
    ['**bold** _it_ ~~no~~ ||spoiler||', String.raw`\*\*bold\*\* \_it\_ \~\~no\~\~ \|\|spoiler\|\|`],
    ['<@123> <#4> <t:1:R>', String.raw`\<@123\> \<#4\> \<t:1:R\>`],
    ['[click](https://evil.example)', String.raw`\[click\](https\://evil.example)`],
    ['`code`', '\\`code\\`'],
    ['# big\n- list\r\n> quote', String.raw`# big - list \> quote`],
    ['4.35 V at 0,5 A (3S1P)', '4.35\u00a0V at 0,5\u00a0A (3S1P)'],
  ])('makes %j harmless', (text, escaped) => expect(escapeText(text)).toBe(escaped))

  it('shows what was typed, whatever it was', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), text => {
        const line = text.replace(/[\r\n\t\v\f\u0085\u2028\u2029]+/g, ' ')
        expect(shown(escapeText(text))).toBe(unbroken(line))
      }),
    )
  })
})

describe('clipped', () => {
  it('keeps within its length and never ends in half an escape or character', () => {
    fc.assert(
      fc.property(fc.string({ unit: anyCharacter }), fc.integer({ min: 2, max: 40 }), (text, longest) => {
        const escaped = escapeText(text)
        const cut = clipped(escaped, longest)
        expect(cut.length).toBeLessThanOrEqual(longest)
        if (cut === escaped) return
        expect(escaped.startsWith(cut.slice(0, -1))).toBe(true)
        expect(/\\*(?=…$)/.exec(cut)?.[0].length ?? 0).toSatisfy((count: number) => count % 2 === 0)
        expect(cut.isWellFormed()).toBe(true)
      }),
    )
  })
})

describe('fitting', () => {
  it('says that it left something out', () => {
    const lines = fitting(['a'.repeat(30), 'b'.repeat(30), 'c'.repeat(30)], 80, english('.'))
    expect(lines).toEqual(['a'.repeat(30), '… (shortened to fit this message)'])
  })

  it('leaves whole what fits', () => expect(fitting(['a', 'b'], 3, english('.'))).toEqual(['a', 'b']))
})

describe('pieces', () => {
  it('loses no word and keeps within its length', () => {
    const lines = fc.array(fc.array(fc.stringMatching(/^\w{1,30}$/), { minLength: 1 }).map(words => words.join(' ')))
    fc.assert(
      fc.property(lines, fc.integer({ min: 30, max: 200 }), (lines, longest) => {
        const parts = pieces(lines, longest)
        for (const part of parts) expect(part.length).toBeLessThanOrEqual(longest)
        expect(parts.join(' ').split(/\s+/).filter(Boolean)).toEqual(lines.join(' ').split(/\s+/).filter(Boolean))
      }),
    )
  })
})
