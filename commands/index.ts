// Every command, in the order in which help lists them.

import type { Entry } from '../src/assistant/command.ts'
import { entry } from '../src/assistant/entry.ts'
import * as answers from './answers/answers.ts'
import * as answersWords from './answers/answers.words.ts'
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
import { history, undo } from './changes/changes.ts'
import { historyWords, undoWords } from './changes/changes.words.ts'
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
import { houseSet } from './club/house.ts'
import { houseSetWords, houseShowWords } from './club/house.words.ts'
import { houseShow } from './club/house-show.ts'
import { rules } from './club/rules.ts'
import { rulesWords } from './club/rules.words.ts'
import { handbook } from './handbook/handbook.ts'
import { handbookWords } from './handbook/handbook.words.ts'
import { kitList, kitRemove, kitRename, kitSave } from './kit/kit.ts'
import { kitListWords, kitRemoveWords, kitRenameWords, kitSaveWords } from './kit/kit.words.ts'
import { lessonAnswer, lessonAsk, lessonList, lessonRead } from './lessons/lessons.ts'
import { lessonAnswerWords, lessonAskWords, lessonListWords, lessonReadWords } from './lessons/lessons.words.ts'
import { logCharge } from './log/log-charge.ts'
import { logChargeWords } from './log/log-charge.words.ts'
import { logExport, logImport } from './log/log-csv.ts'
import { logExportWords, logImportWords } from './log/log-csv.words.ts'
import { logMeter } from './log/log-meter.ts'
import { logMeterWords } from './log/log-meter.words.ts'
import { logShow } from './log/log-show.ts'
import { logShowWords } from './log/log-show.words.ts'
import { logUndo } from './log/log-undo.ts'
import { logUndoWords } from './log/log-undo.words.ts'
import { hello, helpOn } from './me/help.ts'
import { helloWords, helpWords } from './me/help.words.ts'
import { exportMe, forgetMe } from './me/me.ts'
import { exportMeWords, forgetMeWords } from './me/me.words.ts'
import { remindCancel, remindList, remindMe } from './remind/reminders.ts'
import { remindCancelWords, remindListWords, remindMeWords } from './remind/reminders.words.ts'
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
  entry(rules, rulesWords),
  entry(houseShow, houseShowWords),
  entry(houseSet, houseSetWords),
  entry(history, historyWords),
  entry(undo, undoWords),
  entry(answers.answerSave, answersWords.answerSaveWords),
  entry(answers.answerList, answersWords.answerListWords),
  entry(answers.answerShow, answersWords.answerShowWords),
  entry(answers.answerEdit, answersWords.answerEditWords),
  entry(answers.answerMove, answersWords.answerMoveWords),
  entry(answers.answerPost, answersWords.answerPostWords),
  entry(answers.answerRemove, answersWords.answerRemoveWords),
  entry(remindMe, remindMeWords),
  entry(remindList, remindListWords),
  entry(remindCancel, remindCancelWords),
  entry(logCharge, logChargeWords),
  entry(logShow, logShowWords),
  entry(logMeter, logMeterWords),
  entry(logUndo, logUndoWords),
  entry(logImport, logImportWords),
  entry(logExport, logExportWords),
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
