// Every command, in the order in which help lists them.

import type { Entry } from '../src/assistant/command.ts'
import { entry } from '../src/assistant/entry.ts'
import { answerEdit } from './answers/answer-edit.ts'
import { answerEditWords } from './answers/answer-edit.words.ts'
import { answerList } from './answers/answer-list.ts'
import { answerListWords } from './answers/answer-list.words.ts'
import { answerMove } from './answers/answer-move.ts'
import { answerMoveWords } from './answers/answer-move.words.ts'
import { answerPost } from './answers/answer-post.ts'
import { answerPostWords } from './answers/answer-post.words.ts'
import { answerRemove } from './answers/answer-remove.ts'
import { answerRemoveWords } from './answers/answer-remove.words.ts'
import { answerSave } from './answers/answer-save.ts'
import { answerSaveWords } from './answers/answer-save.words.ts'
import { answerShow } from './answers/answer-show.ts'
import { answerShowWords } from './answers/answer-show.words.ts'
import { cells } from './care/cells.ts'
import { cellsWords } from './care/cells.words.ts'
import { health } from './care/health.ts'
import { healthWords } from './care/health.words.ts'
import { storage } from './care/storage.ts'
import { storageWords } from './care/storage.words.ts'
import { travel } from './care/travel.ts'
import { travelWords } from './care/travel.words.ts'
import { trim } from './care/trim.ts'
import { trimWords } from './care/trim.words.ts'
import { history } from './changes/history.ts'
import { historyWords } from './changes/history.words.ts'
import { undo } from './changes/undo.ts'
import { undoWords } from './changes/undo.words.ts'
import { compare } from './charge/compare.ts'
import { compareWords } from './charge/compare.words.ts'
import { current } from './charge/current.ts'
import { currentWords } from './charge/current.words.ts'
import { energy } from './charge/energy.ts'
import { energyWords } from './charge/energy.words.ts'
import { percent } from './charge/percent.ts'
import { percentWords } from './charge/percent.words.ts'
import { time } from './charge/time.ts'
import { timeWords } from './charge/time.words.ts'
import { houseSet } from './club/house-set.ts'
import { houseSetWords } from './club/house-set.words.ts'
import { houseShow } from './club/house-show.ts'
import { houseShowWords } from './club/house-show.words.ts'
import { rules } from './club/rules.ts'
import { rulesWords } from './club/rules.words.ts'
import { handbook } from './handbook/handbook.ts'
import { handbookWords } from './handbook/handbook.words.ts'
import { kitList } from './kit/kit-list.ts'
import { kitListWords } from './kit/kit-list.words.ts'
import { kitRemove } from './kit/kit-remove.ts'
import { kitRemoveWords } from './kit/kit-remove.words.ts'
import { kitRename } from './kit/kit-rename.ts'
import { kitRenameWords } from './kit/kit-rename.words.ts'
import { kitSave } from './kit/kit-save.ts'
import { kitSaveWords } from './kit/kit-save.words.ts'
import { lessonAnswer } from './lessons/lesson-answer.ts'
import { lessonAnswerWords } from './lessons/lesson-answer.words.ts'
import { lessonAsk } from './lessons/lesson-ask.ts'
import { lessonAskWords } from './lessons/lesson-ask.words.ts'
import { lessonList } from './lessons/lesson-list.ts'
import { lessonListWords } from './lessons/lesson-list.words.ts'
import { lessonRead } from './lessons/lesson-read.ts'
import { lessonReadWords } from './lessons/lesson-read.words.ts'
import { logCharge } from './log/log-charge.ts'
import { logChargeWords } from './log/log-charge.words.ts'
import { logMeter } from './log/log-meter.ts'
import { logMeterWords } from './log/log-meter.words.ts'
import { logShow } from './log/log-show.ts'
import { logShowWords } from './log/log-show.words.ts'
import { logUndo } from './log/log-undo.ts'
import { logUndoWords } from './log/log-undo.words.ts'
import { exportMe } from './me/export-me.ts'
import { exportMeWords } from './me/export-me.words.ts'
import { forgetMe } from './me/forget-me.ts'
import { forgetMeWords } from './me/forget-me.words.ts'
import { hello } from './me/hello.ts'
import { helloWords } from './me/hello.words.ts'
import { helpOn } from './me/help.ts'
import { helpWords } from './me/help.words.ts'
import { remindCancel } from './remind/remind-cancel.ts'
import { remindCancelWords } from './remind/remind-cancel.words.ts'
import { remindList } from './remind/remind-list.ts'
import { remindListWords } from './remind/remind-list.words.ts'
import { remindMe } from './remind/remind-me.ts'
import { remindMeWords } from './remind/remind-me.words.ts'
import { parallel } from './session/parallel.ts'
import { parallelWords } from './session/parallel.words.ts'
import { plan } from './session/plan.ts'
import { planWords } from './session/plan.words.ts'
import { lead } from './supply/lead.ts'
import { leadWords } from './supply/lead.words.ts'
import { lend } from './supply/lend.ts'
import { lendWords } from './supply/lend.words.ts'
import { source } from './supply/source.ts'
import { sourceWords } from './supply/source.words.ts'
import { supply } from './supply/supply.ts'
import { supplyWords } from './supply/supply.words.ts'

const answering: readonly Entry[] = [
  entry(current, currentWords),
  entry(time, timeWords),
  entry(source, sourceWords),
  entry(plan, planWords),
  entry(storage, storageWords),
  entry(cells, cellsWords),
  entry(parallel, parallelWords),
  entry(health, healthWords),
  entry(lend, lendWords),
  entry(supply, supplyWords),
  entry(percent, percentWords),
  entry(lead, leadWords),
  entry(trim, trimWords),
  entry(compare, compareWords),
  entry(energy, energyWords),
  entry(travel, travelWords),
  entry(kitSave, kitSaveWords),
  entry(kitList, kitListWords),
  entry(kitRename, kitRenameWords),
  entry(kitRemove, kitRemoveWords),
  entry(houseShow, houseShowWords),
  entry(houseSet, houseSetWords),
  entry(history, historyWords),
  entry(undo, undoWords),
  entry(answerSave, answerSaveWords),
  entry(answerList, answerListWords),
  entry(answerShow, answerShowWords),
  entry(answerEdit, answerEditWords),
  entry(answerMove, answerMoveWords),
  entry(answerPost, answerPostWords),
  entry(answerRemove, answerRemoveWords),
  entry(remindMe, remindMeWords),
  entry(remindList, remindListWords),
  entry(remindCancel, remindCancelWords),
  entry(logCharge, logChargeWords),
  entry(logShow, logShowWords),
  entry(logMeter, logMeterWords),
  entry(logUndo, logUndoWords),
  entry(rules, rulesWords),
  entry(handbook, handbookWords),
  entry(lessonList, lessonListWords),
  entry(lessonRead, lessonReadWords),
  entry(lessonAsk, lessonAskWords),
  entry(lessonAnswer, lessonAnswerWords),
  entry(exportMe, exportMeWords),
  entry(forgetMe, forgetMeWords),
  entry(hello, helloWords),
]

const help: Entry = entry(
  helpOn(() => [help, ...answering]),
  helpWords,
)

export const commands: readonly Entry[] = [...answering, help]
