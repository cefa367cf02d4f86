// Every command, in the order in which help lists them.

import type { Command } from '../src/assistant/command.ts'
import { answerEdit } from './answer-edit.ts'
import { answerList } from './answer-list.ts'
import { answerMove } from './answer-move.ts'
import { answerPost } from './answer-post.ts'
import { answerRemove } from './answer-remove.ts'
import { answerSave } from './answer-save.ts'
import { answerShow } from './answer-show.ts'
import { cells } from './cells.ts'
import { compare } from './compare.ts'
import { current } from './current.ts'
import { exportMe } from './export-me.ts'
import { forgetMe } from './forget-me.ts'
import { health } from './health.ts'
import { hello } from './hello.ts'
import { helpOn } from './help.ts'
import { houseSet } from './house-set.ts'
import { houseShow } from './house-show.ts'
import { kitList } from './kit-list.ts'
import { kitRemove } from './kit-remove.ts'
import { kitRename } from './kit-rename.ts'
import { kitSave } from './kit-save.ts'
import { lead } from './lead.ts'
import { lend } from './lend.ts'
import { lessonAnswer } from './lesson-answer.ts'
import { lessonAsk } from './lesson-ask.ts'
import { lessonList } from './lesson-list.ts'
import { lessonRead } from './lesson-read.ts'
import { logCharge } from './log-charge.ts'
import { logMeter } from './log-meter.ts'
import { logShow } from './log-show.ts'
import { logUndo } from './log-undo.ts'
import { parallel } from './parallel.ts'
import { percent } from './percent.ts'
import { plan } from './plan.ts'
import { remindCancel } from './remind-cancel.ts'
import { remindList } from './remind-list.ts'
import { remindMe } from './remind-me.ts'
import { rules } from './rules.ts'
import { source } from './source.ts'
import { storage } from './storage.ts'
import { supply } from './supply.ts'
import { time } from './time.ts'
import { travel } from './travel.ts'
import { trim } from './trim.ts'

const answering: readonly Command[] = [
  current,
  time,
  source,
  plan,
  storage,
  cells,
  parallel,
  health,
  lend,
  supply,
  percent,
  lead,
  trim,
  compare,
  travel,
  kitSave,
  kitList,
  kitRename,
  kitRemove,
  houseShow,
  houseSet,
  answerSave,
  answerList,
  answerShow,
  answerEdit,
  answerMove,
  answerPost,
  answerRemove,
  remindMe,
  remindList,
  remindCancel,
  logCharge,
  logShow,
  logMeter,
  logUndo,
  rules,
  lessonList,
  lessonRead,
  lessonAsk,
  lessonAnswer,
  exportMe,
  forgetMe,
  hello,
]

export const commands: readonly Command[] = [...answering, helpOn(answering)]
