// More was asked at once than can be worked out in good time.

import { Problem } from '../../ground/problem.ts'
import { aMinute, tooMuch } from './asking.words.ts'

/** Says when to ask again; nothing of it is kept. */
export class TooMuchAtOnce extends Problem {
  constructor() {
    super({ what: tooMuch, expected: aMinute, example: 'help' })
  }
}
