// One cell that holds nothing, and questions that tell no danger.

import { expect, test } from 'vitest'
import { deadCell } from '../../../../../src/language/dangers/relations/dead-cell.ts'
import { asksInGeneral } from '../../../../../src/language/dangers/relations/general.ts'
import { tells } from './tells.ts'
import { told } from './told.ts'

tells('a cell is dead', deadCell, 'tooLow', [
  ['one cell dead', 'cell dead'],
  ['a dead cell in it', 'dead cell'],
  ['the third cell reads nothing', 'cell reads nothing'],
  ['the third cell reads 0', 'cell reads 0'],
  ['the cell is just now dead', 'cell is just now dead'],
  ['the cell is just now as dead'],
  ['the cell is flat', 'cell is flat'],
  ['the cell is flat and firm'],
  ['the shrink is off a bit, cells flat'],
  ['no dent, one cell dead', 'cell dead'],
  ['the cell is flat firm'],
  ['the cell is flat android', 'cell is flat'],
  ['flat cells', 'flat cells'],
  ['eine Zelle tot', 'Zelle tot'],
  ['eine tote Zelle', 'tote Zelle'],
  ['the cell is kaput', 'cell is kaput'],
  ['the cell is fine, another cell is dead', 'cell is dead'],
  ['the pack is dead'],
  ['the cell, dead'],
  ['the cell here dead'],
  ['the cell is deadly'],
  ['the cell is undead'],
  ['the undead cell'],
  ['deadly cell'],
  ['the cell rereads dead'],
  ['the cell isnt dead'],
  ['the muscell is dead'],
  ['the cellar is dead'],
  ['last year one cell dead'],
  ['one cell dead, retired it'],
  ['one cell dead, unretired', 'cell dead'],
])

tells('unless it is denied', deadCell, 'tooLow', [
  ['no dead cell'],
  ['no cell dead'],
  ['not a dead cell'],
  ['never had a dead cell'],
  ['none of the cells is dead'],
  ['it will not. Dead cell in it', 'Dead cell'],
  ['it does not, cell dead', 'cell dead'],
  ['it does not charge one cell dead', 'cell dead'],
])

test.each<readonly [string, boolean]>([
  ['what causes swelling', true],
  ['what causes swelling of a 3S lipo', true],
  ['what causes swelling, I ask', false],
  ['what causes swelling at 2 A', false],
  ['what causes swelling of my pack', false],
  ['why must one not charge in bed', true],
  ['why must I not charge in bed', false],
  ['one does not charge in bed', false],
])('%s: asks in general %s', (text, is) => expect(asksInGeneral(told(text))).toBe(is))
