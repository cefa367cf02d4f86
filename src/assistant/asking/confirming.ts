// What overwrites or removes something is asked about once more where it was said in plain words.

import type { Said } from '../../ground/locale.ts'
import { Problem } from '../../ground/problem.ts'
import { type Question, writeQuestion } from '../../language/sentence/question.ts'
import { yesOrNoWanted } from './ask-back.words.ts'

/** Yes asks the same in notation, which is not asked about again. */
export const sureOf = (sure: Said, question: Question): Problem =>
  new Problem({
    what: sure,
    expected: yesOrNoWanted,
    example: 'yes',
    choices: [
      { label: 'yes', question: writeQuestion(question) },
      { label: 'no', question: 'no' },
    ],
  })
