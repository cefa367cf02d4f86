// What a kilowatt-hour costs, in whatever money it is told.

import { plainText, problemAt } from '../../ground/plain-text.ts'
import { aPrice, notAPrice } from './kinds.words.ts'
import { plainKind } from './value-kind.ts'

export interface Price {
  readonly amount: number
  /** As typed; empty where none was named. */
  readonly money: string
}

const form = /^(\d{1,4}(?:[.,]\d{1,4})?) ?(\p{L}{0,8}|\p{Sc}) ?\/ ?kwh$/iu

export const priceKind = plainKind<Price>(
  'price',
  text => {
    const [, amount = '', money = ''] = form.exec(plainText(text)) ?? []
    if (amount !== '') return { amount: Number(amount.replace(',', '.')), money }
    throw problemAt(text, notAPrice, { expected: aPrice, example: '30 cents/kWh' })
  },
  ({ amount, money }) =>
    [amount, money]
      .filter(part => part !== '')
      .join(' ')
      .concat('/kWh'),
  ['30 cents/kWh', '0.3/kWh'],
)
